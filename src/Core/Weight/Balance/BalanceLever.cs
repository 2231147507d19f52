namespace Tangwright.Core;

/// <summary>What of the piece must be weighed again when a lever moves.</summary>
[Flags]
public enum LeverTouches
{
    /// <summary>Only what is put on the steel.</summary>
    Nothing = 0,

    /// <summary>The holes.</summary>
    Holes = 1,

    /// <summary>The flat faces.</summary>
    Faces = 2,

    /// <summary>What the bevel takes.</summary>
    Bevel = 4,

    /// <summary>What breaking the edges takes.</summary>
    BrokenEdges = 8,
}

/// <summary>One thing a maker can change to bring weight and balance where they are wanted.</summary>
/// <param name="Key">Stable name: "tang-taper".</param>
/// <param name="Name">What it is, in trade words: "tang thickness at the butt".</param>
/// <param name="IsWeight">Whether its value is in grams, not mm.</param>
/// <param name="Now">Value in the plan as it stands, mm or g.</param>
/// <param name="Low">Least value looked at.</param>
/// <param name="High">Greatest value looked at.</param>
/// <param name="Limits">Why it goes no further either way.</param>
/// <param name="InPlan">How the plan says it, with {0} for the value.</param>
public sealed record BalanceLever(string Key, string Name, bool IsWeight, double Now, double Low, double High, string Limits, string InPlan)
{
    /// <summary>The plan with the lever at a value.</summary>
    public Func<Plan, double, Plan> Set { get; init; } = (plan, _) => plan;

    /// <summary>What must be weighed again.</summary>
    public LeverTouches Touches { get; init; }

    /// <summary>How far it can be moved in all.</summary>
    public double Range => High - Low;
}
