using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How finely what the program writes into a plan is rounded, in the maker's own unit.</summary>
public static class PlanStep
{
    /// <summary>For places: 0.001 mm or 0.0001 in, given in mm.</summary>
    public static double FineMm(LengthUnit units) => units == LengthUnit.Inch ? Length.MmPerInch / 10000 : 0.001;

    /// <summary>For distances to move something: 0.01 mm or 0.001 in, given in mm.</summary>
    public static double MoveMm(LengthUnit units) => units == LengthUnit.Inch ? Length.MmPerInch / 1000 : 0.01;

    /// <summary>For sizes: 0.1 mm or 1/64 in, given in mm.</summary>
    public static double SizeMm(LengthUnit units) => units == LengthUnit.Inch ? Length.MmPerInch / 64 : 0.1;

    /// <summary>A place, rounded finely.</summary>
    public static Point Near(Point p, LengthUnit units) => new(FineMm(units) * Math.Round(p.X / FineMm(units)), FineMm(units) * Math.Round(p.Y / FineMm(units)));

    /// <summary>The least size that is not smaller, mm.</summary>
    public static Length SizeUp(double mm, LengthUnit units) => Length.OfMm(SizeMm(units) * Math.Ceiling((mm / SizeMm(units)) - 1e-6));

    /// <summary>The greatest size that is not larger, mm.</summary>
    public static Length SizeDown(double mm, LengthUnit units) => Length.OfMm(SizeMm(units) * Math.Floor((mm / SizeMm(units)) + 1e-6));

    /// <summary>The least distance to move that is not shorter, mm.</summary>
    public static double MoveUp(double mm, LengthUnit units) => MoveMm(units) * Math.Ceiling((mm / MoveMm(units)) - 1e-6);
}
