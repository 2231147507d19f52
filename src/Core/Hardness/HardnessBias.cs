using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a shop's own readings say of how far a steel in an oven comes out from what is predicted.</summary>
/// <param name="Readings">Readings it rests on.</param>
/// <param name="MeanHrc">How much harder than predicted it comes out, HRC.</param>
/// <param name="SdHrc">Standard deviation of that, HRC.</param>
[Formula("how much harder a steel comes out of an oven than predicted, mean and standard deviation, HRC", "bayes-normal", "Readings that scatter evenly by 1.0 HRC about a shift that is itself 1.8 HRC wide before the first reading; both figures from published scatter; readings far from the rest left out")]
public readonly record struct HardnessBias(int Readings, double MeanHrc, double SdHrc)
{
    /// <summary>Standard deviation of the shift before any reading, HRC.</summary>
    public const double PriorSdHrc = 1.8;

    /// <summary>Standard deviation of one reading of a shop's tester, HRC.</summary>
    public const double TesterSdHrc = 1.0;

    /// <summary>What is believed without a reading.</summary>
    public static HardnessBias Prior => new(0, 0, PriorSdHrc);

    /// <summary>What is believed after some.</summary>
    /// <param name="offs">Reading less prediction, each, HRC.</param>
    public static HardnessBias Of(ReadOnlySpan<double> offs)
    {
        var sum = 0.0;
        foreach (var o in offs) sum += o;
        var sure = (1 / (PriorSdHrc * PriorSdHrc)) + (offs.Length / (TesterSdHrc * TesterSdHrc));
        return new HardnessBias(offs.Length, sum / (TesterSdHrc * TesterSdHrc) / sure, Math.Sqrt(1 / sure));
    }

    /// <summary>A prediction moved by what the readings say; once there are some, their band counts when it is the narrower.</summary>
    /// <param name="predicted">Hardness predicted, HRC; null stays null.</param>
    public Estimate<double>? Shifted(Estimate<double>? predicted)
    {
        if (predicted is not { } e || Readings == 0) return predicted;
        var reach = Math.Sqrt((SdHrc * SdHrc) + (TesterSdHrc * TesterSdHrc));
        var value = e.Value + MeanHrc;
        return e with { Value = value, Low = value - Math.Min(e.Value - e.Low, reach), High = value + Math.Min(e.High - e.Value, reach) };
    }
}
