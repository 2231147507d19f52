using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How a piece lies on the bar or sheet: along it, as the grain wants, or across it where that does not matter.</summary>
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

    /// <summary>Across: turned a quarter, counter-clockwise.</summary>
    Across,

    /// <summary>Across, the other way.</summary>
    AcrossTurned,

    /// <summary>Turned over, then a quarter.</summary>
    OverAcross,

    /// <summary>Turned over, then a quarter the other way.</summary>
    OverAcrossTurned,
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
        Lie.OverTurned => new(-1, 0, 0, 1, box.MaxX, -box.MinY),
        Lie.Across => new(0, -1, 1, 0, box.MaxY, -box.MinX),
        Lie.AcrossTurned => new(0, 1, -1, 0, -box.MinY, box.MaxX),
        Lie.OverAcross => new(0, 1, 1, 0, -box.MinY, -box.MinX),
        _ => new(0, -1, -1, 0, box.MaxY, box.MaxX),
    };

    /// <summary>Whether the back face is up.</summary>
    public static bool IsOver(Lie lie) => lie is Lie.Over or Lie.OverTurned or Lie.OverAcross or Lie.OverAcrossTurned;

    /// <summary>Whether it is turned end for end, or the other way across.</summary>
    public static bool IsTurned(Lie lie) => lie is Lie.Turned or Lie.OverTurned or Lie.AcrossTurned or Lie.OverAcrossTurned;

    /// <summary>Whether it lies across.</summary>
    public static bool IsAcross(Lie lie) => lie >= Lie.Across;

    /// <summary>Its box as it lies: along, then up.</summary>
    public static (double Along, double Up) Size(Lie lie, Box box) => IsAcross(lie) ? (box.Height, box.Width) : (box.Width, box.Height);

    /// <summary>In the maker's words.</summary>
    public static string Words(Lie lie) => lie switch
    {
        Lie.Plain => "plain",
        Lie.Turned => "turned end for end",
        Lie.Over => "back face up",
        Lie.OverTurned => "back face up, turned end for end",
        Lie.Across => "across",
        Lie.AcrossTurned => "across, the other way",
        Lie.OverAcross => "back face up, across",
        _ => "back face up, across, the other way",
    };
}
