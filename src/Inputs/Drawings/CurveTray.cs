using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>What a drawing file held before anything is sorted out. mm when the unit is known, else the file's own unit.</summary>
internal sealed class CurveTray(string file)
{
    /// <summary>More bytes than any shop drawing has.</summary>
    public const int MostBytes = 50_000_000;

    /// <summary>More entities than any shop drawing has.</summary>
    public const int MostEntities = 100_000;

    /// <summary>More lines, arcs and curves than any shop drawing has, blocks laid out.</summary>
    public const int MostSegments = 50_000;

    /// <summary>Blocks within blocks, groups within groups.</summary>
    public const int DeepestNesting = 64;

    /// <summary>No coordinate may be farther out, mm: ten kilometres.</summary>
    public const double FarthestMm = 1e7;

    private int _segments;

    public string File { get; } = file;

    /// <summary>The first trouble; reading stops there.</summary>
    public Fault? Fault { get; private set; }

    public List<DrawnPath> Curves { get; } = [];

    /// <summary>Places of lettering, to tell a title block.</summary>
    public List<Point> Texts { get; } = [];

    /// <summary>What was left out, counted by what it is.</summary>
    public SortedDictionary<string, int> LeftOut { get; } = new(StringComparer.Ordinal);

    /// <summary>Things to say about the file.</summary>
    public List<string> Notes { get; } = [];

    /// <summary>mm in one unit of the drawing; null when the file does not say and nobody did.</summary>
    public double? MmPerUnit { get; set; }

    public LengthUnit Units { get; set; }

    public void Refuse(int line, string message, string remedy, string lineText = "")
        => Fault ??= new Fault(File, line, 0, Shortened(lineText), message, remedy);

    public void Leave(string what) => LeftOut[what] = LeftOut.GetValueOrDefault(what) + 1;

    public void Add(string layer, ImmutableArray<Segment> segments, bool closed, int line)
    {
        if (segments.IsDefaultOrEmpty || Fault is not null) return;
        _segments += segments.Length;
        if (_segments > MostSegments)
        {
            Refuse(line, $"The drawing has more than {MostSegments:N0} lines and curves.", "Save only the piece, without hatching and repeats, into a file of its own.");
            return;
        }

        foreach (var s in segments)
        {
            var b = s.Bounds;
            if (!(Math.Abs(b.MinX) <= FarthestMm && Math.Abs(b.MinY) <= FarthestMm && Math.Abs(b.MaxX) <= FarthestMm && Math.Abs(b.MaxY) <= FarthestMm))
            {
                Refuse(line, "A curve lies farther out than 10 km, or its numbers make no sense.", "Move the drawing near the origin and check its unit.");
                return;
            }
        }

        Curves.Add(new DrawnPath(layer, new Path(segments, closed)));
    }

    /// <summary>The unit a person named.</summary>
    public void SayUnits(LengthUnit? chosen)
    {
        if (chosen is not { } u) return;
        var mm = u == LengthUnit.Inch ? Length.MmPerInch : 1.0;
        if (MmPerUnit is { } own && Math.Abs(own - mm) > 1e-9)
            Notes.Add($"One unit of the file taken as 1 {(u == LengthUnit.Inch ? "inch" : "mm")}, as you said; the file itself says {own:0.######} mm.");
        MmPerUnit = mm;
        Units = u;
    }

    private static string Shortened(string text)
    {
        var clean = new string([.. text.Take(80).Select(c => char.IsControl(c) ? ' ' : c)]).Trim();
        return text.Length > 80 ? clean + "..." : clean;
    }
}
