using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The furnace program as rows of a table: a step a line, then what comes of it. The controller is set by hand from it; no controller's own form is written.</summary>
public static class FurnaceCsv
{
    /// <summary>The rows, the heading first.</summary>
    public static ImmutableArray<ImmutableArray<string>> Rows(HeatPlan p) =>
    [
        ["step", "what", "piece_c", "set_c", "set_f", "ramp", "come_to_heat_min", "hold_low_min", "hold_high_min", "then"],
        .. p.Oven.Select((s, i) => ImmutableArray.Create(
            Shown.Number(i + 1, 0),
            s.What,
            Shown.Trimmed(s.Piece.Celsius, 1),
            Shown.Trimmed(s.Set.Celsius, 1),
            Shown.Trimmed(s.Set.Fahrenheit, 1),
            "as fast as the oven goes",
            i == p.Oven.Length - 1 ? Shown.Trimmed(p.HeatUp.AloneMinutes, 1) : "",
            Shown.Trimmed(s.HoldMinutes.LowMinutes, 1),
            Shown.Trimmed(s.HoldMinutes.HighMinutes, 1),
            s.Then)),
    ];
}
