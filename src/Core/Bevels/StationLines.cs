using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Lines to scribe at one station when the taper has been ground first, that face down on the plate there.</summary>
/// <param name="Name">"S1".</param>
/// <param name="Sold">For the bar as sold.</param>
/// <param name="Measured">For the bar as measured; null when nobody measured.</param>
public readonly record struct StationLines(string Name, ScribeLines Sold, ScribeLines? Measured)
{
    /// <summary>Each station's own lines; none where every station is as thick as the bar, or where one face is ground, whose line lies everywhere as far from the face that stays.</summary>
    /// <param name="plan">A plan with a bevel.</param>
    /// <param name="stations">The stations.</param>
    /// <param name="edge">Thickness between the lines.</param>
    /// <param name="measured">Thickness of the bar as measured; null: nominal.</param>
    public static ImmutableArray<StationLines> Of(Plan plan, ImmutableArray<BevelStation> stations, Length edge, Length? measured)
    {
        var sold = FaceThickness.Of(plan);
        if (plan.Bevel!.OneSided || stations.All(s => sold.At(s.Foot.X) >= sold.StockMm - 1e-6)) return [];
        var bar = measured is { } m ? FaceThickness.Of(plan with { Stock = plan.Stock with { Thickness = m } }) : null;
        return [.. stations.Select(s => new StationLines(s.Name, At(sold, s), bar is null ? null : At(bar, s)))];

        ScribeLines At(FaceThickness faces, BevelStation s) => ScribeLines.Of(Length.OfMm(faces.At(s.Foot.X)), edge, oneSided: false);
    }
}
