using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How tempering is done.</summary>
/// <param name="Count">How many tempers.</param>
/// <param name="HoldHours">Hours at heat of each.</param>
public readonly record struct TemperCycle(int Count, double HoldHours)
{
    /// <summary>Hours at heat in all.</summary>
    public double Hours => Count * HoldHours;
}

/// <summary>How an oven holds heat.</summary>
/// <param name="ReadsHighByC">How much too high it reads, °C; null when never measured.</param>
/// <param name="SwingC">How far it swings to either side, °C.</param>
public readonly record struct OvenHolds(double? ReadsHighByC, double SwingC);

/// <summary>How a wanted hardness can be had.</summary>
public enum TemperVerdict
{
    /// <summary>By the temperature given.</summary>
    Good,

    /// <summary>By the temperature given, at an end of the band, to stay out of temperatures at which the steel is not tempered.</summary>
    Moved,

    /// <summary>Only at temperatures at which the steel is not tempered.</summary>
    Avoided,

    /// <summary>Not: it is harder than the coldest temper leaves.</summary>
    TooHard,

    /// <summary>Not: it is softer than what is known reaches.</summary>
    TooSoft,

    /// <summary>Not known.</summary>
    NoData,
}

/// <summary>A hardness that can be had instead.</summary>
/// <param name="Band">The band to aim for.</param>
/// <param name="At">Temperature of the steel that gives its middle.</param>
public readonly record struct TemperInstead(HardnessBand Band, Temperature At);

/// <summary>The temperature for a wanted hardness: solved for the steel, then moved by what the oven reads wrong.</summary>
/// <param name="Verdict">Whether it can be had.</param>
/// <param name="Steel">Temperature the steel has to have; null when there is none.</param>
/// <param name="Set">What the oven is set to; null when there is none.</param>
/// <param name="Gives">What comes out, with its band, HRC.</param>
/// <param name="OverSwing">Softest and hardest while the oven swings, HRC.</param>
/// <param name="Avoided">Where the steel is not tempered, when that is the trouble.</param>
/// <param name="Instead">What to aim for instead, the colder temper first; empty when it can be had.</param>
/// <param name="Remark">What to know of it; empty when nothing.</param>
public sealed record TemperSetPoint(TemperVerdict Verdict, Temperature? Steel, Temperature? Set, Estimate<double>? Gives, HardnessBand? OverSwing, TemperAvoided? Avoided, ImmutableArray<TemperInstead> Instead, string Remark)
{
    /// <summary>Coldest temper of a blade, °C; common practice.</summary>
    public const double ColdestC = 150;

    /// <summary>How far below the last temper a straightening temper stays, °C; common practice.</summary>
    public const double StraightenBelowC = 10;

    private const int StepC = 4;
    private const double MiddleNearHrc = 0.3;

    /// <summary>Hottest steel of a straightening temper; null without a temper.</summary>
    public Temperature? StraightenAtMost => Steel is { } t ? Temperature.OfCelsius(t.Celsius - StraightenBelowC) : null;

    /// <summary>Solves it.</summary>
    /// <param name="steel">The steel.</param>
    /// <param name="asQuenchedHrc">Hardness out of the quench, HRC; null when not known.</param>
    /// <param name="wanted">Band wanted.</param>
    /// <param name="cycle">Tempers.</param>
    /// <param name="oven">The oven.</param>
    /// <param name="learned">What the shop's own readings say.</param>
    public static TemperSetPoint For(Steel steel, double? asQuenchedHrc, HardnessBand wanted, TemperCycle cycle, OvenHolds oven, HardnessBias learned)
    {
        double? At(double c) => Tempered.Of(steel, asQuenchedHrc, Temperature.OfCelsius(c), cycle.Hours).Hrc?.Value + learned.MeanHrc;
        TemperAvoided? AvoidedAt(double c) => steel.Heat.Avoided.FirstOrDefault(a => c + oven.SwingC > a.From.Celsius && c - oven.SwingC < a.To.Celsius);
        var middle = 0.5 * (wanted.LowHrc + wanted.HighHrc);
        var tried = Tried(At, c => AvoidedAt(c) is null, middle);
        if (tried.Count == 0 && asQuenchedHrc + InitialHardness.BandHrc < wanted.LowHrc) return new TemperSetPoint(TemperVerdict.TooHard, null, null, null, null, null, [], "");
        if (tried.Count == 0) return new TemperSetPoint(TemperVerdict.NoData, null, null, null, null, null, [], Tempered.Of(steel, asQuenchedHrc, Temperature.OfCelsius(200), cycle.Hours).Remark is { Length: > 0 } why ? why : Tempered.NoData);
        bool Inside((double C, double Hrc, bool IsAllowed) t) => t.Hrc >= wanted.LowHrc - 1e-9 && t.Hrc <= wanted.HighHrc + 1e-9;
        var best = tried.OrderBy(t => Math.Abs(t.Hrc - middle)).ThenBy(t => t.C).First();
        if (tried.Where(t => t.IsAllowed && Inside(t)).OrderBy(t => Math.Abs(t.Hrc - middle)).ThenBy(t => t.C).FirstOrDefault() is { Hrc: > 0 } good)
        {
            var fine = Enumerable.Range(1 - StepC, (2 * StepC) - 1).Select(d => good.C + d).Where(c => c >= ColdestC && AvoidedAt(c) is null).Select(c => (C: c, Hrc: At(c))).Where(t => t.Hrc is not null).MinBy(t => Math.Abs(t.Hrc!.Value - middle)).C;
            var moved = Math.Abs(good.Hrc - middle) > Math.Abs(best.Hrc - middle) + MiddleNearHrc;
            return Solved(moved ? TemperVerdict.Moved : TemperVerdict.Good, fine, moved ? AvoidedAt(best.C) : null);
        }

        if (tried.All(t => t.Hrc < wanted.LowHrc)) return Missed(TemperVerdict.TooHard, null, Instead(hard: tried.Where(t => t.IsAllowed).DefaultIfEmpty(tried[0]).MaxBy(t => t.Hrc), soft: null));
        if (tried.All(t => t.Hrc > wanted.HighHrc)) return Missed(TemperVerdict.TooSoft, null, Instead(hard: tried.Where(t => t.IsAllowed).DefaultIfEmpty(tried[^1]).MinBy(t => t.Hrc), soft: null));
        if (AvoidedAt(best.C) is null) return new TemperSetPoint(TemperVerdict.NoData, null, null, null, null, null, [], "what is printed of this steel leaves a gap there: temper test pieces from the bar and log them");
        var colder = tried.Where(t => t.IsAllowed && t.C < best.C).Select(t => ((double C, double Hrc, bool IsAllowed)?)t).LastOrDefault();
        var hotter = tried.Where(t => t.IsAllowed && t.C > best.C).Select(t => ((double C, double Hrc, bool IsAllowed)?)t).FirstOrDefault();
        return Missed(TemperVerdict.Avoided, AvoidedAt(best.C), Instead(colder, hotter));

        TemperSetPoint Solved(TemperVerdict verdict, double c, TemperAvoided? avoided)
        {
            var steelAt = Temperature.OfCelsius(c);
            var gives = Tempered.Of(steel, asQuenchedHrc, steelAt, cycle.Hours);
            var shifted = learned.Shifted(gives.Hrc)!;
            double[] swung = [At(c - oven.SwingC) ?? shifted.Value, At(c + oven.SwingC) ?? shifted.Value];
            return new TemperSetPoint(verdict, steelAt, Temperature.OfCelsius(c + (oven.ReadsHighByC ?? 0)), shifted, new HardnessBand(swung.Min(), swung.Max()), avoided, [], gives.Remark);
        }

        TemperSetPoint Missed(TemperVerdict verdict, TemperAvoided? avoided, ImmutableArray<TemperInstead> instead) => new(verdict, null, null, null, null, avoided, instead, "");

        // a band of the same width that begins at the hardness there, on the side away from the temperatures avoided
        ImmutableArray<TemperInstead> Instead((double C, double Hrc, bool IsAllowed)? hard, (double C, double Hrc, bool IsAllowed)? soft)
        {
            var width = wanted.HighHrc - wanted.LowHrc;
            var found = ImmutableArray.CreateBuilder<TemperInstead>();
            if (hard is { } h)
            {
                var low = Math.Ceiling(2 * h.Hrc) / 2;
                if (low + width > tried.Max(t => t.Hrc)) low = Math.Floor(2 * (tried.Max(t => t.Hrc) - width)) / 2;
                Add(new HardnessBand(low, low + width));
            }

            if (soft is { } s)
            {
                var high = Math.Floor(2 * s.Hrc) / 2;
                Add(new HardnessBand(high - width, high));
            }

            return found.ToImmutable();

            void Add(HardnessBand band)
            {
                var want = 0.5 * (band.LowHrc + band.HighHrc);
                if (tried.Where(t => t.IsAllowed && t.Hrc >= band.LowHrc - 1e-9 && t.Hrc <= band.HighHrc + 1e-9).Select(t => ((double C, double Hrc)?)(t.C, t.Hrc)).MinBy(t => Math.Abs(t!.Value.Hrc - want)) is { } at) found.Add(new TemperInstead(band, Temperature.OfCelsius(at.C)));
            }
        }
    }

    // every few degrees, and every degree where the middle of the band lies between
    private static List<(double C, double Hrc, bool IsAllowed)> Tried(Func<double, double?> hrcAt, Func<double, bool> isAllowed, double middle)
    {
        var tried = new List<(double C, double Hrc, bool IsAllowed)>();
        double? before = null;
        for (var c = (int)ColdestC; c <= FullTemperRegression.HottestC; c += StepC)
        {
            var hrc = hrcAt(c);
            if (before is { } b && hrc is { } h && (b - middle) * (h - middle) < 0)
            {
                for (var between = c - StepC + 1; between < c; between++)
                {
                    if (hrcAt(between) is { } found) tried.Add((between, found, isAllowed(between)));
                }
            }

            if (hrc is { } at) tried.Add((c, at, isAllowed(c)));
            before = hrc;
        }

        return tried;
    }
}
