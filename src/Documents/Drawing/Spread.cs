namespace Tangwright.Documents;

/// <summary>Places for labels along a line: each as near as can be to where it belongs, none closer than a gap.</summary>
public static class Spread
{
    /// <summary>Middles of the labels in the order of <paramref name="wanted"/>, which must ascend; null when they do not all fit.</summary>
    /// <param name="wanted">Where each belongs, mm, ascending.</param>
    /// <param name="sizes">Size of each label along the line, mm.</param>
    /// <param name="gap">Least distance between neighbours, mm.</param>
    /// <param name="low">Lower end of the line, mm.</param>
    /// <param name="high">Upper end of the line, mm.</param>
    public static double[]? Of(IReadOnlyList<double> wanted, IReadOnlyList<double> sizes, double gap, double low, double high)
    {
        var n = wanted.Count;
        if (n == 0) return [];
        var offset = new double[n];
        for (var i = 1; i < n; i++) offset[i] = offset[i - 1] + (0.5 * (sizes[i - 1] + sizes[i])) + gap;
        var (first, last) = (low + (0.5 * sizes[0]), high - (0.5 * sizes[n - 1]) - offset[n - 1]);
        if (first > last) return null;

        // least squares with least gaps: neighbours that come too close are pooled about their mean
        var pools = new List<(double Sum, int Count)>();
        for (var i = 0; i < n; i++)
        {
            pools.Add((wanted[i] - offset[i], 1));
            while (pools.Count > 1 && pools[^2].Sum / pools[^2].Count > pools[^1].Sum / pools[^1].Count)
            {
                pools[^2] = (pools[^2].Sum + pools[^1].Sum, pools[^2].Count + pools[^1].Count);
                pools.RemoveAt(pools.Count - 1);
            }
        }

        var places = new double[n];
        var k = 0;
        foreach (var (sum, count) in pools)
        {
            var at = Math.Clamp(sum / count, first, last);
            for (var j = 0; j < count; j++, k++) places[k] = at + offset[k];
        }

        return places;
    }
}
