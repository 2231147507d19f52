using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Scatter along one axis of a way of placing holes: learnt from measured holes, or from the circle that 99 of 100 centres fall in.</summary>
/// <remarks>With errors alike along both axes the distance is Rayleigh's, and 99 in 100 lie within σ √(−2 ln 0.01) = 3.0349 σ.</remarks>
[Formula("Scatter along one axis of hole centres, mm: half the zone of 99 in 100 over 3.0349", "rayleigh-circle", "Errors alike along both axes and normally spread; what was measured is already a bound and is not widened")]
public static class PlacingScatter
{
    private static readonly double SigmasIn99 = Math.Sqrt(-2 * Math.Log(0.01));

    /// <summary>From the diameter of the circle that 99 in 100 fall in.</summary>
    public static Length OfZone(Length zone) => Length.OfMm(zone.Mm / 2 / SigmasIn99);

    /// <summary>Diameter of the circle that 99 in 100 fall in.</summary>
    public static Length Zone(Length sigma) => Length.OfMm(2 * SigmasIn99 * sigma.Mm);

    /// <summary>Of a way as the shop has it.</summary>
    public static Length Of(PlacingCapability way) => way.MeasuredSigma ?? OfZone(way.Zone);

    /// <summary>How far off the zone of a way may be when it was never measured, as shares of it.</summary>
    /// <remarks>Ranges and middles of a planning table; common practice, save that hand-located punch and drill is given as up to 2 mm (0.080 in) in US military design data of the 1950s, AND10387.</remarks>
    public static (double LowShare, double HighShare) Band(PlacingWay way) => way switch
    {
        PlacingWay.Punch => (0.8 / 1.5, 2.0 / 1.5),
        PlacingWay.CarefulPunch => (0.3 / 0.6, 1.0 / 0.6),
        PlacingWay.ThroughOtherPart => (0.15 / 0.3, 0.5 / 0.3),
        PlacingWay.GuidePiece => (0.08 / 0.15, 0.25 / 0.15),
        PlacingWay.DrilledTogether => (0.02 / 0.05, 0.10 / 0.05),
        PlacingWay.Readout => (0.06 / 0.12, 0.20 / 0.12),
        PlacingWay.Cnc => (0.05 / 0.10, 0.15 / 0.10),
        _ => (0.03 / 0.05, 0.08 / 0.05),
    };
}
