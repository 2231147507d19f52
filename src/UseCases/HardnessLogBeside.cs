using System.Text;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>A reading for the hardness log as typed.</summary>
/// <param name="Batch">Name of the batch.</param>
/// <param name="TemperedAt">Temperature of the steel at the temper.</param>
/// <param name="HoldHours">Hours of each temper.</param>
/// <param name="Tempers">How many tempers.</param>
/// <param name="ReadHrc">What the tester showed, HRC.</param>
/// <param name="Piece">Which piece.</param>
/// <param name="Load">Which load; empty when not counted.</param>
/// <param name="Spot">Where on the piece; empty when not said.</param>
/// <param name="Oil">Temperature of the oil as the piece went in; null when not known.</param>
public sealed record HardnessTyped(string Batch, Temperature TemperedAt, double HoldHours, int Tempers, double ReadHrc, string Piece, string Load, string Spot, Temperature? Oil);

/// <summary>The hardness log of a shop, <c>hardness.csv</c> in the folder of the shop file, else beside the plan.</summary>
public static class HardnessLogBeside
{
    /// <summary>Name of the file.</summary>
    public const string Name = "hardness.csv";

    /// <summary>Reads it; one with nothing in it when there is none.</summary>
    internal static Checked<HardnessLogFile> Read(string folder)
    {
        var path = System.IO.Path.Combine(folder, Name);
        return System.IO.File.Exists(path) ? TextFile.Read(path).Then(text => HardnessLogReader.Read(text, path)) : Checked<HardnessLogFile>.Good(HardnessLogFile.Empty);
    }

    /// <summary>Adds a line, and gives the plan worked up with it.</summary>
    /// <param name="planPath">The plan, which says whose shop and which steel it is.</param>
    /// <param name="shopPath">The shop; null: looked for.</param>
    /// <param name="typed">The line.</param>
    /// <param name="date">Day written beside it.</param>
    public static Checked<OpenedWork> Add(string planPath, string? shopPath, HardnessTyped typed, DateOnly date)
        => OpenWork.Of(planPath, shopPath).Then(work => Add(work, typed, date)).Then(_ => OpenWork.Of(planPath, shopPath));

    private static Checked<HardnessLogFile> Add(OpenedWork work, HardnessTyped typed, DateOnly date)
    {
        var faults = new List<Fault>();
        if (typed.Batch.Trim().Length == 0) faults.Add(Fault.OfFile("batch", "the batch has no name", "write what you call it, as \"autumn\""));
        if (!(typed.ReadHrc is >= 10 and <= 72)) faults.Add(Fault.OfFile("reading", "the reading is not from 10 to 72 HRC", "write what the tester showed, as 57.5"));
        if (!(typed.HoldHours is > 0 and <= 48)) faults.Add(Fault.OfFile("hold", "the hold is not above 0", "write the hours of each temper, as 2"));
        if (typed.Tempers is < 1 or > 9) faults.Add(Fault.OfFile("tempers", "tempers are not from 1 to 9", "write how many, as 2"));
        if (faults.Count > 0) return Checked<HardnessLogFile>.Bad(faults);
        var path = System.IO.Path.Combine(work.LogFolder, Name);
        var there = Read(work.LogFolder);
        if (!there.IsGood) return there;
        var before = there.Value.Text.Length == 0 ? HardnessLogReader.Heading + "\n" : there.Value.Text.EndsWith('\n') ? there.Value.Text : there.Value.Text + "\n";
        var oven = (work.Shop.TemperOven ?? work.Shop.Oven)?.Name ?? "";
        var now = before + HardnessLogReader.Line(new HardnessEntry(date, typed.Batch.Trim(), work.Plan.Stock.Steel, oven, typed.TemperedAt, typed.HoldHours, typed.Tempers, typed.ReadHrc, work.Shop.HardnessTester?.ReadsHighByHrc, typed.Piece.Trim(), typed.Load.Trim(), typed.Spot.Trim(), typed.Oil) { Wanted = work.Plan.Target.Hardness });
        var wrote = OutputFolder.Write([new OutputFile(path, Encoding.UTF8.GetBytes(now))], overwrite: true);
        return wrote.IsEmpty ? HardnessLogReader.Read(now, path) : Checked<HardnessLogFile>.Bad(wrote);
    }
}
