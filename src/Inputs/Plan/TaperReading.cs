using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads the tapers of a plan. The tip side is that of the sharpened part; without one the side away from the grip.</summary>
internal sealed class TaperReading(Path? outline, SharpenedPart? edge, Grip? grip, Stock? stock)
{
    public (Taper? Distal, Taper? Tang) Read(Fields distal, Fields tang)
    {
        var (d, t) = (One(distal, towardTip: true), One(tang, towardTip: false));
        if (d is not null && t is not null && Overlap(d, t)) tang.Fault("starts", "the tapers of blade and tang overlap", "let one begin where the other does, or further along");
        return (d, t);
    }

    private Taper? One(Fields f, bool towardTip)
    {
        if (!f.IsThere) return null;
        var (starts, ends, thickness) = (f.Length("starts", positive: false), f.Length("ends", positive: false), f.Length("thickness"));
        if (outline is null || starts is not { } from || thickness is not { } t) return null;
        if (stock is not null && t > stock.Thickness)
        {
            f.Fault("thickness", $"thickness is {Shown.Both(t)}, more than the bar's {Shown.Both(stock.Thickness)}", "write the thickness the taper ends with, which is the smaller one");
            return null;
        }

        var way = TipAtLeft() is { } tipAtLeft ? tipAtLeft == towardTip ? -1 : 1 : 0;
        if (way == 0 && ends is null)
        {
            f.FaultAt(f.Offset, $"it is not known which end is the {(towardTip ? "tip" : "butt")}", "add ends = and the x where the taper ends; or [edge] or [grip], which tell it");
            return null;
        }

        var box = outline.Bounds;
        var to = ends ?? Length.OfMm(way < 0 ? box.MinX : box.MaxX);
        var length = to.Mm - from.Mm;
        if (Math.Abs(length) < 0.1 || length * way < 0)
        {
            var where = way switch { 0 => $"more than {Shown.Both(Length.OfMm(0.1))} away from", > 0 => "greater than", _ => "smaller than" };
            f.Fault(ends is null ? "starts" : "ends", ends is null ? $"starts is x {Shown.Both(from)}, beyond the end of the piece" : $"ends is x {Shown.Both(to)}, not on the {(towardTip ? "tip" : "butt")} side of starts", ends is null ? $"write an x between {Shown.Both(Length.OfMm(box.MinX))} and {Shown.Both(Length.OfMm(box.MaxX))}" : $"write an x {where} {Shown.Both(from)}");
            return null;
        }

        return new Taper(from, to, t);
    }

    private bool? TipAtLeft()
    {
        var middle = outline!.Bounds.Centre.X;
        if (edge is not null && grip is not null) return 0.5 * (edge.From.X + edge.To.X) < grip.Middle.X;
        if (edge is not null) return 0.5 * (edge.From.X + edge.To.X) < middle;
        return grip is null ? null : grip.Middle.X > middle;
    }

    private static bool Overlap(Taper a, Taper b)
        => Math.Max(Math.Min(a.Starts.Mm, a.Ends.Mm), Math.Min(b.Starts.Mm, b.Ends.Mm)) < Math.Min(Math.Max(a.Starts.Mm, a.Ends.Mm), Math.Max(b.Starts.Mm, b.Ends.Mm)) - 1e-9;
}
