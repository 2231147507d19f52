using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One moment of a cooling.</summary>
/// <param name="AtSeconds">Time from the quench, s.</param>
/// <param name="CentreCelsius">In the middle of the thickness, °C.</param>
/// <param name="FaceCelsius">At the face, °C.</param>
public readonly record struct CoolingPoint(double AtSeconds, double CentreCelsius, double FaceCelsius);

/// <summary>What austenite turned into at one place, shares of the whole.</summary>
/// <param name="PearliteShare">Pearlite.</param>
/// <param name="BainiteShare">Bainite.</param>
/// <param name="FerriteShare">Ferrite.</param>
/// <param name="MartensiteShare">Martensite.</param>
/// <param name="AusteniteShare">Austenite left.</param>
public readonly record struct Structure(double PearliteShare, double BainiteShare, double FerriteShare, double MartensiteShare, double AusteniteShare)
{
    /// <summary>All that turned soft on the way: pearlite, bainite, ferrite.</summary>
    public double SoftShare => PearliteShare + BainiteShare + FerriteShare;
}

/// <summary>The cooling of a thickness.</summary>
/// <param name="ThicknessMm">Thickness, mm.</param>
/// <param name="Curve">Its course.</param>
/// <param name="Centre">What came of the middle; null when the steel's changes are not followed.</param>
/// <param name="Face">What came of the face; null likewise.</param>
public sealed record CoolingRun(double ThicknessMm, ImmutableArray<CoolingPoint> Curve, Structure? Centre, Structure? Face)
{
    /// <summary>When the middle comes down to a temperature, s; null when it does not.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public double? Seconds(double celsius)
    {
        for (var i = 1; i < Curve.Length; i++)
        {
            var (a, b) = (Curve[i - 1], Curve[i]);
            if (b.CentreCelsius <= celsius) return a.AtSeconds + ((b.AtSeconds - a.AtSeconds) * (a.CentreCelsius - celsius) / (a.CentreCelsius - b.CentreCelsius));
        }

        return null;
    }

    /// <summary>How fast the middle cools as it passes a temperature, °C/s; null when it does not come there.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public double? CPerSecond(double celsius) => Seconds(celsius + 5) is { } a && Seconds(celsius - 5) is { } b && b > a ? 10 / (b - a) : null;
}

/// <summary>Cooling of a plate from its middle to its faces: conduction with properties by temperature, heat taken by the face's temperature, and the heat of the changes.</summary>
[Formula("cooling of a plate through its thickness: finite volumes, Crank-Nicolson", "patankar-1980", "Plate wide against its thickness; exact series of the plane wall met within 0.2 %; heat taken in real baths is good to ±30 % between laboratories")]
public static class SlabCooling
{
    /// <summary>What is out of the bath cools on to this, °C.</summary>
    public const double RoomCelsius = 25;

    private const double MostDropC = 2, Growth = 1.25, LongestSeconds = 5, MostSeconds = 3600, KeptC = 4;

    /// <summary>Works it out.</summary>
    /// <param name="thicknessMm">Thickness, mm.</param>
    /// <param name="startCelsius">Out of the oven, °C.</param>
    /// <param name="bathCelsius">Bath, plates or air, °C.</param>
    /// <param name="transfer">Heat taken, W/(m²·K), by the face's temperature, °C.</param>
    /// <param name="decay">What the austenite does; null: it stays.</param>
    /// <param name="stopCelsius">Stops when the middle is as cold.</param>
    /// <param name="properties">Heat properties; null: those of austenite.</param>
    public static CoolingRun Of(double thicknessMm, double startCelsius, double bathCelsius, Func<double, double> transfer, AusteniteDecay? decay, double stopCelsius, HeatProperties? properties = null)
    {
        var column = new CoolingColumn(0.0005 * thicknessMm, startCelsius, bathCelsius, transfer, decay, properties ?? HeatProperties.OfAustenite);
        var curve = ImmutableArray.CreateBuilder<CoolingPoint>();
        curve.Add(new(0, startCelsius, column.FaceC));
        var (now, last, step) = (0.0, 0.0, 0.1 * MostDropC / column.FirstGuessCPerSecond);
        while (column.CentreC > stopCelsius && now < MostSeconds)
        {
            column.Step(step, last, []);
            now += step;
            last = step;
            if (curve[^1].CentreCelsius - column.CentreC > KeptC || curve[^1].FaceCelsius - column.FaceC > 5 * KeptC || column.CentreC <= stopCelsius) curve.Add(new(now, column.CentreC, column.FaceC));
            step = Math.Min(Math.Min(Growth * step, MostDropC / column.FastestCPerSecond), LongestSeconds);
        }

        if (curve[^1].AtSeconds < now) curve.Add(new(now, column.CentreC, column.FaceC));
        return new CoolingRun(thicknessMm, curve.ToImmutable(), At(0), At(CoolingColumn.Cells - 1));

        Structure? At(int cell) => decay is null ? null : StructureOf(column, cell, decay, Math.Min(column.CentreC, RoomCelsius));
    }

    /// <summary>What a cell has become, cooled to a temperature.</summary>
    internal static Structure StructureOf(CoolingColumn column, int cell, AusteniteDecay decay, double coldestC)
    {
        var (p, b, f) = column.Turned(cell);
        var rest = 1 - p - b - f;
        var left = rest * RetainedAustenite.Share(decay.AlphaRatio, decay.MartensiteStartCelsius, coldestC);
        return new Structure(p, b, f, rest - left, left);
    }
}
