using System.Text;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads ASCII DXF, R12 to 2018: header units, layers, blocks and inserts, and the entities that are curves. The rest is counted and left out.</summary>
internal sealed class DxfReader
{
    private const int DeepestBlocks = 16;
    private const int MostInserts = 100_000;
    private const int MostPairsKept = 2_000_000;

    private static readonly HashSet<string> Lettering = new(StringComparer.Ordinal) { "TEXT", "MTEXT", "ATTRIB", "ATTDEF" };

    private readonly DxfPairs _pairs;
    private readonly CurveTray _tray;
    private readonly ImportChoice _choice;
    private readonly Dictionary<string, DxfBlock> _blocks = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> _hidden = new(StringComparer.OrdinalIgnoreCase);
    private DxfPair _next;
    private bool _more;
    private int _inserts;
    private int _entities;
    private int _kept;

    private DxfReader(byte[] bytes, string file, ImportChoice choice)
    {
        _pairs = new DxfPairs(bytes);
        _tray = new CurveTray(file);
        _choice = choice;
    }

    /// <summary>Whether the bytes are the binary form of DXF: its first line ends in these words.</summary>
    public static bool IsBinary(ReadOnlySpan<byte> bytes) => bytes[..Math.Min(bytes.Length, 22)].IndexOf(" Binary DXF"u8) >= 0;

    public static CurveTray Read(byte[] bytes, string file, ImportChoice choice)
    {
        var reader = new DxfReader(bytes, file, choice);
        reader.ReadFile();
        return reader._tray;
    }

    private void ReadFile()
    {
        Advance();
        var sections = 0;
        while (_tray.Fault is null)
        {
            if (NextRecord() is not { } r)
            {
                CutOff();
                return;
            }

            if (string.Equals(r.Type, "EOF", StringComparison.Ordinal)) break;
            if (!string.Equals(r.Type, "SECTION", StringComparison.Ordinal))
            {
                _tray.Refuse(r.Line, "A SECTION should start here.", "Save the drawing again as ASCII DXF.", r.Type);
                return;
            }

            sections++;
            switch (r.Text(2))
            {
                case "HEADER": ReadHeader(r); break;
                case "TABLES": ReadTables(); break;
                case "BLOCKS": ReadBlocks(); break;
                case "ENTITIES": ReadEntities(); break;
                default: SkipSection(); break;
            }
        }

        if (_tray.Fault is null && sections == 0) _tray.Refuse(1, "This DXF file holds no section at all.", "Save the drawing again as ASCII DXF.");
    }

    private void ReadHeader(DxfRecord section)
    {
        // header variables stand in the section's own record: group 9 names one, the next groups give it
        for (var i = 0; i + 1 < section.Pairs.Count; i++)
        {
            if (section.Pairs[i].Code != 9 || !section.Pairs[i].Is("$INSUNITS"u8)) continue;
            var p = section.Pairs[i + 1];
            if (!p.TryNumber(out var code))
            {
                _tray.Refuse(p.Line, "$INSUNITS should be a whole number.", "Write 4 for mm or 1 for inches.", p.Text);
                return;
            }

            _tray.MmPerUnit = MmPer(code);
            _tray.Units = code is 1 or 2 or 3 or 8 or 9 or 10 ? LengthUnit.Inch : LengthUnit.Mm;
        }

        SkipSection();
    }

    /// <summary>mm in a unit of $INSUNITS (DXF reference, header variables); null where it says none.</summary>
    private static double? MmPer(double code) => code switch
    {
        1 => 25.4,
        2 => 304.8,
        3 => 1609344,
        4 => 1,
        5 => 10,
        6 => 1000,
        7 => 1e6,
        8 => 25.4e-6,
        9 => 0.0254,
        10 => 914.4,
        11 => 1e-7,
        12 => 1e-6,
        13 => 1e-3,
        14 => 100,
        _ => null,
    };

    private void ReadTables()
    {
        while (Inside(out var r))
        {
            if (!string.Equals(r.Type, "LAYER", StringComparison.Ordinal)) continue;
            if (r.Number(62, 7) < 0 || (r.Whole(70, 0) & 1) != 0) _hidden.Add(r.Text(2));
            Report(r);
        }
    }

    private void ReadBlocks()
    {
        DxfBlock? block = null;
        while (Inside(out var r))
        {
            switch (r.Type)
            {
                case "BLOCK":
                    block = new DxfBlock(r.Point(10), (r.Whole(70, 0) & 4) != 0, []);
                    _blocks[r.Text(2)] = block;
                    Report(r);
                    break;
                case "ENDBLK": block = null; break;
                default:
                    _kept += r.Pairs.Count + 1;
                    if (_kept > MostPairsKept) _tray.Refuse(r.Line, "The blocks of this drawing are larger than any shop drawing's.", "Save only the piece into a file of its own.");
                    block?.Records.Add(r);
                    break;
            }
        }
    }

    private void ReadEntities()
    {
        _tray.SayUnits(_choice.Units);
        var scale = _tray.MmPerUnit ?? 1;
        Draw(Inside, Transform.Scale(scale, scale), "", 0);
    }

    private delegate bool Source(out DxfRecord record);

    private void Draw(Source next, Transform map, string insertLayer, int depth)
    {
        while (_tray.Fault is null && next(out var r))
        {
            if (++_entities > CurveTray.MostEntities)
            {
                _tray.Refuse(r.Line, $"The drawing has more than {CurveTray.MostEntities:N0} entities.", "Save only the piece, without hatching and repeats, into a file of its own.");
                return;
            }

            var layer = r.Text(8, "0");
            if (insertLayer.Length > 0 && layer is "0") layer = insertLayer;
            DrawOne(r, next, map, layer, depth);
            Report(r);
        }
    }

    private void DrawOne(DxfRecord r, Source next, Transform map, string layer, int depth)
    {
        var unseen = r.Whole(60, 0) != 0 || r.Whole(67, 0) != 0 || _hidden.Contains(layer);
        var facing = DxfCurves.Facing(r);
        var own = DxfCurves.OwnAxes(facing, map);
        var corners = string.Equals(r.Type, "POLYLINE", StringComparison.Ordinal) ? Vertices(r, next) : null;
        if (r.Type is "SEQEND" or "VERTEX") return;
        if (unseen)
        {
            _tray.Leave($"{r.Type} on a hidden layer or on paper space");
            return;
        }

        if (facing == 0 && r.Type is not ("LINE" or "SPLINE"))
        {
            _tray.Leave($"{r.Type} that does not lie flat");
            return;
        }

        switch (r.Type)
        {
            case "LINE": DxfCurves.Line(r, map, layer, _tray); break;
            case "ARC": DxfCurves.Arc(r, own, layer, _tray); break;
            case "CIRCLE": DxfCurves.Circle(r, own, layer, _tray); break;
            case "ELLIPSE": DxfCurves.Ellipse(r, facing, map, layer, _tray); break;
            case "LWPOLYLINE": DxfCurves.LightPolyline(r, own, layer, _tray); break;
            case "SPLINE": DxfCurves.Spline(r, map, layer, _tray); break;
            case "POLYLINE":
                var flags = r.Whole(70, 0);
                if ((flags & (16 | 64)) != 0) _tray.Leave("POLYLINE that is a mesh");
                else if (r.Trouble is null) DxfCurves.Polyline(corners!, (flags & 1) != 0, r.Line, (flags & 8) != 0 ? map : own, layer, _tray);
                break;
            case "INSERT": Insert(r, own, layer, depth); break;
            default:
                if (Lettering.Contains(r.Type)) _tray.Texts.Add(map.Map(r.Point(10)));
                _tray.Leave(r.Type);
                break;
        }
    }

    private static List<(Point At, double Bulge)> Vertices(DxfRecord line, Source next)
    {
        var corners = new List<(Point, double)>();
        while (next(out var v))
        {
            if (string.Equals(v.Type, "SEQEND", StringComparison.Ordinal)) return corners;
            if (!string.Equals(v.Type, "VERTEX", StringComparison.Ordinal))
            {
                line.Spoil(v.Line, "This POLYLINE lacks its SEQEND.", v.Type);
                return corners;
            }

            // 16: a control point of a spline-fitted polyline, not on it
            if ((v.Whole(70, 0) & 16) == 0) corners.Add((v.NeededPoint(10, "place"), v.Number(42, 0)));
            if (v.Trouble is { } t) line.Spoil(t.Line, t.Message, t.Text);
        }

        line.Spoil(line.Line, "This POLYLINE lacks its SEQEND.");
        return corners;
    }

    private void Insert(DxfRecord r, Transform map, string layer, int depth)
    {
        var name = r.Text(2);
        if (!_blocks.TryGetValue(name, out var block))
        {
            r.Spoil(r.Line, $"The block \"{name}\" that is inserted here is not in the file.", name);
            return;
        }

        if (block.Outside)
        {
            _tray.Leave("INSERT of another file");
            return;
        }

        if (depth >= DeepestBlocks)
        {
            r.Spoil(r.Line, $"Blocks stand within blocks more than {DeepestBlocks} deep, or \"{name}\" holds itself.", name);
            return;
        }

        var (sx, sy) = (r.Number(41, 1), r.Number(42, 1));
        var (columns, rows) = (Math.Max(1, r.Whole(70, 1)), Math.Max(1, r.Whole(71, 1)));
        if (sx == 0 || sy == 0) r.Spoil(r.Line, "A block is inserted here at scale 0.", name);
        if (r.Trouble is not null) return;
        var turn = Transform.Turn(r.Number(50, 0) * Math.PI / 180);
        for (long i = 0; i < (long)columns * rows && _tray.Fault is null; i++)
        {
            if (++_inserts > MostInserts)
            {
                r.Spoil(r.Line, $"Blocks are inserted more than {MostInserts:N0} times.", name);
                return;
            }

            var step = new Point(r.Number(44, 0) * (i % columns), r.Number(45, 0) * (i / columns));
            var place = Transform.Shift(-block.Origin).Then(Transform.Scale(sx, sy)).Then(Transform.Shift(step)).Then(turn).Then(Transform.Shift(r.Point(10)));
            var at = 0;
            bool FromBlock(out DxfRecord record)
            {
                record = at < block.Records.Count ? block.Records[at] : r;
                return at++ < block.Records.Count;
            }

            Draw(FromBlock, place.Then(map), layer, depth + 1);
        }
    }

    private void SkipSection()
    {
        while (Inside(out _))
        {
            // nothing in it is a curve of the drawing
        }
    }

    /// <summary>The next record of the section; false at its ENDSEC, or with a fault where the file ends first.</summary>
    private bool Inside(out DxfRecord record)
    {
        record = NextRecord() ?? new DxfRecord("", 0);
        if (_tray.Fault is not null || string.Equals(record.Type, "ENDSEC", StringComparison.Ordinal)) return false;
        if (record.Line > 0 && record.Type is not ("EOF" or "SECTION")) return true;
        CutOff();
        return false;
    }

    private DxfRecord? NextRecord()
    {
        if (!_more) return null;
        if (_next.Code != 0)
        {
            _tray.Refuse(_next.Line, "This is not the start of a DXF file: it should begin with group 0.", "Save the drawing again as ASCII DXF.", _next.Text);
            return null;
        }

        var r = new DxfRecord(Encoding.Latin1.GetString(_next.Value.Span[..Math.Min(64, _next.Value.Length)]), _next.Line);
        while (Advance() && _next.Code != 0)
        {
            if (r.Pairs.Count >= MostPairsKept)
            {
                _tray.Refuse(r.Line, "One entity is larger than any shop drawing's.", "Save only the piece into a file of its own.");
                return null;
            }

            r.Pairs.Add(_next);
        }

        return r;
    }

    private bool Advance()
    {
        do _more = _pairs.Read(out _next);
        while (_more && _next.Code == 999);
        return _more;
    }

    private void CutOff()
    {
        if (_pairs.Trouble is { } t) _tray.Refuse(_pairs.Line, t, "The file is damaged, or no ASCII DXF: save the drawing again.");
        else _tray.Refuse(_pairs.Line, "The file ends in the middle: it is cut off, without the closing EOF.", "Copy or save the drawing again, whole.");
    }

    private void Report(DxfRecord r)
    {
        if (r.Trouble is { } t) _tray.Refuse(t.Line, t.Message, "Mend that entity in your drawing program, or leave it out, and save again.", t.Text);
    }

    private sealed record DxfBlock(Point Origin, bool Outside, List<DxfRecord> Records);
}
