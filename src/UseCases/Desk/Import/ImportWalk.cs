using System.Collections.Immutable;
using System.Text;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>How the bevel ends, as it is asked.</summary>
public enum BevelTold
{
    /// <summary>Not told: no bevel in the plan.</summary>
    NotYet,

    /// <summary>It runs out at the ends of the edge.</summary>
    RunsOut,

    /// <summary>It ends at a plunge line.</summary>
    AtPlunge,
}

/// <summary>A drawing on its way to a plan: five answers, in any order, kept until the plan is written. The drawing stays in memory; nothing is written before the end.</summary>
public sealed class ImportWalk
{
    private readonly DeskFolder _folder;
    private readonly byte[] _bytes;
    private readonly double _joinMm;
    private readonly HashSet<int> _holesOut = [];

    private ImportWalk(DeskFolder folder, string fileName, byte[] bytes, double joinMm, FoundLoops found)
    {
        (_folder, _bytes, _joinMm, FileName, Found) = (folder, bytes, joinMm, fileName, found);
        Name = FreeName(folder, fileName);
        Take(found.Suggested);
    }

    /// <summary>What the five answers are about.</summary>
    public static ImmutableArray<string> Steps => ["Outline and holes", "Sharpened part", "Bevel", "Grip", "Stock"];

    /// <summary>Name of the drawing.</summary>
    public string FileName { get; }

    /// <summary>Loops the outline can be chosen from, largest first: number and what it is.</summary>
    public IEnumerable<(int Number, string Said)> Offered => Found.Shaped.Take(WalkPicture.MostLoops).Select(l => (l.Number, l.Said));

    /// <summary>How many closed loops there are that are no circles.</summary>
    public int LoopCount => Found.Shaped.Length;

    /// <summary>Whether the drawing, or the person, says its unit.</summary>
    public bool SaysUnits => Found.SaysUnits;

    /// <summary>Whether there is a piece to tell more of.</summary>
    public bool HasPiece => Piece is not null;

    /// <summary>Circles inside the outline, left to right: how large and where.</summary>
    public ImmutableArray<(string Across, string At)> Circles => Piece is { } p ? [.. p.Holes.Select(h => (Shown.Both(Length.OfMm(h.DiameterMm)), $"{Written(h.Centre.X)}, {Written(h.Centre.Y)}"))] : [];

    /// <summary>What is left out, and what else there is to say, a line each.</summary>
    public ImmutableArray<string> LeftOut => Piece?.LeftOut ?? Found.Notes;

    /// <summary>Where the piece begins along x, mm.</summary>
    public double LowMm => Piece?.Outline.Bounds.MinX ?? 0;

    /// <summary>Where the piece ends along x, mm.</summary>
    public double HighMm => Piece?.Outline.Bounds.MaxX ?? 0;

    /// <summary>Which answer is asked, from 1 to 5.</summary>
    public int Step { get; private set; } = 1;

    /// <summary>Number of the loop taken as outline; null: none of the shaped ones.</summary>
    public int? Loop { get; private set; }


    /// <summary>Places on its outline; null while there is none.</summary>
    public OutlineStops? Stops { get; private set; }

    /// <summary>Ends of the sharpened part along the outline; the second is null while one is chosen.</summary>
    public (Point From, Point? To)? Edge { get; private set; }

    /// <summary>How the bevel ends.</summary>
    public BevelTold Bevel { get; private set; }

    /// <summary>Height of the bevel as written; "full": to the spine.</summary>
    public string Height { get; set; } = "full";

    /// <summary>Thickness of the edge before sharpening as written.</summary>
    public string EdgeThickness { get; set; } = "0.5 mm";

    /// <summary>Place of the plunge line along the piece as written.</summary>
    public string Plunge { get; set; } = "";

    /// <summary>Whether a grip is told.</summary>
    public bool HasGrip { get; private set; }

    /// <summary>Front end of the grip along the piece as written.</summary>
    public string GripFrom { get; set; } = "";

    /// <summary>Rear end of the grip along the piece as written.</summary>
    public string GripTo { get; set; } = "";

    /// <summary>Steel; empty: left open.</summary>
    public string Steel { get; set; } = "";

    /// <summary>Thickness of the stock as written.</summary>
    public string Thickness { get; set; } = "";

    /// <summary>Width of the bar as written; empty: left open.</summary>
    public string Width { get; set; } = "";

    /// <summary>Name of the plan.</summary>
    public string Name { get; set; }

    /// <summary>Unit of the drawing as the person said; null: as the drawing says.</summary>
    public LengthUnit? UnitsSaid { get; private set; }

    /// <summary>Unit the plan is written in.</summary>
    public LengthUnit Units => UnitsSaid ?? Found.Units;

    /// <summary>Steels with a file, to choose from.</summary>
    public static IEnumerable<string> Steels => SteelList.BuiltIn.All.Select(s => s.Name);

    /// <summary>The loops found in the drawing.</summary>
    internal FoundLoops Found { get; private set; }

    /// <summary>The piece as far as it is told; null while there is none.</summary>
    internal ImportedPiece? Piece { get; private set; }

    private double UnitMm => Units == LengthUnit.Inch ? Length.MmPerInch : 1;

    /// <summary>Begins with a drawing.</summary>
    /// <param name="folder">The folder the plan will lie in.</param>
    /// <param name="fileName">Name of the drawing.</param>
    /// <param name="bytes">The drawing.</param>
    /// <param name="join">Loose ends this near are joined, as written; empty: 0.05 mm.</param>
    public static Checked<ImportWalk> Begin(DeskFolder folder, string fileName, byte[] bytes, string join)
    {
        if (bytes.Length > NewOnDesk.LargestDrawing) return Checked<ImportWalk>.Bad(Fault.OfFile(fileName, "the drawing is larger than 20 MB", "save only the piece into a file of its own"));
        var joinMm = ImportChoice.UsualJoinMm;
        if (!string.IsNullOrWhiteSpace(join))
        {
            var read = LengthText.Read(join, 1);
            if (!read.IsGood) return Checked<ImportWalk>.Bad(Fault.OfFile("joined ends", read.Message, read.Remedy));
            joinMm = read.Value.Length.Mm;
        }

        return DrawingReader.Loops(bytes, fileName, ImportChoice.None with { JoinMm = joinMm }).Then(found => Checked<ImportWalk>.Good(new ImportWalk(folder, fileName, bytes, joinMm, found)));
    }

    /// <summary>Says what one unit of the drawing is. Places told so far were in the other unit and are asked again.</summary>
    public ImmutableArray<Fault> SayUnits(LengthUnit? units)
    {
        if (units == UnitsSaid) return [];
        var found = DrawingReader.Loops(_bytes, FileName, ImportChoice.None with { Units = units, JoinMm = _joinMm });
        if (!found.IsGood) return found.Faults;
        (UnitsSaid, Found) = (units, found.Value);
        EdgeThickness = Units == LengthUnit.Inch ? "0.02 in" : "0.5 mm";
        return Take(Loop);
    }

    /// <summary>Takes a loop as the outline. What was told of another is asked again.</summary>
    public ImmutableArray<Fault> Take(int? loop)
    {
        var read = DrawingReader.Read(_bytes, FileName, ImportChoice.None with { Units = UnitsSaid ?? Found.Units, Loop = loop, JoinMm = _joinMm });
        if (!read.IsGood) return read.Faults;
        (Loop, Piece, Stops, Edge) = (loop, read.Value, OutlineStops.Of(read.Value.Outline), null);
        (Plunge, GripFrom, GripTo) = ("", "", "");
        _holesOut.Clear();
        return [];
    }

    /// <summary>Whether a circle is taken as a hole, by its place among those of the piece.</summary>
    public bool IsHole(int index) => !_holesOut.Contains(index);

    /// <summary>Takes a circle as a hole or leaves it out.</summary>
    public void TakeHole(int index, bool taken)
    {
        if (taken) _holesOut.Remove(index);
        else _holesOut.Add(index);
    }

    /// <summary>Points at an end of the sharpened part: the first, then the second; then it begins anew. The shorter way between them is taken.</summary>
    public void PointAtEdge(Point p)
    {
        if (Piece is not { } piece) return;
        var at = Nearest.On(piece.Outline, p).At;
        if (Edge is not { To: null, From: var from } || from.To(at) < 0.1)
        {
            Edge = (at, null);
            return;
        }

        var (there, back) = (EdgeSpan.Of(piece.Outline, from, at), EdgeSpan.Of(piece.Outline, at, from));
        Edge = there.Path.Length <= back.Path.Length ? (from, at) : (at, from);
    }

    /// <summary>Chooses the sharpened part by two corners, from 1; 0 takes it back.</summary>
    public void EdgeBetween(int from, int to)
        => Edge = Stops is { } s && from >= 1 && to >= 1 && from <= s.Corners.Length && to <= s.Corners.Length && from != to ? (s.Corners[from - 1], s.Corners[to - 1]) : null;

    /// <summary>Chooses a corner, from 1, as the first end of the sharpened part.</summary>
    public void EdgeFrom(int corner)
    {
        if (Stops is { } s && corner >= 1 && corner <= s.Corners.Length) Edge = (s.Corners[corner - 1], null);
    }

    /// <summary>Says whether there is a grip; its first ends lie at the rear two fifths of the piece, to be moved.</summary>
    public void SayGrip(bool has)
    {
        HasGrip = has;
        if (!has || Piece is not { } piece || GripFrom.Length > 0) return;
        var b = piece.Outline.Bounds;
        (GripFrom, GripTo) = (Written(Math.Round(b.MinX + (0.6 * b.Width))), Written(Math.Round(b.MinX + (0.95 * b.Width))));
    }

    /// <summary>Says how the bevel ends; a first plunge line lies half way along, to be moved.</summary>
    public void SayBevel(BevelTold told)
    {
        Bevel = told;
        if (told == BevelTold.AtPlunge && Plunge.Length == 0) Plunge = Written(Math.Round(0.5 * (LowMm + HighMm)));
    }

    /// <summary>Takes the other way round between the two ends.</summary>
    public void OtherWayRound()
    {
        if (Edge is { To: { } to, From: var from }) Edge = (to, from);
    }

    /// <summary>Takes the answer about the edge back.</summary>
    public void NoEdge() => Edge = null;

    /// <summary>A place along the piece as written, mm; null when it cannot be read.</summary>
    public double? Place(string written) => LengthText.Read(written, UnitMm) is { IsGood: true, Value: var w } ? w.Length.Mm : null;

    /// <summary>A place as it is written in the drawing's unit.</summary>
    public string Written(double mm) => DeskFigures.Typed(Length.OfMm(Math.Round(mm, 2)), Units);

    /// <summary>Goes to another answer; forward only when those before hold together.</summary>
    /// <returns>What is wrong; none when it went.</returns>
    public ImmutableArray<Fault> GoTo(int step)
    {
        step = Math.Clamp(step, 1, Steps.Length);
        for (var s = Step; s < step; s++)
        {
            var faults = FaultsOf(s);
            if (faults.Length > 0)
            {
                Step = s;
                return faults;
            }
        }

        Step = step;
        return [];
    }

    /// <summary>Writes the plan; nothing existing is replaced.</summary>
    /// <returns>The plan's name without its ending.</returns>
    public Checked<string> Finish()
    {
        for (var s = 1; s <= Steps.Length; s++)
        {
            if (FaultsOf(s) is { Length: > 0 } faults)
            {
                Step = s;
                return Checked<string>.Bad(faults);
            }
        }

        var piece = Piece! with { Holes = [.. Piece!.Holes.Where((_, i) => IsHole(i))], LeftOut = [.. Piece!.LeftOut, .. Piece!.Holes.Where((_, i) => !IsHole(i)).Select(h => $"a circle you left out: {Shown.Both(Length.OfMm(h.DiameterMm))} across at {Shown.Trimmed(h.Centre.X, 2)}, {Shown.Trimmed(h.Centre.Y, 2)}")] };
        var told = new ImportAnswers(
            Edge is { To: { } to, From: var from } ? (from, to) : null,
            Bevel == BevelTold.NotYet || Edge?.To is null ? null : new ImportedBevel(IsFull ? null : Place(Height), Place(EdgeThickness)!.Value, Bevel == BevelTold.AtPlunge ? Place(Plunge) : null),
            HasGrip ? GripEnds() : null);
        var text = ImportedPlanText.For(piece, Name.Trim(), Units, Steel.Trim().Length > 0 ? Steel.Trim() : "not said", Length.OfMm(Place(Thickness)!.Value), Width.Trim().Length > 0 ? Length.OfMm(Place(Width)!.Value) : null, told);
        return _folder.PathOf(Name.Trim())
            .Then(path => PlanReader.Read(text, path).Then(_ => Checked<string>.Good(path)))
            .Then(path => OutputFolder.Write([new OutputFile(path, Encoding.UTF8.GetBytes(text))], overwrite: false) is { Length: > 0 } taken ? Checked<string>.Bad(taken.Select(f => f with { Remedy = "give the plan another name" })) : Checked<string>.Good(Name.Trim()));
    }

    /// <summary>Ends of the grip in the middle of the piece where they were told; null when there is none.</summary>
    public (Point From, Point To)? GripEnds()
        => Piece is { } p && Place(GripFrom) is { } a && Place(GripTo) is { } b && Middle.Of(p.Outline, a) is { } from && Middle.Of(p.Outline, b) is { } to && from.To(to) > 1 ? (from, to) : null;

    private bool IsFull => string.Equals(Height.Trim(), "full", StringComparison.OrdinalIgnoreCase);

    private ImmutableArray<Fault> FaultsOf(int step) => step switch
    {
        1 when !Found.SaysUnits => No("unit", "the drawing does not say its unit", "say whether one unit of it is a millimetre or an inch"),
        1 when Piece is null => No("outline", "no loop is chosen as the outline", "choose one"),
        2 when Edge is { To: null } => No("sharpened part", "it has one end only", "point at the other end, or take it back"),
        3 when Bevel != BevelTold.NotYet && Edge?.To is null => No("bevel", "a bevel without a sharpened part", "go back and point at the sharpened part, or leave the bevel for later"),
        3 when Bevel != BevelTold.NotYet => [.. IsFull ? [] : Size("height of the bevel", Height), .. Size("edge before sharpening", EdgeThickness), .. Bevel == BevelTold.AtPlunge ? OnPiece("plunge line", Plunge) : []],
        4 when HasGrip => OnPiece("front end of the grip", GripFrom).AddRange(OnPiece("rear end of the grip", GripTo)) is { Length: > 0 } f ? f : GripEnds() is null ? No("grip", "it begins and ends at the same place", "tell a front end and a rear end that are apart") : [],
        5 => [.. Thickness.Trim().Length == 0 ? No("thickness", "the thickness of the stock is missing; a drawing does not tell it", "write it as 3 mm or 1/8 in") : Size("thickness", Thickness), .. Width.Trim().Length == 0 ? [] : Size("width", Width)],
        _ => [],
    };

    private ImmutableArray<Fault> Size(string what, string written)
    {
        var read = LengthText.Read(written, UnitMm);
        if (!read.IsGood) return No(what, read.Message, read.Remedy);
        return read.Value.Length > Length.Zero ? [] : No(what, "a size that is not above 0", "write it as 3 mm or 1/8 in");
    }

    private ImmutableArray<Fault> OnPiece(string what, string written)
    {
        var read = LengthText.Read(written, UnitMm);
        if (!read.IsGood) return No(what, read.Message, read.Remedy);
        var b = Piece!.Outline.Bounds;
        return read.Value.Length.Mm > b.MinX && read.Value.Length.Mm < b.MaxX ? [] : No(what, $"{Shown.Both(read.Value.Length)} lies beside the piece", $"it runs from {Shown.Both(Length.OfMm(b.MinX))} to {Shown.Both(Length.OfMm(b.MaxX))}");
    }

    private static ImmutableArray<Fault> No(string what, string message, string remedy) => [Fault.OfFile(what, $"{what}: {message}", remedy)];

    private static string FreeName(DeskFolder folder, string fileName)
    {
        var bare = new string([.. System.IO.Path.GetFileNameWithoutExtension(fileName).Select(c => char.IsLetterOrDigit(c) || c is '-' or '_' or ' ' or '.' ? c : '-').Take(60)]).Trim('.', ' ', '-');
        if (bare.Length == 0) bare = "piece";
        var name = bare;
        for (var i = 2; folder.Plans().Any(p => string.Equals(p.Stem, name, StringComparison.OrdinalIgnoreCase)); i++) name = $"{bare}-{i}";
        return name;
    }
}
