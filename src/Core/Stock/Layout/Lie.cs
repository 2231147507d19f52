using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How a piece lies on the bar: always along it, as the grain wants.</summary>
public enum Lie
{
    /// <summary>As drawn.</summary>
    Plain,

    /// <summary>Turned half round, head to tail.</summary>
    Turned,

    /// <summary>Turned over about its length: the back face up.</summary>
    Over,

    /// <summary>Turned over and half round.</summary>
    OverTurned,
}

/// <summary>Turns an outline the way it lies.</summary>
public static class Lies
{
    /// <summary>From the plan's axes to a piece whose box begins at the origin.</summary>
    /// <param name="lie">How it lies.</param>
    /// <param name="box">Box of the outline, plan's axes.</param>
    public static Transform Turn(Lie lie, Box box) => lie switch
    {
        Lie.Plain => new(1, 0, 0, 1, -box.MinX, -box.MinY),
        Lie.Turned => new(-1, 0, 0, -1, box.MaxX, box.MaxY),
        Lie.Over => new(1, 0, 0, -1, -box.MinX, box.MaxY),
        _ => new(-1, 0, 0, 1, box.MaxX, -box.MinY),
    };

    /// <summary>In the maker's words.</summary>
    public static string Words(Lie lie) => lie switch
    {
        Lie.Plain => "plain",
        Lie.Turned => "turned end for end",
        Lie.Over => "back face up",
        _ => "back face up, turned end for end",
    };
}
