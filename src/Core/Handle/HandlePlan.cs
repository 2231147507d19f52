using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What is asked of the handle.</summary>
/// <param name="Pieces">Pieces in the batch.</param>
/// <param name="Board">The board the scales come out of; null when not said.</param>
public sealed record HandleWanted(int Pieces, BlockSize? Board);

/// <summary>The blank of one scale.</summary>
/// <param name="Size">Length along the grain, width, thickness.</param>
/// <param name="Kerf">Saw cut counted with.</param>
/// <param name="Yield">What comes out of the board asked about; null without one.</param>
/// <param name="Boards">How many such boards the batch takes; null without one, or when nothing comes out of it.</param>
public sealed record ScaleBlank(BlockSize Size, Length Kerf, BlankYield? Yield, int? Boards)
{
    /// <summary>Whether pairs of the board asked about lie one on the other in it.</summary>
    public bool IsBookMatched { get; init; }

    /// <summary>What a blank is longer and wider than the scale, on each side; common practice.</summary>
    public const double RoomMm = 3;

    /// <summary>What a board is thicker than the finished scale when the plan does not say; common practice.</summary>
    public const double OverMm = 2;
}

/// <summary>Growth with heat of a scale against the steel, over its length.</summary>
/// <param name="Faces">Which scales.</param>
/// <param name="More">What it grows more than the steel.</param>
/// <param name="DifferenceC">How much hotter both become, °C.</param>
public sealed record HeatGrowth(string Faces, Length More, double DifferenceC);

/// <summary>All that is worked out of a handle.</summary>
/// <param name="Results">The plan worked up.</param>
/// <param name="Wanted">What was asked.</param>
/// <param name="Made">What it is made of.</param>
/// <param name="Shape">The scale; null without scales.</param>
/// <param name="Parts">Its parts, weighed.</param>
/// <param name="Pins">Pins and tubes.</param>
/// <param name="Under">Holes under the scales.</param>
/// <param name="Blank">The blank of a scale; null without scales.</param>
/// <param name="Glue">The gluing; null without scales.</param>
/// <param name="Wood">What the wood does with its moisture.</param>
/// <param name="Heat">What scales do with heat.</param>
/// <param name="Cord">The cord; null without one.</param>
/// <param name="Cuts">Cuts across the handle, front to rear.</param>
/// <param name="Grip">The handle against the hand; null when it is not known where the hand holds.</param>
public sealed record HandlePlan(
    Results Results,
    HandleWanted Wanted,
    HandleMaterials Made,
    ScaleShape? Shape,
    ImmutableArray<PlacedMass> Parts,
    ImmutableArray<HandlePin> Pins,
    ImmutableArray<UnderScale> Under,
    ScaleBlank? Blank,
    GlueUp? Glue,
    ImmutableArray<WoodChange> Wood,
    ImmutableArray<HeatGrowth> Heat,
    CordWrap? Cord,
    ImmutableArray<HandleCut> Cuts,
    GripCheck? Grip)
{
    /// <summary>How much hotter a handle in hot washing water is than when it was glued, °C.</summary>
    public const double HotterC = 40;

    /// <summary>Growth of steel with heat, millionths per °C: carbon steels 11.5 to 12, stainless of 13 % chromium 10.2 (from memory).</summary>
    public const double SteelMillionthsPerK = 11;

    private const double UsualKerfMm = 2;

    /// <summary>Works it out.</summary>
    /// <param name="r">The plan worked up.</param>
    /// <param name="wanted">What is asked.</param>
    public static HandlePlan Of(Results r, HandleWanted wanted)
    {
        var made = HandleMaterials.Of(r.Plan, r.Shop);
        var shape = ScaleShape.Of(r.Plan);
        var cord = CordWrap.Of(r.Plan, r.Shop);
        var pins = shape is null ? [] : HandleParts.Pins(r.Plan, r.Holes, shape);
        var cuts = HandleCuts.Of(r, shape, cord);
        return new HandlePlan(
            r,
            wanted,
            made,
            shape,
            HandleParts.Of(r.Plan, r.Holes, r.Shop),
            pins,
            shape is null ? [] : UnderScale.Of(r, shape, pins),
            shape is null ? null : BlankOf(r, shape, wanted),
            shape is null ? null : GlueUp.Of(r, shape, pins, made.Rod, wanted.Pieces),
            WoodChange.Of(r, made, cuts),
            shape is null ? [] : [.. Growth(made, shape)],
            cord,
            cuts,
            GripCheck.Of(r, shape, cord, cuts));
    }

    /// <summary>Thickness of the board: as the plan says, else 2 mm over the thickest place.</summary>
    public static Length BoardOf(ScaleShape shape)
        => shape.Plan.Board ?? Length.OfMm(Math.Max(shape.Plan.Thickness?.Mm ?? 0, shape.Plan.Stations.IsEmpty ? 0 : shape.Plan.Stations.Max(s => s.Thickness.Mm)) + ScaleBlank.OverMm);

    private static ScaleBlank BlankOf(Results r, ScaleShape shape, HandleWanted wanted)
    {
        var along = r.Plan.Grip is { } g ? (g.To - g.From).Unit : new Point(1, 0);
        var box = shape.Outline.Path.Transformed(Transform.Turn(-Math.Atan2(along.Y, along.X))).Bounds;
        var size = new BlockSize(Length.OfMm(box.Width + (2 * ScaleBlank.RoomMm)), Length.OfMm(box.Height + (2 * ScaleBlank.RoomMm)), BoardOf(shape));
        var kerf = r.Shop.SawsAreAssumed || r.Shop.Saws.IsEmpty ? Length.OfMm(UsualKerfMm) : Length.OfMm(r.Shop.Saws.Max(s => s.Kerf.Mm));
        if (wanted.Board is not { } board) return new ScaleBlank(size, kerf, null, null);
        var made = HandleMaterials.Of(r.Plan, r.Shop);
        var alike = made.Front == made.Back;
        var book = alike && made.Front is { Kind: HandleKind.Wood } && board.Thick.Mm >= (2 * size.Thick.Mm) + kerf.Mm;
        var yield = ScaleBlanks.Of(board, size, kerf, Length.Zero, book);

        // one board of each material when the two sides differ
        var pieces = alike ? yield.Pairs : yield.Blanks;
        return new ScaleBlank(size, kerf, yield, pieces > 0 ? ((wanted.Pieces - 1) / pieces) + 1 : null) { IsBookMatched = book && yield.Pairs > 0 };
    }

    private static IEnumerable<HeatGrowth> Growth(HandleMaterials made, ScaleShape shape)
    {
        var length = Length.OfMm(shape.Outline.Path.Bounds.Width);
        (HandleMaterial? Of, string Faces)[] sides = made.Front == made.Back ? [(made.Front, "scales")] : [(made.Front, "front scale"), (made.Back, "back scale")];
        foreach (var (of, faces) in sides)
        {
            if (of?.ExpansionMillionthsPerK is { } e) yield return new HeatGrowth(faces, ThermalMismatch.Of(length, e.Value, SteelMillionthsPerK, HotterC), HotterC);
        }
    }
}
