using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The flat pattern of a folded sheath: x from the mouth to the tip, the fold's middle at y 0, one half below and its mirror image above; mm.</summary>
public sealed record SheathPattern
{
    /// <summary>The sheath as asked for.</summary>
    public required SheathPlan Asked { get; init; }

    /// <summary>What goes in and the room about it.</summary>
    public required SheathPocket Pocket { get; init; }

    /// <summary>Thickness of the material.</summary>
    public required Length Material { get; init; }

    /// <summary>Width of the strip that goes round the spine.</summary>
    public required Length Fold { get; init; }

    /// <summary>Where it is cut out, closed.</summary>
    public required Path Cut { get; init; }

    /// <summary>Where a sheet is trimmed after pressing, closed; null for leather.</summary>
    public required Path? Trim { get; init; }

    /// <summary>The lines the faces begin at, either side of the strip round the spine: their distance from its middle.</summary>
    public Length FaceFrom => 0.5 * Fold;

    /// <summary>Holes of the lower half; those of the upper one are their mirror images.</summary>
    public required EvenStitches Stitches { get; init; }

    /// <summary>Strip between the halves along the seam, as it lies on the lower half with the strip round the spine left away; null for a sheet.</summary>
    public required Path? Welt { get; init; }

    /// <summary>Layers of the welt, so that it is about as thick as the piece.</summary>
    public required int WeltLayers { get; init; }

    /// <summary>Blank along the sheath.</summary>
    public Length BlankLength => Length.OfMm(Cut.Bounds.Width);

    /// <summary>Blank across it, both halves.</summary>
    public Length BlankWidth => Length.OfMm(Cut.Bounds.Height);

    /// <summary>Strip for the belt loop: length and width; null when none is wanted.</summary>
    public required (Length Long, Length Wide)? Loop { get; init; }

    /// <summary>Material of pattern, welt and loop, without offcut.</summary>
    public required Area Area { get; init; }

    /// <summary>Thread for sewing by hand; 0 for a sheet.</summary>
    public required Length Thread { get; init; }

    /// <summary>The outline of the piece on the lower half, as far as it goes in and a little beyond.</summary>
    public ImmutableArray<Point> Blade => [.. Pocket.Outline.Select(p => p - new Point(0, FaceFrom.Mm))];

    /// <summary>The pattern for a plan that names a sheath; null, and the reason in words, when there is none.</summary>
    public static SheathPattern? Of(Plan plan, Region piece, out string why)
    {
        if (SheathPocket.Of(plan, piece, out why) is not { } pocket) return null;
        var asked = plan.Sheath!;
        var material = SheathRules.Thickness(asked);
        var (seam, finished) = (SheathRules.Seam(asked), SheathRules.Finished(asked));
        var fold = FoldAllowance.Of(plan.Stock.Thickness, material);
        var isLeather = asked.Kind == SheathKind.Leather;
        var cut = BothHalves(BesideSide.Of(pocket.Side, seam.Mm), fold.Mm);
        var line = BesideSide.Of(pocket.Side, Math.Max(0, (finished - SheathRules.FromEdge(asked)).Mm));
        var stitches = EvenStitches.Along(line.Transformed(Transform.Shift(new Point(0, -0.5 * fold.Mm))), SheathRules.Pitch(asked), SheathRules.FromEdge(asked));
        var welt = isLeather ? Between(BesideSide.Of(pocket.Side, SheathRules.WeltPlayMm), BesideSide.Of(pocket.Side, seam.Mm)) : null;
        var layers = isLeather ? Math.Max(1, (int)Math.Ceiling((plan.Stock.Thickness / material) - 0.15)) : 0;
        (Length Long, Length Wide)? loop = asked.BeltLoop is { } belt
            ? (Length.OfMm((2 * (belt.Mm + SheathRules.LoopPlayMm)) + (2 * SheathRules.LoopEndMm)), Length.OfMm(SheathRules.LoopWidthMm))
            : null;
        return new SheathPattern
        {
            Asked = asked,
            Pocket = pocket,
            Material = material,
            Fold = fold,
            Cut = cut,
            Trim = isLeather || finished == seam ? null : BothHalves(BesideSide.Of(pocket.Side, finished.Mm), fold.Mm),
            Stitches = stitches,
            Welt = welt,
            WeltLayers = layers,
            Loop = loop,
            Area = Area.OfMm2(AreaMm2(cut) + (layers * AreaMm2(welt)) + (loop is { } l ? l.Long.Mm * l.Wide.Mm : 0)),
            Thread = isLeather ? SheathRules.ThreadPerSeam * stitches.Length : Length.Zero,
        };
    }

    private static double AreaMm2(Path? path) => path is null ? 0 : Math.Abs(Moments.Of(path).AreaMm2);

    private static Path BothHalves(Path side, double fold)
    {
        var low = side.Transformed(Transform.Shift(new Point(0, -0.5 * fold)));
        var up = low.Transformed(Transform.Scale(1, -1)).Reversed();
        return new Path([.. low.Segments, new Line(low.End, up.Start), .. up.Segments, new Line(up.End, low.Start)], closed: true);
    }

    private static Path Between(Path inner, Path outer)
    {
        var back = inner.Reversed();
        return new Path([.. outer.Segments, new Line(outer.End, back.Start), .. back.Segments, new Line(back.End, outer.Start)], closed: true);
    }
}
