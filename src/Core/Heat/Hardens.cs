using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Does it harden?</summary>
public enum HardensVerdict
{
    /// <summary>Through and through.</summary>
    Through,

    /// <summary>Partly, or the two methods do not agree.</summary>
    Marginal,

    /// <summary>No.</summary>
    WillNot,

    /// <summary>Nothing is known that could say.</summary>
    NotKnown,
}

/// <summary>What comes of one thickness in the quench.</summary>
/// <param name="Station">Where.</param>
/// <param name="Run">Its cooling.</param>
/// <param name="Structure">What came of the middle; null for steels whose changes are not followed.</param>
/// <param name="Hardness">Out of the quench; null when not known.</param>
/// <param name="Verdict">By its cooling.</param>
public sealed record HardensAt(QuenchStation Station, CoolingRun Run, Structure? Structure, Estimate<double>? Hardness, HardensVerdict Verdict);

/// <summary>Whether a steel hardens in a thickness and a quenchant, two ways: by cooling against the start of pearlite and bainite, and by ideal diameter.</summary>
/// <param name="Medium">The quenchant.</param>
/// <param name="From">Out of the oven.</param>
/// <param name="Bath">Bath, plates or air.</param>
/// <param name="At">Each thickness, edge first.</param>
/// <param name="Ideal">Ideal diameter; null when it does not apply.</param>
/// <param name="Needed">Ideal diameter the thickest needs for half martensite, least and most; null when it does not apply.</param>
/// <param name="ByDiameter">Verdict by ideal diameter.</param>
/// <param name="Verdict">Both together.</param>
/// <param name="Why">Why, in words.</param>
public sealed record Hardens(
    QuenchMedium Medium,
    Temperature From,
    Temperature Bath,
    ImmutableArray<HardensAt> At,
    Length? Ideal,
    (Length Least, Length Most)? Needed,
    HardensVerdict ByDiameter,
    HardensVerdict Verdict,
    string Why)
{
    /// <summary>Soft shares up to which it counts as hardened through, and from which as not hardened.</summary>
    public const double ThroughShare = 0.05, SoftShare = 0.5;

    /// <summary>Colder than this the quench is over, °C.</summary>
    public const double OutCelsius = 60;

    /// <summary>Still air has to bring stainless steel below 600 °C in so many seconds; engineering, from memory.</summary>
    private const double StainlessSeconds = 60;

    /// <summary>Works it out.</summary>
    /// <param name="steel">The steel; its hardening and composition must be known.</param>
    /// <param name="stations">Thicknesses, edge first.</param>
    /// <param name="medium">The quenchant.</param>
    /// <param name="from">Out of the oven.</param>
    /// <param name="bath">Bath, plates or air.</param>
    public static Hardens Of(Steel steel, ImmutableArray<QuenchStation> stations, QuenchMedium medium, Temperature from, Temperature bath)
    {
        var (bar, cycle) = (steel.Chemistry!.Value, steel.Heat.Hardening!);
        var isFollowed = bar.IsLowAlloy;
        var dissolved = InSolution.Of(steel)!.Value;
        var decay = isFollowed ? new AusteniteDecay(dissolved) : null;
        Func<double, double> transfer = t => medium.TransferWPerM2K(t, bath.Celsius);
        var stop = Math.Max(OutCelsius, bath.Celsius + 5);
        var at = stations.Select(s => One(s, SlabCooling.Of(s.ThicknessMm, from.Celsius, bath.Celsius, transfer, decay, stop))).ToImmutableArray();
        var kinetics = Worst(at.Select(a => a.Verdict));
        if (!isFollowed) return new Hardens(medium, from, bath, at, null, null, HardensVerdict.NotKnown, kinetics, AirWhy(at[^1]));
        if (medium.Severity is not { } severity) return new Hardens(medium, from, bath, at, null, null, HardensVerdict.NotKnown, kinetics, Told(kinetics, HardensVerdict.NotKnown, at));
        var thickest = Length.OfMm(stations.Max(s => s.ThicknessMm));
        var ideal = CarbonSteelBias.Applies(bar) ? CarbonSteelBias.Of(bar) : IdealDiameter.Of(dissolved with { VanadiumPercent = bar.VanadiumPercent });
        var (least, most) = (GrossmannPlate.NeededBy(thickest, severity.Value.HighPerInch), GrossmannPlate.NeededBy(thickest, severity.Value.LowPerInch));
        var usual = GrossmannPlate.NeededBy(thickest, 0.5 * (severity.Value.LowPerInch + severity.Value.HighPerInch));
        var byDiameter = ideal.Mm >= GrossmannPlate.ThroughRatio * usual.Mm ? HardensVerdict.Through : ideal.Mm < least.Mm ? HardensVerdict.WillNot : HardensVerdict.Marginal;
        return new Hardens(medium, from, bath, at, ideal, (least, most), byDiameter, Together(kinetics, byDiameter), Told(kinetics, byDiameter, at));

        HardensAt One(QuenchStation s, CoolingRun run)
        {
            if (run.Centre is not { } c) return new HardensAt(s, run, null, steel.Heat.AsQuenched is { } q ? new Estimate<double>(0.5 * (q.Value.LowHrc + q.Value.HighHrc), q.Value.LowHrc - MixedHardness.BandHrc, q.Value.HighHrc + MixedHardness.BandHrc, q.SourceKey) : null, AirVerdict(bar, cycle, medium, run));
            var rate = run.CPerSecond(700) ?? 1;
            var hrc = MixedHardness.Hrc(dissolved, new SteelParts(c.MartensiteShare, c.AusteniteShare, c.PearliteShare + c.FerriteShare, c.BainiteShare), 3600 * rate);
            return new HardensAt(s, run, c, Wider(hrc, c.SoftShare), OfShare(c.SoftShare));
        }
    }

    /// <summary>The same with stations of another outcome, judged again.</summary>
    internal Hardens With(ImmutableArray<HardensAt> at)
    {
        ImmutableArray<HardensAt> judged = [.. at.Select(a => a.Structure is { } c ? a with { Verdict = OfShare(c.SoftShare), Hardness = Wider(a.Hardness, c.SoftShare) } : a)];
        var kinetics = Worst(judged.Select(a => a.Verdict));
        return this with { At = judged, Verdict = ByDiameter == HardensVerdict.NotKnown ? kinetics : Together(kinetics, ByDiameter), Why = Told(kinetics, ByDiameter, judged) };
    }

    private static HardensVerdict OfShare(double soft) => soft <= ThroughShare ? HardensVerdict.Through : soft <= SoftShare ? HardensVerdict.Marginal : HardensVerdict.WillNot;

    private static HardensVerdict Together(HardensVerdict kinetics, HardensVerdict diameter)
        => kinetics == diameter ? kinetics : kinetics == HardensVerdict.NotKnown ? diameter : HardensVerdict.Marginal;

    // soft parts are known by a factor of two, and with them the hardness: up to 6 HRC either way, an engineering figure
    private static Estimate<double>? Wider(Estimate<double>? e, double soft)
        => e is { } h ? h with { Low = h.Value - Math.Max(h.Value - h.Low, Math.Min(6, 30 * soft)), High = h.Value + Math.Max(h.High - h.Value, Math.Min(6, 15 * soft)) } : null;

    private static HardensVerdict AirVerdict(Chemistry bar, HardeningCycle cycle, QuenchMedium medium, CoolingRun run)
    {
        if (cycle.CooledIn != CooledIn.Air) return HardensVerdict.NotKnown;
        var isSlow = medium.Kind == QuenchKind.Air && bar.ChromiumPercent > 11.5 && bar.CarbonPercent < 1.2 && run.Seconds(600) is not <= StainlessSeconds;
        return isSlow ? HardensVerdict.Marginal : HardensVerdict.Through;
    }

    private static string AirWhy(HardensAt thickest) => thickest.Verdict switch
    {
        HardensVerdict.Through => "steels of its kind harden in air or between plates at the thickness of a blade; plates and oil add speed and a flat blade",
        HardensVerdict.Marginal => $"{Shown.Number(thickest.Run.Seconds(600) ?? 0, 0)} s in still air down to 600 °C is slow for stainless steel (wanted: {StainlessSeconds:0} s, from memory): plates or moving air",
        _ => "its changes in cooling are not known here: go by its maker's sheet and a coupon",
    };

    private static string Told(HardensVerdict kinetics, HardensVerdict diameter, ImmutableArray<HardensAt> at)
    {
        var worst = at.MaxBy(a => a.Structure?.SoftShare ?? 0)!;
        var soft = worst.Structure?.SoftShare ?? 0;
        var share = soft < 0.001 ? "less than 0.1 %" : soft > 0.99 ? "all of it" : $"about {Shown.Number(100 * soft, soft < 0.1 ? 1 : 0)} %";
        var cooling = $"by its cooling {share} turns soft on the way in the middle of the {worst.Station.Where} ({kinetics.Words()})";
        return diameter == HardensVerdict.NotKnown ? cooling : $"{cooling}; by ideal diameter: {diameter.Words()}" + (kinetics == diameter ? "" : "; where the two do not agree it counts as marginal");
    }

    private static HardensVerdict Worst(IEnumerable<HardensVerdict> all) => all.Max();
}

/// <summary>Verdicts in words.</summary>
public static class HardensWords
{
    /// <summary>The verdict in trade words.</summary>
    public static string Words(this HardensVerdict verdict) => verdict switch
    {
        HardensVerdict.Through => "hardens through",
        HardensVerdict.Marginal => "marginal",
        HardensVerdict.WillNot => "will not harden",
        _ => "not known",
    };
}
