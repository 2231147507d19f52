using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Distances from the plan's datum into the piece.</summary>
public static class FromDatum
{
    /// <summary>Along and across from the datum to a point of the plan; positive into the piece. From a coordinate the piece is taken to lie where the middle of its box lies.</summary>
    public static (Length Along, Length Across) Of(Plan plan, Point p)
    {
        var box = plan.Outline.Bounds;
        return (
            Length.OfMm(Into(plan.Datum.X, p.X, box.MinX, box.MaxX)),
            Length.OfMm(Into(plan.Datum.Y, p.Y, box.MinY, box.MaxY)));
    }

    /// <summary>Where measuring starts, plan's axes, mm.</summary>
    public static Point Zero(Plan plan)
    {
        var box = plan.Outline.Bounds;
        return new Point(At(plan.Datum.X, box.MinX, box.MaxX), At(plan.Datum.Y, box.MinY, box.MaxY));
    }

    private static double At(DatumMark mark, double least, double greatest) => mark.Side switch
    {
        DatumSide.Left or DatumSide.Bottom => least,
        DatumSide.Right or DatumSide.Top => greatest,
        _ => mark.At.Mm,
    };

    private static double Into(DatumMark mark, double at, double least, double greatest)
    {
        var zero = At(mark, least, greatest);
        return 0.5 * (least + greatest) >= zero ? at - zero : zero - at;
    }
}
