using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What size a drilled hole comes out at, from data/fits/drilled-size.csv.</summary>
[Formula("band of a drilled hole's size", "and10387", "twist drills 0.0135 to 2 in in metal, guided by a bushing or a pilot and ground true; a drill ground uneven cuts further over")]
public static class DrilledSize
{
    private static readonly Lazy<StepTable> Table = new(() => StepTable.Read("drilled-size.csv"));

    /// <summary>Least and greatest size; null over 2 in.</summary>
    public static (Length Least, Length Most)? Of(Length drill)
        => Table.Value.At(drill.Inches, "plus_in") is { } plus
            ? (drill - Length.OfInches(Table.Value.At(drill.Inches, "minus_in")!.Value), drill + Length.OfInches(plus))
            : null;

    /// <summary>The most a hole is over its drill; over 2 in as at 2 in.</summary>
    public static Length MostOver(Length drill) => Length.OfInches(Table.Value.At(Math.Min(drill.Inches, Table.Value.Most), "plus_in") ?? 0);
}
