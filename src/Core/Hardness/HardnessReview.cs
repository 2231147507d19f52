using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A reading as judged.</summary>
/// <param name="Entry">The line of the log.</param>
/// <param name="Hrc">Its hardness, the tester's error taken off, HRC.</param>
/// <param name="IsFarFromRest">Whether it lies far from the rest of its batch.</param>
/// <param name="IsOutsideBand">Whether it lies outside the band wanted.</param>
/// <param name="Causes">What may be behind it, the likeliest first; empty when nothing is wrong.</param>
/// <param name="Do">What to do; empty when nothing is wrong.</param>
public sealed record JudgedReading(HardnessEntry Entry, double Hrc, bool IsFarFromRest, bool IsOutsideBand, ImmutableArray<string> Causes, string Do)
{
    /// <summary>Whether something is wrong with it.</summary>
    public bool IsFlagged => IsFarFromRest || IsOutsideBand;
}

/// <summary>What the hardness log says of one steel in one oven.</summary>
/// <param name="Readings">Its readings, in the order of the log.</param>
/// <param name="Bias">How much harder than predicted it comes out; readings far from the rest left out.</param>
public sealed record HardnessReview(ImmutableArray<JudgedReading> Readings, HardnessBias Bias)
{
    /// <summary>Oil hotter than this at the quench is the first thing thought of.</summary>
    public const double OilHotC = 65;

    /// <summary>A reading so many standard deviations from the rest of its batch is not one of them.</summary>
    public const double FarDeviations = 2.5;

    private const int FewestRest = 2;

    /// <summary>Whether any reading is flagged.</summary>
    public bool HasFlags => Readings.Any(r => r.IsFlagged);

    /// <summary>The readings of one steel in one oven.</summary>
    /// <param name="log">The log.</param>
    /// <param name="tester">The tester of the shop.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="oven">Name of the temper oven; empty: any.</param>
    /// <param name="asQuenchedHrc">Hardness out of the quench, HRC; null when not known.</param>
    /// <param name="wanted">Band wanted where the log says none; null when none is.</param>
    public static HardnessReview Of(ImmutableArray<HardnessEntry> log, HardnessTester? tester, Steel steel, string oven, double? asQuenchedHrc, HardnessBand? wanted)
    {
        ImmutableArray<HardnessEntry> own = [.. log.Where(e => e.IsTempered && IsNamed(steel, e.Steel) && (e.Oven.Length == 0 || oven.Length == 0 || string.Equals(e.Oven, oven, StringComparison.OrdinalIgnoreCase)))];
        var judged = own.Select(e => Judge(e, [.. own.Where(o => !ReferenceEquals(o, e) && string.Equals(o.Batch, e.Batch, StringComparison.OrdinalIgnoreCase) && o.TemperedAt == e.TemperedAt)], tester, wanted)).ToImmutableArray();
        var offs = new List<double>();
        foreach (var j in judged.Where(j => !j.IsFarFromRest))
        {
            var hours = j.Entry.HoldHours * j.Entry.Tempers;
            if (Tempered.Of(steel, asQuenchedHrc, j.Entry.TemperedAt!.Value, hours).Hrc is { } predicted) offs.Add(j.Hrc - predicted.Value);
        }

        return new HardnessReview(judged, HardnessBias.Of([.. offs]));
    }

    private static bool IsNamed(Steel steel, string name) => string.Equals(steel.Name, name, StringComparison.OrdinalIgnoreCase) || steel.OtherNames.Any(n => string.Equals(n, name, StringComparison.OrdinalIgnoreCase));

    private static JudgedReading Judge(HardnessEntry e, ImmutableArray<HardnessEntry> rest, HardnessTester? tester, HardnessBand? wanted)
    {
        var hrc = e.TrueHrc(tester);
        var asked = e.Wanted ?? wanted;
        var (far, isLow) = (false, asked is { } w && hrc < w.LowHrc);
        if (rest.Length >= FewestRest)
        {
            var others = rest.Select(o => o.TrueHrc(tester)).ToArray();
            var mean = others.Average();
            var sd = Math.Max(HardnessBias.TesterSdHrc, Math.Sqrt(others.Sum(o => (o - mean) * (o - mean)) / (others.Length - 1)));
            far = Math.Abs(hrc - mean) > FarDeviations * sd;
            isLow |= far && hrc < mean;
        }

        // what a figure on a dial cannot show is not held against it
        var outside = asked is { } band && (hrc < band.LowHrc - 1e-9 || hrc > band.HighHrc + 1e-9);
        return far || outside ? new JudgedReading(e, hrc, far, outside, isLow ? SoftCauses(e) : HardCauses(e, tester), isLow ? SoftDo(e) : "test again beside it; if it stays, temper once more 5 to 10 °C (10 to 20 °F) hotter and read again") : new JudgedReading(e, hrc, IsFarFromRest: false, IsOutsideBand: false, [], "");
    }

    private static ImmutableArray<string> SoftCauses(HardnessEntry e)
    {
        var load = e.Load.Length > 0 ? $" ({Named("load", e.Load)})" : "";
        var causes = ImmutableArray.CreateBuilder<string>();
        if (e.Oil is { Celsius: > OilHotC } oil) causes.Add($"oil too hot at the quench: the log says {Shown.Both(oil)}{load}; was the same oil hot for others of that load?");
        causes.Add("soft skin that lost its carbon: grind 0.2 mm (0.008 in) off the spot and read again");
        causes.Add(IsThinSpot(e.Spot) ? $"wrong spot: the log says \"{e.Spot}\"; read on flat full thickness, away from edge, holes and bevel" : "wrong spot: too near an edge, a hole or the bevel, or on a bowed piece");
        causes.Add("tempered hotter than thought: the oven swings, or reads low");
        causes.Add("a place thinner than ten dents are deep");
        if (e.Oil is null) causes.Add("oil too hot or too slow at the quench: nothing is logged of it");
        return causes.ToImmutable();
    }

    private static ImmutableArray<string> HardCauses(HardnessEntry e, HardnessTester? tester) =>
    [
        .. (e.ReadsHighByHrc ?? tester?.ReadsHighByHrc) is null ? ["the tester was never checked on a test block"] : (ImmutableArray<string>)[],
        "tempered cooler or shorter than thought: the clock was started before the steel was at heat, or the oven reads high",
        "read on or beside an older dent, which is harder",
    ];

    private static string SoftDo(HardnessEntry e) => (e.Load.Length > 0 ? $"test all of {Named("load", e.Load)}; " : "test it again beside the spot and at the other end; ")
        + "a piece that stays soft is hardened again from the normalising on, in oil that has cooled, and tempered again";

    private static string Named(string what, string name) => name.StartsWith(what, StringComparison.OrdinalIgnoreCase) ? name : what + " " + name;

    private static bool IsThinSpot(string spot) => new[] { "edge", "bevel", "tip", "hole", "thin" }.Any(w => spot.Contains(w, StringComparison.OrdinalIgnoreCase));
}
