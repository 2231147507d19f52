using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Depth of the tip at which a hole is through.</summary>
[Formula("depth of the tip for a hole right through", SourceTag.CommonPractice, "thickness, point and a run-through of 1.27 mm (0.050 in); 1 to 1.5 mm is usual")]
public static class ThroughDepth
{
    /// <summary>Run-through past the lower face, mm.</summary>
    public const double RunThroughMm = 1.27;

    /// <summary>The depth.</summary>
    public static Length Of(Length thickness, Length drill, Angle point) => thickness + PointLength.Of(drill, point) + Length.OfMm(RunThroughMm);
}
