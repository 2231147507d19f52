namespace Tangwright.Core;

/// <summary>Where along the piece blade and handle lie, by x of the plan, mm.</summary>
/// <param name="TipMm">The tip's end of the outline.</param>
/// <param name="BladeMm">Where the bevel ends toward the handle.</param>
/// <param name="FrontMm">Where the handle begins.</param>
/// <param name="ButtMm">The butt's end of the outline.</param>
internal sealed record HandleEnd(double TipMm, double BladeMm, double FrontMm, double ButtMm)
{
    /// <summary>Those of a plan; null when neither edge nor grip tells.</summary>
    public static HandleEnd? Of(Plan plan)
    {
        var box = plan.Outline.Bounds;
        if (plan.Edge is not { } edge) return null;
        var middle = 0.5 * (edge.From.X + edge.To.X);
        var tipAtLeft = middle < (plan.Grip?.Middle.X ?? box.Centre.X);
        var (tip, butt) = tipAtLeft ? (box.MinX, box.MaxX) : (box.MaxX, box.MinX);
        var heel = tipAtLeft ? Math.Max(edge.From.X, edge.To.X) : Math.Min(edge.From.X, edge.To.X);
        var blade = plan.Bevel?.Plunge is { } p ? 0.5 * (p.A.X + p.B.X) : heel;
        var front = plan.Grip is { } g ? (tipAtLeft ? Math.Min(g.From.X, g.To.X) : Math.Max(g.From.X, g.To.X)) : heel;
        return new HandleEnd(tip, blade, front, butt);
    }
}
