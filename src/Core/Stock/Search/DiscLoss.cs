namespace Tangwright.Core;

/// <summary>How badly two pieces overlap, told by their inner discs: never 0, falling off smoothly, so that a search always feels which way out is nearer.</summary>
/// <remarks>After Gardeyn, Vanden Berghe and Wauters 2025, arXiv:2509.13329, section 6: overlap of two discs d, replaced below e by e²/(2e − d), times the smaller disc; the root of the sum times the sizes of the hulls.</remarks>
internal static class DiscLoss
{
    private const float SmoothShare = 0.01f;

    /// <summary>The loss at a shift.</summary>
    public static float Of(TurnedPiece a, TurnedPiece b, double dx, double dy)
    {
        var e = SmoothShare * (float)Math.Max(a.Across, b.Across);
        var sum = 0f;
        for (var i = 0; i < a.DiscXs.Length; i++)
        {
            var (x, y, r) = (a.DiscXs[i] - (float)dx, a.DiscYs[i] - (float)dy, a.DiscRs[i]);
            for (var j = 0; j < b.DiscXs.Length; j++)
            {
                var (ex, ey, q) = (x - b.DiscXs[j], y - b.DiscYs[j], b.DiscRs[j]);
                var d = r + q - MathF.Sqrt((ex * ex) + (ey * ey));
                sum += (d >= e ? d : e * e / ((2 * e) - d)) * MathF.Min(r, q);
            }
        }

        return MathF.Sqrt(sum) * (float)(a.RootHull * b.RootHull);
    }
}
