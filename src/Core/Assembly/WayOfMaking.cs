using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A way of making the holes of a tang and its two scales.</summary>
/// <param name="Way">How the holes are placed.</param>
/// <param name="Word">The word for it in a plan.</param>
/// <param name="Says">In a few words.</param>
public sealed record WayOfMaking(PlacingWay Way, string Word, string Says)
{
    /// <summary>All ways, coarse to fine; the last two take the places of the scales' holes from the tang itself.</summary>
    public static ImmutableArray<WayOfMaking> All { get; } =
    [
        new(PlacingWay.Punch, "punch", "each part scribed and punched"),
        new(PlacingWay.CarefulPunch, "careful punch", "each part scribed and pricked under a magnifier"),
        new(PlacingWay.GuidePiece, "guide piece", "each part through a guide piece"),
        new(PlacingWay.Readout, "readout", "each part on the mill by its readout"),
        new(PlacingWay.Cnc, "cnc", "each part on the mill by program"),
        new(PlacingWay.CncBored, "cnc bored", "each part on the mill by program, bored"),
        new(PlacingWay.ThroughOtherPart, "through other part", "scales clamped to the tang and drilled through it"),
        new(PlacingWay.DrilledTogether, "drilled together", "scales pinned to the tang and drilled through it"),
    ];

    /// <summary>Whether the scales get their holes from the tang's, so that the tang's own errors do not count.</summary>
    public bool IsThroughTang => Way is PlacingWay.ThroughOtherPart or PlacingWay.DrilledTogether;

    /// <summary>Whether the shop has the machine for it.</summary>
    public bool IsIn(Shop shop) => Way switch
    {
        PlacingWay.Readout => shop.Machines.Any(m => m.HasReadout || m.Kind == MachineKind.CncMill),
        PlacingWay.Cnc or PlacingWay.CncBored => shop.Machines.Any(m => m.Kind == MachineKind.CncMill),
        _ => true,
    };

    /// <summary>How well the shop does it: the maker's own entry for the machine that makes the holes, else for any machine, else common practice.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="machine">Name of the machine that makes the pin holes; null when none can.</param>
    public PlacingCapability? In(Shop shop, string? machine)
        => shop.Placings.Where(p => p.Way == Way && (p.Machine.Length == 0 || p.Machine == machine)).OrderByDescending(p => p.IsOwn).ThenByDescending(p => p.Machine.Length > 0).FirstOrDefault()
            ?? shop.Placings.FirstOrDefault(p => p.Way == Way);

    /// <summary>Left scale, tang and right scale made this way.</summary>
    /// <param name="pins">The pin holes of the tang, each with its rod.</param>
    /// <param name="scaleHoles">Diameter of the scales' hole for each pin.</param>
    /// <param name="sigma">Scatter of the way.</param>
    /// <remarks>
    /// Pinned to the tang, a scale has its first hole drilled clamped; a rod in it then holds it for the others, with play: hole of both less rod. That lets the first hole lie off the rest by as much as the play any way, a spread of half the play along each axis.
    /// </remarks>
    public PinnedParts Parts(ImmutableArray<PlacedHole> pins, ImmutableArray<Length> scaleHoles, Length sigma)
    {
        var play = Way == PlacingWay.DrilledTogether ? Math.Max(0, scaleHoles[0].Mm - pins[0].Pin!.Value.Mm) : 0;
        var scale = new PinnedPart(
            [.. pins.Zip(scaleHoles, (h, d) => d - h.Pin!.Value)],
            [.. pins.Select((_, k) => k == 0 ? Math.Sqrt((sigma.Mm * sigma.Mm) + (play * play / 4)) : sigma.Mm)]);
        var tang = new PinnedPart([.. pins.Select(h => h.Diameter - h.Pin!.Value)], [.. pins.Select(_ => IsThroughTang ? 0 : sigma.Mm)]);
        return new([.. pins.Select(h => h.At)], [scale, tang, scale]);
    }
}
