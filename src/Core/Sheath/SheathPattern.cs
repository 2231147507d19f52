using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The flat pattern of a sheath: x from the mouth to the tip, y up; a folded one has its fold's middle at y 0, one half below and its mirror image above, of two sheets one is drawn; mm.</summary>
public sealed record SheathPattern
{
    /// <summary>The sheath as asked for.</summary>
    public required SheathPlan Asked { get; init; }

    /// <summary>What goes in and the room about it.</summary>
    public required SheathPocket Pocket { get; init; }

    /// <summary>What goes through the mouth.</summary>
    public required MouthThickness Mouth { get; init; }

    /// <summary>Thickness of the material.</summary>
    public required Length Material { get; init; }

    /// <summary>Whether it is folded along the spine; else two alike are cut.</summary>
    public bool IsFolded => Asked.Kind != SheathKind.TwoSheets;

    /// <summary>Width of the strip that goes round the spine; 0 when it is not folded.</summary>
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

    /// <summary>Blank across it, both halves of a folded one.</summary>
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
        var (material, mouth) = (SheathRules.Thickness(asked), MouthThickness.Of(plan, pocket));
        var (isLeather, isFolded) = (asked.Kind == SheathKind.Leather, asked.Kind != SheathKind.TwoSheets);
        var (seam, finished, fromEdge) = (SheathRules.Seam(asked), SheathRules.Finished(asked), SheathRules.FromEdge(asked));
        var fold = isFolded ? FoldAllowance.Of(mouth.Thick, material) : Length.Zero;

        // a folded sheath has a seam from the mouth to the fold beside the tip; two sheets have one all round to the mouth again
        Path Beside(Length outside) => isFolded ? BesideSide.Of(pocket.Side, outside.Mm) : BesideSide.Of(pocket.Side.Add(default), outside.Mm, endsSquareTo: 90);
        Path Whole(Length outside) => isFolded ? BothHalves(Beside(outside), fold.Mm) : Closed(Beside(outside));
        var cut = Whole(seam);
        var line = Beside(Length.Max(Length.Zero, finished - fromEdge));
        var stitches = EvenStitches.Along(line.Transformed(Transform.Shift(new Point(0, -0.5 * fold.Mm))), SheathRules.Pitch(asked), fromEdge);
        var welt = isLeather ? Between(Beside(Length.OfMm(SheathRules.WeltPlayMm)), Beside(seam)) : null;
        var layers = isLeather ? Math.Max(1, (int)Math.Ceiling((plan.Stock.Thickness / material) - 0.15)) : 0;
        (Length Long, Length Wide)? loop = asked.BeltLoop is { } belt
            ? (Length.OfMm((2 * (belt.Mm + SheathRules.LoopPlayMm)) + (2 * SheathRules.LoopEndMm)), Length.OfMm(SheathRules.LoopWidthMm))
            : null;
        return new SheathPattern
        {
            Asked = asked,
            Pocket = pocket,
            Mouth = mouth,
            Material = material,
            Fold = fold,
            Cut = cut,
            Trim = isLeather || finished == seam ? null : Whole(finished),
            Stitches = stitches,
            Welt = welt,
            WeltLayers = layers,
            Loop = loop,
            Area = Area.OfMm2(((isFolded ? 1 : 2) * AreaMm2(cut)) + (layers * AreaMm2(welt)) + (loop is { } l ? l.Long.Mm * l.Wide.Mm : 0)),
            Thread = isLeather ? SheathRules.Thread(stitches.Length, stitches.Pitch, material * (2 + layers)) : Length.Zero,
        };
    }

    private static double AreaMm2(Path? path) => path is null ? 0 : Math.Abs(Moments.Of(path).AreaMm2);

    private static Path BothHalves(Path side, double fold)
    {
        var low = side.Transformed(Transform.Shift(new Point(0, -0.5 * fold)));
        var up = low.Transformed(Transform.Scale(1, -1)).Reversed();
        return new Path([.. low.Segments, new Line(low.End, up.Start), .. up.Segments, new Line(up.End, low.Start)], closed: true);
    }

    private static Path Closed(Path side) => new([.. side.Segments, new Line(side.End, side.Start)], closed: true);

    private static Path Between(Path inner, Path outer)
    {
        var back = inner.Reversed();
        return new Path([.. outer.Segments, new Line(outer.End, back.Start), .. back.Segments, new Line(back.End, outer.Start)], closed: true);
    }
}
