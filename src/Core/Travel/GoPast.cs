using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How far to go past a place and come back, so that the table always stops against the same flank of its screw.</summary>
public static class GoPast
{
    /// <summary>So many times the play at least.</summary>
    private const double Plays = 2;

    /// <summary>Less is hard to see on a dial or a readout, mm; common practice.</summary>
    private const double LeastMm = 0.5;

    /// <summary>When the play was never written down, mm; common practice: more than the screw of a small mill has.</summary>
    private const double UnknownMm = 1;

    /// <summary>How far; null when the machine is said to have no play.</summary>
    /// <remarks>Twice the play, upwards to the next tenth of a millimetre, 0.5 mm at least; 1 mm when the play is not known.</remarks>
    public static Length? Of(Machine machine) => machine.Backlash switch
    {
        null => Length.OfMm(UnknownMm),
        { Mm: <= 0 } => null,
        { } play => Length.OfMm(Math.Max(LeastMm, Math.Ceiling((10 * Plays * play.Mm) - 1e-9) / 10)),
    };
}
