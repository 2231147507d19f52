using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What is asked of the bevels.</summary>
/// <param name="Measured">Thickness of the bar as measured; null: nominal.</param>
/// <param name="Stations">How many stations.</param>
/// <param name="Wheel">Another wheel to judge; null: those owned.</param>
/// <param name="IsProtected">Hardened in foil, coating or without air.</param>
public sealed record BevelsWanted(Length? Measured, int Stations = BevelStations.Usual, Length? Wheel = null, bool IsProtected = false);

/// <summary>Lines to scribe on the rim from one face.</summary>
/// <param name="Stock">Thickness of the bar.</param>
/// <param name="Edge">Thickness of the edge between the lines.</param>
/// <param name="FromFace">Height gauge from the face for each line; for a bevel on one face the one line from the face that stays.</param>
/// <param name="Centre">Height gauge for the middle.</param>
public readonly record struct ScribeLines(Length Stock, Length Edge, Length FromFace, Length Centre)
{
    /// <summary>The lines for a bar.</summary>
    public static ScribeLines Of(Length stock, Length edge, bool oneSided) => new(stock, edge, oneSided ? edge : (stock - edge) * 0.5, stock * 0.5);
}

/// <summary>Everything the belt needs of a bevel.</summary>
/// <param name="Table">The stations.</param>
/// <param name="Scribe">Lines for the edge left before hardening, else for the finished edge; nominal bar.</param>
/// <param name="ScribeMeasured">The same for the bar as measured; null when nobody measured.</param>
/// <param name="Wheels">Wheels judged; empty for a bevel that is not hollow and no wheel asked for.</param>
/// <param name="LeastWheel">Least diameter that leaves nothing thinner than the edge; null when not asked.</param>
/// <param name="Advice">How thick to leave the edge for hardening.</param>
/// <param name="SoftPerSideGrams">Steel to take off each face before hardening, g; null when not known or nothing.</param>
/// <param name="HardPerSideGrams">Steel to take off each face after it, g.</param>
/// <param name="Facet">The sharpened facets; null when no angle is said.</param>
/// <param name="BlockHeight">How high the spine lies over the stone at the sharpening angle where the blade is highest.</param>
/// <param name="Notes">What to know, in words.</param>
public sealed record BevelNumbers(
    BevelTable Table,
    ScribeLines Scribe,
    ScribeLines? ScribeMeasured,
    ImmutableArray<WheelVerdict> Wheels,
    Length? LeastWheel,
    EdgeAdvice? Advice,
    double? SoftPerSideGrams,
    double? HardPerSideGrams,
    EdgeFacet? Facet,
    Length? BlockHeight,
    ImmutableArray<string> Notes)
{
    /// <summary>Lines of each station once the taper is ground; none where all are as thick as the bar.</summary>
    public ImmutableArray<StationLines> ScribeAt { get; init; } = [];

    /// <summary>How far a bar may be off what it is sold as before that is said, of its thickness; common practice.</summary>
    private const double FarOffShare = 0.1;

    /// <summary>The numbers, or why there are none.</summary>
    public static Checked<BevelNumbers> Of(Results r, BevelsWanted wanted)
    {
        Checked<BevelNumbers> Bad(string message, string remedy) => Checked<BevelNumbers>.Bad(Fault.OfFile(r.Plan.Name, message, remedy));
        if (r.Plan.Bevel is not { } bevel) return Bad("the plan has no bevel", "write [edge] and [bevel]");
        if (r.Findings.Any(f => f.Code is FindingCodes.OutlineCrossesItself or FindingCodes.OutlineTooSmall)) return Bad("the outline bounds no piece", "mend the outline first: tangwright check says where");
        if (bevel.EdgeFinished >= r.Plan.Stock.Thickness) return Bad("the edge is as thick as the stock", "plan a thinner edge: tangwright check says which");
        if (wanted.Stations is < 1 or > BevelStations.Most) return Bad($"{wanted.Stations} stations", $"ask for 1 to {BevelStations.Most}");
        var edge = bevel.Ground == GroundWhen.BeforeHardening ? bevel.EdgeBeforeHardening ?? bevel.EdgeFinished : bevel.EdgeFinished;
        if (wanted.Measured is { } m && !(m > edge && m.Mm < 100)) return Bad($"a bar measured {Shown.Both(m)} is not thicker than the edge of {Shown.Both(edge)}", "measure it again");
        if (BevelStations.Of(r, wanted.Stations) is not { } table) return Bad("the plan says no edge", "write [edge] from and to");

        var notes = new List<string>();
        if (table.Stations.IsEmpty) notes.Add("The bevel is under 1 mm high at every station.");
        var (height, blade) = (table.Highest, table.BladeHeight);
        var wheels = bevel.Grind == Grind.Hollow && height.Mm > 0 ? WheelVerdict.All(r, height) : [];
        if (wanted.Wheel is { } asked && height.Mm > 0)
        {
            if (!(asked.Mm is >= 5 and <= 5000)) return Bad($"{Shown.Both(asked)} is no diameter of a wheel", "give one from 5 mm to 5 m");
            wheels = [.. wheels, WheelVerdict.Of("asked for", asked, r.Plan.Stock.Thickness, bevel.EdgeFinished, height, bevel.OneSided)];
        }

        if (bevel.IsFull && bevel.Grind == Grind.Flat && table.WantsManyAngles && table.Range is { } range) notes.Add($"The angle changes from {Shown.PerSide(range.Flattest)} to {Shown.PerSide(range.Steepest)} along the edge: a jig of one angle does not follow. Grind free to the thicknesses of the stations, or taper the spine.");
        var at = StationLines.Of(r.Plan, table.Stations, edge, wanted.Measured);
        if (!at.IsEmpty) notes.Add("Scribe before the taper is ground: one setting does for the whole edge, and a taper taken evenly off both faces leaves the lines where they are. Once it is ground each station has its own setting, with the tapered face down on the plate there.");
        else if (r.Plan.TangTaper is not null) notes.Add("Scribe before the tang is tapered: a tapered tang rocks on the plate. Once it is ground lay only the blade on the plate, the tang beyond its rim.");
        if (wanted.Measured is { } found && Math.Abs((found / r.Plan.Stock.Thickness) - 1) > FarOffShare) notes.Add($"The bar measures {Shown.Both(found)}, the plan says {Shown.Both(r.Plan.Stock.Thickness)}: measure again, or write it under [stock]; angles, thicknesses and weights are those of the plan.");
        if (bevel.Grind == Grind.Convex) notes.Add("Angles of the convex bevel are those of the straight line from edge to shoulder; at the edge itself it is about twice as steep.");
        if (bevel.Grind == Grind.Hollow) notes.Add("Angles of the hollow bevel are those of the straight line from edge to shoulder.");
        if (bevel.OneSided) notes.Add("One face is ground: the angle per side is the whole angle.");
        EdgeFacet? facet = bevel.SharpenPerSide is { } s ? EdgeBevel.Of(bevel.EdgeFinished.Mm, s, SlopeAtEdge(), bevel.OneSided) : null;
        return Checked<BevelNumbers>.Good(new BevelNumbers(
            table,
            ScribeLines.Of(r.Plan.Stock.Thickness, edge, bevel.OneSided),
            wanted.Measured is { } bar ? ScribeLines.Of(bar, edge, bevel.OneSided) : null,
            wheels,
            wheels.IsEmpty ? null : WheelVerdict.LeastDiameter(r.Plan.Stock.Thickness, bevel.EdgeFinished, height, bevel.OneSided),
            bevel.Ground == GroundWhen.BeforeHardening ? EdgeForHardening.Of(r, wanted.IsProtected) : null,
            PerSide(Stage.Drilled, Stage.BeforeHardening),
            PerSide(Stage.BeforeHardening, Stage.Finished),
            facet,
            bevel.SharpenPerSide is { } sharp ? Length.OfMm(BevelAngle.LiftMm(blade.Mm, sharp)) : null,
            [.. notes])
        {
            ScribeAt = at,
        });

        // a face ground alone rises as much as the two faces of a bevel twice as thick
        Angle SlopeAtEdge()
        {
            var (stock, edge) = (r.Plan.Stock.Thickness.Mm * (bevel.OneSided ? 2 : 1), bevel.EdgeFinished.Mm * (bevel.OneSided ? 2 : 1));
            return bevel switch
            {
                _ when height.Mm <= 0 => Angle.OfDegrees(0),
                { Grind: Grind.Hollow, Wheel: { } wheel } => new HollowFace(stock, edge, height.Mm, 0.5 * wheel.Mm).EdgeSlope,
                { Grind: Grind.Convex, Radius: { } radius } => ConvexFace.EdgeSlope(0.5 * (stock - edge), height.Mm, radius.Mm),
                { Grind: Grind.Convex } => ConvexFace.EdgeSlope(0.5 * (stock - edge), height.Mm),
                _ => table.Range!.Value.Flattest,
            };
        }

        double? PerSide(Stage from, Stage to)
        {
            if (r.At(from)?.Mass is not { } a || r.At(to)?.Mass is not { } b) return null;
            var grams = (a - b).Grams / (bevel.OneSided ? 1 : 2);
            return grams > 0.05 ? grams : null;
        }
    }
}
