using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a saw does when the shop file does not say: common practice for its kind.</summary>
public static class SawPractice
{
    /// <summary>Diameter of a cut-off disc when not said, mm.</summary>
    public const double DiscMm = 125;

    /// <summary>Steel parted in a minute, cm²/min, in annealed blade steel; the range stands beside it.</summary>
    /// <remarks>Common practice: bench band saw 6 to 15, hacksaw 1 to 2, thin wheel 10 to 20, chop saw 30 to 60, plasma 2 to 4 m/min at 5 mm.</remarks>
    public static (double Rate, double Low, double High) RateCm2PerMin(Saw saw) => saw.RateCm2PerMin is { } own
        ? (own, own, own)
        : saw.Kind switch
        {
            SawKind.Band => (10, 6, 15),
            SawKind.PortableBand => (8, 5, 12),
            SawKind.Hacksaw => (1.5, 1, 2),
            SawKind.Chop => (40, 30, 60),
            SawKind.Disc => (15, 10, 20),
            _ => (100, 60, 150),
        };

    /// <summary>How far the cut strays to both sides together, mm.</summary>
    public static double WanderMm(Saw saw) => saw.Wander?.Mm ?? saw.Kind switch
    {
        SawKind.Band or SawKind.PortableBand => 1,
        SawKind.Hacksaw => 1.5,
        SawKind.Chop => 1,
        SawKind.Disc => 1.5,
        _ => 2,
    };

    /// <summary>Minutes to mark, clamp and start one cut.</summary>
    public static double SetUpMinutes(Saw saw) => saw.SetUpMinutes ?? saw.Kind switch
    {
        SawKind.Band or SawKind.PortableBand => 1,
        SawKind.Hacksaw => 1.5,
        _ => 2,
    };

    /// <summary>Greatest angle off a square cut across the bar, degrees.</summary>
    public static double MostOffSquareDegrees(Saw saw) => saw.MostAngle?.Degrees ?? (saw.Kind == SawKind.Chop ? 0 : 90);

    /// <summary>Whether it runs a toothed blade.</summary>
    public static bool HasTeeth(SawKind kind) => kind is SawKind.Band or SawKind.PortableBand or SawKind.Hacksaw;

    /// <summary>Whether a cut can end inside the steel, to meet another.</summary>
    public static bool CanStopInside(SawKind kind) => kind != SawKind.Chop;

    /// <summary>In the maker's words.</summary>
    public static string Words(SawKind kind) => kind switch
    {
        SawKind.Band => "band saw",
        SawKind.PortableBand => "portable band saw",
        SawKind.Hacksaw => "hacksaw",
        SawKind.Chop => "chop saw",
        SawKind.Disc => "cut-off disc",
        _ => "plasma torch",
    };
}
