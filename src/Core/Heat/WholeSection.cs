using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Where edge and spine come out differently the whole section is cooled at once, so that the edge feels the steel behind it.</summary>
internal static class WholeSection
{
    private const double ColumnMm = 2;

    /// <summary>The same verdicts with what came of the section in place of single plates; unchanged where all stations agree.</summary>
    public static Hardens Of(Steel steel, Hardens h)
    {
        if (h.At.Length < 2 || h.At.Any(a => a.Structure is null) || h.At.All(a => a.Verdict == h.At[0].Verdict) || InSolution.Of(steel) is not { } dissolved) return h;
        var top = h.At[^1].Station.UpMm;
        var columns = Math.Max(2, (int)Math.Ceiling(top / ColumnMm));
        var width = top / columns;
        var thickness = Enumerable.Range(0, columns).Select(i => ThicknessAt(h.At, (i + 0.5) * width)).ToImmutableArray();
        var got = SectionCooling.Of(thickness, width, h.From.Celsius, h.Bath.Celsius, t => h.Medium.TransferWPerM2K(t, h.Bath.Celsius), new AusteniteDecay(dissolved), Math.Max(Hardens.OutCelsius, h.Bath.Celsius + 5));
        var again = h.With(
        [
            .. h.At.Select(a =>
            {
                var c = got[Math.Clamp((int)(a.Station.UpMm / width), 0, columns - 1)];
                var hrc = MixedHardness.Hrc(dissolved, new SteelParts(c.MartensiteShare, c.AusteniteShare, c.PearliteShare + c.FerriteShare, c.BainiteShare), 3600 * (a.Run.CPerSecond(700) ?? 1));
                return a with { Structure = c, Hardness = hrc };
            }),
        ]);
        return again with { Why = again.Why + "; edge and spine differ, so the whole section was cooled at once" };
    }

    private static double ThicknessAt(ImmutableArray<HardensAt> at, double up)
    {
        for (var i = 1; i < at.Length; i++)
        {
            var (a, b) = (at[i - 1].Station, at[i].Station);
            if (up <= b.UpMm) return a.ThicknessMm + ((b.ThicknessMm - a.ThicknessMm) * Math.Clamp((up - a.UpMm) / Math.Max(1e-9, b.UpMm - a.UpMm), 0, 1));
        }

        return at[^1].Station.ThicknessMm;
    }
}
