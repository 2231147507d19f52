using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Is enough known about the steel?</summary>
public static class SteelFindings
{
    /// <summary>No file, or no density in it.</summary>
    public static IEnumerable<Finding> Of(Results r)
    {
        var name = r.Plan.Stock.Steel;
        if (r.Steel is null)
        {
            yield return new Finding(
                FindingCodes.SteelUnknown,
                Severity.Warning,
                "steel",
                null,
                $"There is no file for steel {name}: masses are left out.",
                name,
                "a steel with a file",
                "the steels that come with the program and the shop's own",
                "name the steel as its file does, or write a file for it with its density and where that is from");
        }
        else if (r.Steel.Density is null)
        {
            yield return new Finding(
                FindingCodes.SteelNoDensity,
                Severity.Note,
                "steel",
                null,
                $"The file of steel {r.Steel.Name} gives no density: masses are left out.",
                "no density",
                "a density with its source",
                "the steel's file",
                "add the density from the mill's data sheet to the file");
        }
    }
}
