using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Cooling of a whole section, edge to spine: columns through the thickness that lead heat to each other, so that a thin edge is kept warm by the steel behind it.</summary>
[Formula("cooling of a section: columns through the thickness, heat led along the section between them", "patankar-1980", "Faces within about 10 degrees of the middle plane: their slope is left out of the conduction (1 to 3 %)")]
public static class SectionCooling
{
    private const double MostDropC = 4, Growth = 1.25, LongestSeconds = 5, MostSeconds = 3600;

    /// <summary>What came of the middle of each column.</summary>
    /// <param name="thicknessMm">Thickness at each column, edge first, mm.</param>
    /// <param name="widthMm">Width of a column along the section, mm.</param>
    /// <param name="startCelsius">Out of the oven, °C.</param>
    /// <param name="bathCelsius">Bath, plates or air, °C.</param>
    /// <param name="transfer">Heat taken, W/(m²·K), by the face's temperature, °C.</param>
    /// <param name="decay">What the austenite does.</param>
    /// <param name="stopCelsius">Stops when all middles are as cold.</param>
    public static ImmutableArray<Structure> Of(ImmutableArray<double> thicknessMm, double widthMm, double startCelsius, double bathCelsius, Func<double, double> transfer, AusteniteDecay decay, double stopCelsius)
    {
        var columns = thicknessMm.Select(t => new CoolingColumn(0.0005 * t, startCelsius, bathCelsius, transfer, decay, HeatProperties.OfAustenite)).ToArray();
        var along = new double[CoolingColumn.Cells];
        var before = columns.Select(_ => new double[CoolingColumn.Cells]).ToArray();
        var width = 0.001 * widthMm;
        var (now, last, step) = (0.0, 0.0, 0.1 * MostDropC / columns.Max(c => c.FirstGuessCPerSecond));
        while (columns.Max(c => c.CentreC) > stopCelsius && now < MostSeconds)
        {
            for (var j = 0; j < columns.Length; j++) columns[j].Temperatures.CopyTo(before[j]);
            for (var j = 0; j < columns.Length; j++)
            {
                for (var i = 0; i < along.Length; i++)
                {
                    var own = before[j][i];
                    var k = Austenite.ConductivityWPerMK(own) / (width * width * thicknessMm[j]);
                    along[i] = 0;
                    if (j > 0) along[i] += k * 0.5 * (thicknessMm[j] + thicknessMm[j - 1]) * (before[j - 1][i] - own);
                    if (j < columns.Length - 1) along[i] += k * 0.5 * (thicknessMm[j] + thicknessMm[j + 1]) * (before[j + 1][i] - own);
                }

                columns[j].Step(step, last, along);
            }

            now += step;
            last = step;

            // explicit along the section: k dt / (ρ c dy²) well under a half
            var steady = 0.2 * width * width / 7e-6;
            step = Math.Min(Math.Min(Growth * step, MostDropC / columns.Max(c => c.FastestCPerSecond)), Math.Min(LongestSeconds, steady));
        }

        return [.. columns.Select(c => SlabCooling.StructureOf(c, 0, decay, Math.Min(c.CentreC, SlabCooling.RoomCelsius)))];
    }
}
