using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A change to one hole that makes its webs pass.</summary>
/// <param name="Hole">Which hole.</param>
/// <param name="Diameter">New diameter; null when it stays.</param>
/// <param name="Step">How far to move it, mm; null when it stays.</param>
public sealed record WebChange(PlacedHole Hole, Length? Diameter, Point? Step)
{
    /// <summary>The hole after the change.</summary>
    public PlacedHole Applied => Hole with { Diameter = Diameter ?? Hole.Diameter, At = Step is { } s ? Hole.At + s : Hole.At };
}

/// <summary>The smallest changes that bring a web up to its limit, each checked against the outline and all other holes before it is offered.</summary>
public sealed class WebRemedy
{
    /// <summary>A smaller drill is not offered under this share of the planned one.</summary>
    private const double LeastShare = 0.5;

    private readonly Path _outline;
    private readonly ImmutableArray<PlacedHole> _holes;
    private readonly Shop _shop;
    private readonly double _limitMm;
    private readonly double _stepMm;

    /// <summary>For the holes of a piece.</summary>
    public WebRemedy(Results r)
    {
        (_outline, _holes, _shop) = (r.Piece.Outer, r.Holes, r.Shop);
        _limitMm = WebLimits.WarnMm(r.Plan.Stock.Thickness);
        _stepMm = PlanStep.MoveMm(r.Plan.Units);
    }

    /// <summary>The largest diameter, in steps of 0.1 mm, that leaves the missing steel on one side; null when it would be under half of the planned one.</summary>
    /// <param name="hole">The hole.</param>
    /// <param name="missingMm">Steel missing on one side, mm.</param>
    public static WebChange? Smaller(PlacedHole hole, double missingMm)
    {
        var d = Math.Floor(((hole.Diameter.Mm - (2 * missingMm)) * 10) + 1e-6) / 10;
        return d >= LeastShare * hole.Diameter.Mm && d > 0 ? new WebChange(hole, Length.OfMm(d), null) : null;
    }

    /// <summary>The smallest step away from a point, in hundredths of a millimetre or thousandths of an inch as the plan is, after which every web of the hole passes or is no worse than before.</summary>
    /// <param name="hole">The hole.</param>
    /// <param name="from">The point to move away from.</param>
    /// <param name="missingMm">Steel missing, mm.</param>
    public WebChange? Moved(PlacedHole hole, Point from, double missingMm)
    {
        return Along(hole, (hole.At - from).Unit, missingMm);
    }

    /// <summary>The smallest step one way after which every web of the hole passes or is no worse than before.</summary>
    /// <param name="hole">The hole.</param>
    /// <param name="away">Which way, of length 1.</param>
    /// <param name="missingMm">How far at least, mm.</param>
    public WebChange? Along(PlacedHole hole, Point away, double missingMm)
    {
        if (away.Length == 0) return null;
        for (var extra = 0; extra < 4; extra++)
        {
            var need = missingMm + (_stepMm * extra);
            var straight = Math.Abs(away.X) >= Math.Abs(away.Y)
                ? new Point(Away(need / away.X), 0)
                : new Point(0, Away(need / away.Y));
            if (Passes(hole, straight)) return new WebChange(hole, null, straight);
            var slant = new Point(Away(need * away.X), Away(need * away.Y));
            if (Passes(hole, slant)) return new WebChange(hole, null, slant);
        }

        return null;
    }

    /// <summary>The changes in words: "drill 15.7 mm (0.618 in) instead of 16 mm, or move it 0.14 mm (0.006 in) down".</summary>
    public string InWords(WebChange? smaller, WebChange? moved, string name)
    {
        var drill = smaller is null ? "" : $"drill {name} {Shown.Trimmed(smaller.Diameter!.Value.Mm, 2)} mm ({Shown.Inch(smaller.Diameter.Value)}) instead of {Shown.Trimmed(smaller.Hole.Diameter.Mm, 2)} mm{Owned(smaller.Diameter.Value)}";
        var move = moved is null ? "" : $"move {moved.Hole.Name} {StepInWords(moved.Step!.Value)}";
        if (drill.Length > 0 && move.Length > 0) return $"{drill}, or {move}";
        return drill.Length + move.Length > 0 ? drill + move : $"move {name} or leave it out: no small change of this hole alone passes";
    }

    internal static string StepInWords(Point step)
    {
        var x = step.X == 0 ? "" : $"{Shown.Both(Length.OfMm(Math.Abs(step.X)))} {(step.X > 0 ? "right" : "left")}";
        var y = step.Y == 0 ? "" : $"{Shown.Both(Length.OfMm(Math.Abs(step.Y)))} {(step.Y > 0 ? "up" : "down")}";
        return x.Length > 0 && y.Length > 0 ? $"{x} and {y}" : x + y;
    }

    /// <summary>Rounded away from zero to the next step.</summary>
    private double Away(double mm) => Math.Sign(mm) * _stepMm * Math.Ceiling((Math.Abs(mm) / _stepMm) - 1e-6);

    private string Owned(Length atMost)
    {
        if (_shop.IsAssumed) return "";
        var best = _shop.Drills.Where(d => d.Diameter.Mm <= atMost.Mm + 1e-6).MaxBy(d => d.Diameter.Mm);
        return best is null || best.Diameter.Mm < 0.9 * atMost.Mm ? "" : Math.Abs(best.Diameter.Mm - atMost.Mm) < 0.005 ? " (owned)" : $" (owned: {best.Name})";
    }

    private bool Passes(PlacedHole hole, Point step)
    {
        var moved = hole with { At = hole.At + step };
        var radius = 0.5 * hole.Diameter.Mm;
        if (!Inside.Of(_outline, moved.At) || Nearest.Distance(_outline, moved.At) - radius < _limitMm - 1e-6) return false;
        foreach (var other in _holes)
        {
            if (ReferenceEquals(other, hole)) continue;
            var both = radius + (0.5 * other.Diameter.Mm);
            var after = moved.At.To(other.At) - both;
            if (after < _limitMm - 1e-6 && after < hole.At.To(other.At) - both - 1e-9) return false;
            if (after < _limitMm - 1e-6 && step.Length > 0 && after < WebLimits.LeastMm) return false;
        }

        return true;
    }
}
