using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Length of a drill's point: d / (2 tan(angle / 2)).</summary>
[Formula("length of a drill's point", "similar-triangles", "every point angle between 0 and 180 degrees")]
public static class PointLength
{
    /// <summary>The length; also the depth of a spot that is so wide.</summary>
    public static Length Of(Length diameter, Angle point) => diameter / (2 * Math.Tan(point.Degrees * (Math.PI / 360)));
}
