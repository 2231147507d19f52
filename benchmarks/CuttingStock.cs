using System.Diagnostics;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Planners;
using Tangwright.Tests.Bars;

namespace Tangwright.Benchmarks;

/// <summary>Public sets of cutting stock in one dimension: bars, bound, time, case by case. FILE may be FILE:FIRST:COUNT:WORK.</summary>
internal static class CuttingStock
{
    public static void Run(string folder, string[] names)
    {
        foreach (var name in names)
        {
            var parts = name.Split(':');
            var cases = CuttingCase.Read(folder, parts[0]);
            if (parts.Length > 2) cases = [.. cases.Skip(int.Parse(parts[1], CultureInfo.InvariantCulture)).Take(int.Parse(parts[2], CultureInfo.InvariantCulture))];
            var work = parts.Length > 3 ? int.Parse(parts[3], CultureInfo.InvariantCulture) : 10;
            var (proven, known, all) = (0, 0, Stopwatch.StartNew());
            foreach (var c in cases)
            {
                var clock = Stopwatch.StartNew();
                var answer = StraightCuts.Of(c.Lengths, c.Wanted, c.Bar, new BarSolver(), work)!;
                for (var i = 0; i < c.Lengths.Length; i++)
                {
                    if (answer.Fillings.Sum(f => f.Counts[i] * f.Times) < c.Wanted[i]) throw new InvalidOperationException($"{c.Name}: too few of {c.Lengths[i]}");
                }

                if (answer.Fillings.Any(f => f.Counts.Select((n, i) => n * c.Lengths[i]).Sum() > c.Bar) || answer.Fillings.Sum(f => f.Times) > answer.Bars) throw new InvalidOperationException($"{c.Name}: a bar too full or too many");
                if (answer.IsFewest) proven++;
                if (c.Known > 0 && answer.Bars <= c.Known) known++;
                Console.WriteLine($"{parts[0]} {c.Name}: {answer.Bars} bars, at least {answer.AtLeast}{(c.Known > 0 ? $", known {c.Known}" : "")}, {clock.Elapsed.TotalSeconds:F2} s");
            }

            Console.WriteLine($"{parts[0]}: {cases.Count} cases, {proven} proven, {known} as few as known, {all.Elapsed.TotalSeconds:F1} s");
        }
    }
}
