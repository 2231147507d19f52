using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A way of cutting plate that one sends a drawing to, from data/tooling/cutting-services.csv.</summary>
/// <param name="Name">Name to ask for it by.</param>
/// <param name="Words">In words.</param>
/// <param name="Kerf">Usual kerf.</param>
/// <param name="LeastKerf">Least kerf met.</param>
/// <param name="MostKerf">Most kerf met.</param>
/// <param name="Edge">Steel to take off a cut edge: hard, burnt, tapered.</param>
/// <param name="IsHot">Whether it cuts with heat.</param>
public sealed record HiredCut(string Name, string Words, Length Kerf, Length LeastKerf, Length MostKerf, Length Edge, bool IsHot)
{
    private static readonly Lazy<ImmutableArray<HiredCut>> Table = new(Read);

    /// <summary>All that are known.</summary>
    public static ImmutableArray<HiredCut> All => Table.Value;

    /// <summary>Where the figures come from, in words.</summary>
    public const string Source = "guides to kerf widths; the edge " + SourceTag.CommonPractice;

    /// <summary>Least distance between two finished pieces: the widest kerf, and the edge of both.</summary>
    public Length Clearance => MostKerf + (Edge * 2);

    private static ImmutableArray<HiredCut> Read()
    {
        return [.. DataRows.Of("cutting-services.csv").Select(c => new HiredCut(c[0], c[1], Mm(c[2]), Mm(c[3]), Mm(c[4]), Mm(c[5]), c[6] == "1"))];

        static Length Mm(string text) => Length.OfMm(double.Parse(text, CultureInfo.InvariantCulture));
    }
}
