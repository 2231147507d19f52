namespace Tangwright.Core;

/// <summary>The worst of several, the same one however the plan lies: of those that rounding alone tells apart, the first in the plan's order.</summary>
internal static class Worst
{
    /// <summary>Shares closer than this are alike; no unit.</summary>
    private const double AlikeShare = 1e-9;

    /// <summary>The first of those with the greatest share.</summary>
    public static T Greatest<T>(IReadOnlyCollection<T> all, Func<T, double> share)
    {
        var most = all.Max(share);
        return all.First(a => share(a) >= most - AlikeShare);
    }

    /// <summary>The first of those with the least share.</summary>
    public static T Least<T>(IReadOnlyCollection<T> all, Func<T, double> share) => Greatest(all, a => -share(a));
}
