using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Drill sizes as a maker lists them: one by one or from one to another.</summary>
public static class DrillList
{
    private const int MostSizes = 2000;
    private const double GreatestMm = 150;

    /// <summary>The sizes of one item: <c>16 mm</c>, <c>#1 to #60</c>, <c>A to Z</c>, <c>1 mm to 13 mm by 0.5 mm</c>.</summary>
    /// <param name="item">The item.</param>
    /// <param name="unitMm">Unit of bare numbers, mm.</param>
    public static Reading<ImmutableArray<DrillSize>> Read(string item, double unitMm)
    {
        var parts = item.Split(" to ", StringSplitOptions.TrimEntries);
        if (parts.Length == 1) return One(item, unitMm).As(d => ImmutableArray.Create(d));
        if (parts.Length != 2) return Bad("more than one 'to'", "write one range an item, as #1 to #60");
        var ends = parts[1].Split(" by ", StringSplitOptions.TrimEntries);
        var from = One(parts[0], unitMm);
        var to = One(ends[0], unitMm);
        if (!from.IsGood) return Bad(from.Message, from.Remedy);
        if (!to.IsGood) return Bad(to.Message, to.Remedy);
        var (low, high) = (Length.Min(from.Value.Diameter, to.Value.Diameter), Length.Max(from.Value.Diameter, to.Value.Diameter));
        var listed = IsListed(from.Value) && IsListed(to.Value);
        if (listed && ends.Length == 1)
        {
            return Reading<ImmutableArray<DrillSize>>.Of([.. DrillSeries.NumbersAndLetters.Where(d => d.Diameter >= low && d.Diameter <= high)]);
        }

        if (listed) return Bad("a step between number or letter drills", $"write {parts[0]} to {ends[0]}");
        if (ends.Length != 2) return Bad("a range without its step", $"write {NumberText.Clip(item)} by 0.5 mm, or by 1/64 in");
        var step = LengthText.Read(ends[1], unitMm);
        if (!step.IsGood) return Bad(step.Message, step.Remedy);
        if (step.Value.Length.Mm <= 0) return Bad("a step that is not above 0", "write a step as 0.5 mm");
        var count = Math.Floor(((high - low) / step.Value.Length) + 1e-6) + 1;
        if (count > MostSizes) return Bad($"a range of more than {MostSizes} sizes", "write a wider step");
        var inch = step.Value.Writing is LengthWriting.InchFraction;
        return Reading<ImmutableArray<DrillSize>>.Of([.. Enumerable.Range(0, (int)count).Select(i => Named(low + (step.Value.Length * i), inch))]);
    }

    /// <summary>One list of all sizes of some items, ascending, each name once; or the first item that is wrong.</summary>
    internal static ImmutableArray<DrillSize> Sorted(IEnumerable<DrillSize> sizes)
        => [.. sizes.DistinctBy(d => d.Name).OrderBy(d => d.Diameter.Mm).ThenBy(d => d.Name, StringComparer.Ordinal)];

    private static Reading<DrillSize> One(string text, double unitMm)
    {
        var read = LengthText.Read(text, unitMm, drills: true);
        if (!read.IsGood) return Reading<DrillSize>.Bad(read.Message, read.Remedy);
        var d = read.Value.Length;
        if (d.Mm is not (> 0 and <= GreatestMm)) return Reading<DrillSize>.Bad($"a drill that is not above 0 and at most {GreatestMm} mm", "check the number and the unit");
        if (read.Value.Writing == LengthWriting.Drill) return Reading<DrillSize>.Of(DrillSeries.Named(text.Trim())!);
        return Reading<DrillSize>.Of(Named(d, read.Value.Writing is LengthWriting.InchFraction or LengthWriting.InchDecimal));
    }

    private static bool IsListed(DrillSize d) => d.Name[0] == '#' || d.Name.Length == 1;

    private static DrillSize Named(Length d, bool inch)
    {
        if (!inch) return DrillSeries.OfMm(Math.Round(d.Mm, 6));
        var nearest = SixtyFourths.Nearest(d);
        return Math.Abs(nearest.Error.Mm) < 1e-6 ? DrillSeries.Fraction((int)nearest.Sixtyfourths) : new DrillSize($"{Shown.Trimmed(d.Inches, 4)} in", d);
    }

    private static Reading<ImmutableArray<DrillSize>> Bad(string message, string remedy) => Reading<ImmutableArray<DrillSize>>.Bad(message, remedy);
}
