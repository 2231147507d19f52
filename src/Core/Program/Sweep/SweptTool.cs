using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A tool as a body that turns: a cone or flat at the tip, a cylinder above it.</summary>
/// <param name="Tool">The tool; null when the spindle is empty.</param>
internal readonly record struct SweptTool(ProgramTool? Tool)
{
    /// <summary>Radius of the cylinder, mm.</summary>
    public double Radius => (Tool?.DiameterMm ?? 0) / 2;

    /// <summary>Rise of the cone for each mm away from the axis.</summary>
    public double Slope => Tool is { PointDegrees: > 0 and < 180 } t ? 1 / Math.Tan(t.PointDegrees * Math.PI / 360) : 0;

    /// <summary>Length of the cone, mm.</summary>
    public double Point => Radius * Slope;

    /// <summary>Whether it cuts with its end only.</summary>
    public bool IsDrill => Tool is { Form: not ToolForm.EndMill };

    /// <summary>Radius at the stock's upper face when the tip stands at a height, mm; 0 above it.</summary>
    public double RadiusAtFace(double tipZ) => tipZ >= 0 ? 0 : Slope == 0 ? Radius : Math.Min(Radius, -tipZ / Slope);

    /// <summary>The tool with a number.</summary>
    public static SweptTool Of(IEnumerable<ProgramTool> tools, int number) => new(tools.FirstOrDefault(t => t.Number == number));
}
