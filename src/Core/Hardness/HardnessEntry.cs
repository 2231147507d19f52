using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One line of the shop's hardness log: one reading on one piece.</summary>
/// <param name="Date">Day; null when not written.</param>
/// <param name="Batch">Name of the batch.</param>
/// <param name="Steel">Name of the steel.</param>
/// <param name="Oven">Oven it was tempered in; empty when there is but one.</param>
/// <param name="TemperedAt">Temperature the steel was tempered at; null for a piece as quenched.</param>
/// <param name="HoldHours">Hours of each temper.</param>
/// <param name="Tempers">How many tempers; 0 for a piece as quenched.</param>
/// <param name="ReadHrc">What the tester showed, HRC.</param>
/// <param name="ReadsHighByHrc">How much too high the tester read that day, HRC; null: as the shop file says.</param>
/// <param name="Piece">Which piece.</param>
/// <param name="Load">Which load of the quench or oven; empty when not counted.</param>
/// <param name="Spot">Where on the piece; empty when not written.</param>
/// <param name="Oil">Temperature of the oil as the piece went in; null when not written.</param>
public sealed record HardnessEntry(DateOnly? Date, string Batch, string Steel, string Oven, Temperature? TemperedAt, double HoldHours, int Tempers, double ReadHrc, double? ReadsHighByHrc, string Piece, string Load, string Spot, Temperature? Oil)
{
    /// <summary>Band wanted for it; null: that of the plan it is read for.</summary>
    public HardnessBand? Wanted { get; init; }

    /// <summary>Whether it was tempered before it was tested.</summary>
    public bool IsTempered => TemperedAt is not null && Tempers > 0 && HoldHours > 0;

    /// <summary>The hardness, what the tester reads too much taken off, HRC.</summary>
    /// <param name="tester">The tester of the shop; null when it was never checked.</param>
    public double TrueHrc(HardnessTester? tester) => ReadHrc - (ReadsHighByHrc ?? tester?.ReadsHighByHrc ?? 0);
}

/// <summary>A hardness tester.</summary>
/// <param name="Name">What the maker calls it.</param>
/// <param name="ReadsHighByHrc">How much too high it reads on a test block, HRC; negative when it reads low; null when never checked.</param>
public sealed record HardnessTester(string Name, double? ReadsHighByHrc);
