namespace Tangwright.Foundation;

/// <summary>One piece of a path: a line, an arc of a circle or ellipse, or a cubic Bézier. Parameter t runs from 0 at the start to 1 at the end. Lengths in mm.</summary>
public abstract class Segment
{
    private protected Segment(Point start, Point end)
    {
        Start = start;
        End = end;
    }

    /// <summary>First point, exactly as given, so that joined segments share it to the last bit.</summary>
    public Point Start { get; }

    /// <summary>Last point, exactly as given.</summary>
    public Point End { get; }

    /// <summary>The tightest upright box around the segment.</summary>
    public abstract Box Bounds { get; }

    /// <summary>Length along the segment, mm; closed form where there is one, else Gauss-Legendre to about 1e-12 relative.</summary>
    public abstract double Length { get; }

    /// <summary>The point at t.</summary>
    public abstract Point At(double t);

    /// <summary>The step dp/dt at t.</summary>
    public abstract Point Derivative(double t);

    /// <summary>d²p/dt² at t.</summary>
    public abstract Point SecondDerivative(double t);

    /// <summary>The same segment run the other way.</summary>
    public abstract Segment Reversed();

    /// <summary>The part from t0 to t1, t0 &lt; t1.</summary>
    public abstract Segment Part(double t0, double t1);

    /// <summary>The segment under a map; a circle under an uneven scale becomes an ellipse.</summary>
    public abstract Segment Transformed(Transform map);

    /// <summary>Direction of travel at t, length 1. Where a control point lies on an end the limit direction is taken.</summary>
    public Point Tangent(double t)
    {
        var d = Derivative(t);
        if (d.Length > 1e-12 * (1 + Bounds.Width + Bounds.Height)) return d.Unit;
        var dd = SecondDerivative(t);
        if (dd.Length > 0) return (t < 0.5 ? dd : -dd).Unit;
        return (End - Start).Unit;
    }

    /// <summary>Signed curvature at t, 1/mm, positive when the path turns left (counter-clockwise).</summary>
    public double Curvature(double t)
    {
        var d = Derivative(t);
        var l = d.Length;
        return l > 0 ? d.Cross(SecondDerivative(t)) / (l * l * l) : 0;
    }
}
