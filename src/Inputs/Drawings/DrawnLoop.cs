using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>A closed loop of a drawing, or a run that should have been one.</summary>
internal sealed class DrawnLoop(Path path, string layer)
{
    public Path Path { get; } = path;

    public string Layer { get; } = layer;

    public (Point Centre, double Radius)? Round { get; } = path.Closed ? RoundLoop.Of(path) : null;

    /// <summary>Area inside, mm²; of an open run: closed by a straight line.</summary>
    public double AreaMm2 { get; } = Math.Abs(Moments.Of(path.Closed || path.Start == path.End ? path : new Path([.. path.Segments, new Line(path.End, path.Start)], closed: true)).AreaMm2);

    public bool IsOpen => !Path.Closed;

    /// <summary>An upright rectangle of straight lines.</summary>
    public bool IsUprightRectangle
        => Path.Segments.All(s => s is Line) && AreaMm2 > 0 && AreaMm2 >= Path.Bounds.Width * Path.Bounds.Height * (1 - 1e-6);

    /// <summary>"60 x 20 mm (2.362 x 0.787 in), middle at 30, 10, layer 0".</summary>
    public string Said
    {
        get
        {
            var b = Path.Bounds;
            string N(double v) => Shown.Trimmed(v, 2);
            string I(double v) => Shown.Trimmed(v / Length.MmPerInch, 3);
            return $"{N(b.Width)} x {N(b.Height)} mm ({I(b.Width)} x {I(b.Height)} in), middle at {N(b.Centre.X)}, {N(b.Centre.Y)}, layer {Layer}";
        }
    }

    public bool Encloses(DrawnLoop other)
    {
        var (a, b) = (Path.Bounds.Grown(1e-6), other.Path.Bounds);
        return b.MinX >= a.MinX && b.MaxX <= a.MaxX && b.MinY >= a.MinY && b.MaxY <= a.MaxY;
    }

    /// <summary>The same loop drawn once more: from another layer, by another start point, the other way round.</summary>
    public bool IsSameAs(DrawnLoop other)
    {
        if (IsOpen || other.IsOpen) return false;
        var (a, b) = (Path.Bounds, other.Path.Bounds);
        const double same = DoubledLines.SameMm;
        return Math.Abs(a.MinX - b.MinX) <= same && Math.Abs(a.MaxX - b.MaxX) <= same && Math.Abs(a.MinY - b.MinY) <= same && Math.Abs(a.MaxY - b.MaxY) <= same
            && Math.Abs(AreaMm2 - other.AreaMm2) <= same * (a.Width + a.Height + b.Width + b.Height)
            && Moments.Of(Path).Centroid.To(Moments.Of(other.Path).Centroid) <= same;
    }
}
