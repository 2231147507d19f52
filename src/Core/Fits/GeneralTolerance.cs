using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How far a size without a tolerance of its own may be off, from data/fits/general-tolerances.csv.</summary>
[Formula("general tolerance of a linear size, plus or minus mm", "iso-2768-1", "sizes 0.5 to 2000 mm, classes f m c v; broken edges have their own table")]
public static class GeneralTolerance
{
    /// <summary>Least size, mm.</summary>
    private const double LeastMm = 0.5;

    private static readonly Lazy<StepTable> Table = new(() => StepTable.Read("general-tolerances.csv"));

    /// <summary>Plus or minus; null where the standard has none.</summary>
    /// <param name="size">The size.</param>
    /// <param name="letter">f fine, m medium, c coarse, v very coarse.</param>
    public static Length? Of(Length size, char letter)
        => size.Mm >= LeastMm - 1e-9 && Table.Value.At(size.Mm, letter.ToString()) is > 0 and var mm ? Length.OfMm(mm) : null;
}
