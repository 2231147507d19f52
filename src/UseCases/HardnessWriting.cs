using System.Globalization;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>A reading for the hardness log as a person writes it.</summary>
/// <param name="Reading">What the tester showed, "56.5" or "56.5 HRC".</param>
/// <param name="Batch">Name of the batch.</param>
/// <param name="Tempered">Temperature of the steel at the temper; null or empty: the plan's.</param>
/// <param name="Hold">Time of each temper; null or empty: the plan's, else 2 h.</param>
/// <param name="Tempers">How many tempers; null: the plan's, else the steel's.</param>
/// <param name="Piece">Which piece.</param>
/// <param name="Load">Which load.</param>
/// <param name="Spot">Where on the piece.</param>
/// <param name="Oil">Temperature of the oil as the piece went in.</param>
public sealed record HardnessRequest(string Reading, string Batch, string? Tempered = null, string? Hold = null, int? Tempers = null, string Piece = "", string Load = "", string Spot = "", string? Oil = null);

/// <summary>Understands a typed reading and adds it to the log.</summary>
public static class HardnessWriting
{
    /// <summary>Adds it, and gives the plan worked up with it.</summary>
    /// <param name="planPath">The plan, which says whose shop and which steel it is.</param>
    /// <param name="shopPath">The shop; null: looked for.</param>
    /// <param name="q">The reading.</param>
    /// <param name="date">Day written beside it.</param>
    public static Checked<OpenedWork> Add(string planPath, string? shopPath, HardnessRequest q, DateOnly date) => OpenWork.Of(planPath, shopPath).Then(work =>
    {
        var faults = new List<Fault>();
        var wish = work.Plan.Heat;
        var number = q.Reading.Trim();
        if (number.EndsWith("HRC", StringComparison.OrdinalIgnoreCase)) number = number[..^3].Trim();
        if (!double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var hrc)) faults.Add(Fault.OfFile("reading", $"\"{q.Reading.Trim()}\" is no hardness", "write what the tester showed, as 56.5"));
        var tempered = TypedText.Value(faults, "tempered", q.Tempered, QuantityText.Temperature) ?? wish?.Temper;
        var hold = TypedText.Value(faults, "hold", q.Hold, QuantityText.Minutes) ?? wish?.HoldMinutes ?? 120;
        var oil = TypedText.Value(faults, "oil", q.Oil, QuantityText.Temperature);
        if (tempered is null && faults.Count == 0) faults.Add(Fault.OfFile("tempered", "the temperature of the temper is missing", "write it, as 200 C, or put it under [heat] in the plan"));
        return faults.Count > 0
            ? Checked<OpenedWork>.Bad(faults)
            : HardnessLogBeside.Add(planPath, shopPath, new HardnessTyped(q.Batch, tempered!.Value, hold / 60, q.Tempers ?? wish?.Tempers ?? work.Steel?.Heat.Tempers?.Value ?? 2, hrc, q.Piece, q.Load, q.Spot, oil), date);
    });
}
