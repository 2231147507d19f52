using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>An added mass of a plan where it lies.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Weight">Weight of all of it.</param>
/// <param name="At">Where its middle lies, plan's axes, mm.</param>
/// <param name="Water">Moments about the origin of as much water: a volume of 1 g/cm³ that weighs the same, mm³..mm⁵.</param>
public sealed record PlacedMass(string Name, Mass Weight, Point At, Moments Water)
{
    /// <summary>Those of a plan. What lies over a stretch is spread evenly over the outline there, holes not left out; what has one place counts as a point.</summary>
    public static ImmutableArray<PlacedMass> Of(Plan plan) => [.. plan.AddedMasses.Select(m => Of(m, over => Strip(plan, over)))];

    /// <summary>One of them.</summary>
    /// <param name="m">The added mass.</param>
    /// <param name="strip">Gives the outline between two x.</param>
    internal static PlacedMass Of(AddedMass m, Func<(Length From, Length To), Moments> strip)
    {
        if (m.Over is not { } over)
        {
            var at = m.At ?? default;
            return Placed(m, m.Weight ?? default, new Moments(1, at.X, at.Y, at.X * at.X, at.X * at.Y, at.Y * at.Y));
        }

        var area = strip(over);
        var weight = m.Weight ?? (Volume.OfMm3(area.AreaMm2 * m.Sides * (m.Thickness?.Mm ?? 0)) * (m.Density ?? default));
        return Placed(m, weight, area * (1 / area.AreaMm2));
    }

    /// <summary>Area and moments of the outline between two x.</summary>
    internal static Moments Strip(Plan plan, (Length From, Length To) over) => TaperedPlate.Of(new Region(plan.Outline, []), FaceThickness.Strip(over.From.Mm, over.To.Mm));

    private static PlacedMass Placed(AddedMass m, Mass weight, Moments share) => new(m.Name, weight, share.Centroid, share * (1000 * weight.Grams));
}
