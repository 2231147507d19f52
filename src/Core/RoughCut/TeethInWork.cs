using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Teeth per inch of a saw blade for a thickness.</summary>
[Formula("teeth per inch for a thickness: at least 3 · 25.4 / t, ideally 6 to 12 teeth in the work", SourceTag.CommonPractice, "Toothed saws, steel held flat, the thickness in the cut; 3 teeth at least, 24 at most")]
public static class TeethInWork
{
    /// <summary>Least teeth in the steel.</summary>
    public const double Least = 3;

    /// <summary>Most teeth in the steel.</summary>
    public const double Most = 24;

    /// <summary>Teeth in the steel that cut best.</summary>
    public static (double Low, double High) Ideal => (6, 12);

    /// <summary>Teeth per inch that put so many teeth in a thickness.</summary>
    public static double PerInch(double teeth, Length thickness) => teeth / thickness.Inches;

    /// <summary>The blade to mount: of those with 3 to 24 teeth in the steel the one nearest to the ideal, else null.</summary>
    /// <param name="owned">Teeth per inch of the blades owned.</param>
    /// <param name="thickness">Thickness.</param>
    public static double? Of(ImmutableArray<double> owned, Length thickness)
    {
        var fit = owned.Where(t => t * thickness.Inches is >= Least - 1e-9 and <= Most + 1e-9).ToArray();
        return fit.Length == 0 ? null : fit.MinBy(t => OffIdeal(t * thickness.Inches));
    }

    private static double OffIdeal(double teeth) => teeth < Ideal.Low ? Ideal.Low - teeth : teeth > Ideal.High ? teeth - Ideal.High : 0;
}
