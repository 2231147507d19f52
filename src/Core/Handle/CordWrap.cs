using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A cord wound in one layer round the bare handle.</summary>
/// <param name="Along">Length of the handle it covers.</param>
/// <param name="Diameter">Its diameter.</param>
/// <param name="Turns">Number of turns.</param>
/// <param name="TurnLength">Length of one turn, mean along the handle.</param>
/// <param name="Wound">Length wound.</param>
/// <param name="Cut">Length to cut: a tenth more and the tails.</param>
/// <param name="Grams">Weight of what is wound, g; null when the cord's weight is not known.</param>
/// <param name="Share">Where it lies, as moments of one whole: 1, mm, mm².</param>
public sealed record CordWrap(Length Along, Length Diameter, double Turns, Length TurnLength, Length Wound, Length Cut, double? Grams, Moments Share)
{
    /// <summary>Middle of what is wound, plan's axes, mm.</summary>
    public Point Middle => Share.Centroid;

    /// <summary>The cord of a plan; null when it has none, or its diameter or place is not known.</summary>
    public static CordWrap? Of(Plan plan, Shop shop)
    {
        if (plan.Cord is not { } cord) return null;
        var file = HandleMaterials.Of(plan, shop).Cord;
        if ((cord.Diameter ?? file?.CordDiameter?.Value) is not { } d || (cord.From ?? plan.Grip?.From) is not { } from || (cord.To ?? plan.Grip?.To) is not { } to) return null;
        var along = from.To(to);
        var axis = (to - from).Unit;
        var pitch = d.Mm + cord.Gap.Mm;
        var rays = new RayHits(new Region(plan.Outline, []).Outer.Segments);
        var hits = new RayHit[rays.MostHits];
        var far = plan.Outline.Bounds.Width + plan.Outline.Bounds.Height;
        var faces = FaceThickness.Of(plan);
        var (wound, share) = (0.0, default(Moments));
        const int Panels = 24;
        for (var i = 0; i < Panels; i++)
        {
            for (var k = 0; k < Gauss.Nodes3.Length; k++)
            {
                var at = from + (axis * (along * (i + 0.5 + (0.5 * Gauss.Nodes3[k])) / Panels));
                if (HandleCuts.Stretch(rays, hits, at, axis.Left, far) is not var (low, high)) continue;
                var girth = Length.OfMm(2 * (high - low + faces.At(at.X)));
                var w = CordLength.Of(Length.OfMm(0.5 * Gauss.Weights3[k] * along / Panels), girth, d, pitch / d.Mm).Wrapped.Mm;
                var middle = at + (axis.Left * (0.5 * (low + high)));
                wound += w;
                share += new Moments(1, middle.X, middle.Y, middle.X * middle.X, middle.X * middle.Y, middle.Y * middle.Y) * w;
            }
        }

        if (wound <= 0) return null;
        var turns = along / pitch;
        double? grams = file?.GramsPerMetre is { } perMetre ? wound / 1000 * perMetre.Value * Thicker(d, file) : null;
        return new CordWrap(Length.OfMm(along), d, turns, Length.OfMm(wound / turns), Length.OfMm(wound), Length.OfMm(wound * (1 + CordLength.SpareShare)) + (cord.Tails ?? CordLength.Tails), grams, share * (1 / share.AreaMm2));
    }

    // a cord of another diameter than that of its file weighs as its cross section
    private static double Thicker(Length d, HandleMaterial file) => file.CordDiameter is { } own ? d.Mm * d.Mm / (own.Value.Mm * own.Value.Mm) : 1;
}
