using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Where the program's zero is touched off, in words.</summary>
internal static class ZeroText
{
    /// <summary>A corner of the stock; or the centre of a hole, with its place from the edges while it is not made yet.</summary>
    public static string Of(BenchDatum bench, PlacedHole? hole, bool isMade)
    {
        const string Top = "upper face of the stock";
        if (hole is null) return $"{bench.AlongFrom}; {bench.AcrossFrom}; {Top}";
        var at = bench.ToBench(hole.MadeAt);
        return isMade
            ? $"centre of hole {hole.Name}, on its pin; {Top}"
            : $"centre of hole {hole.Name}, {Shown.Both(Length.OfMm(at.X))} from the {bench.AlongFrom} and {Shown.Both(Length.OfMm(at.Y))} from the {bench.AcrossFrom}; {Top}";
    }
}
