using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What goes through the mouth of a sheath.</summary>
/// <param name="HandleIn">How much of the handle's front goes in; 0 when the sheath ends before the grip.</param>
/// <param name="Thick">Thickest place that goes in: the bar's, or that of the handle where it goes in and the plan says how thick it is.</param>
/// <param name="IsHandleKnown">Whether the handle's thickness is known, or none of it goes in.</param>
public sealed record MouthThickness(Length HandleIn, Length Thick, bool IsHandleKnown)
{
    /// <summary>For a sheath that ends at a place of the plan.</summary>
    public static MouthThickness Of(Plan plan, SheathPocket pocket)
    {
        var steel = plan.Stock.Thickness;
        if (plan.Grip is not { } grip) return new MouthThickness(Length.Zero, steel, true);
        var tip = pocket.ToSheath.A;
        var front = Math.Max(grip.From.X * tip, grip.To.X * tip);
        var inside = front - (pocket.Mouth.Mm * tip);
        if (!(inside > 1e-6)) return new MouthThickness(Length.Zero, steel, true);

        // scales as the plan shapes them, else what it lays over the stretch on each side
        var each = plan.Scales?.Thickness is { } scale ? scale + plan.Scales.LinerThickness
            : plan.AddedMasses.Where(m => m is { Thickness: not null, Over: { } over } && Math.Min(over.From.Mm * tip, over.To.Mm * tip) <= front && Math.Max(over.From.Mm * tip, over.To.Mm * tip) >= pocket.Mouth.Mm * tip).Select(m => m.Thickness).Max();
        return new MouthThickness(Length.OfMm(inside), steel + (2 * (each ?? Length.Zero)), each is not null);
    }
}
