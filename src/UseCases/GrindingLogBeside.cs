using System.Text;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>A line for the grinding log as typed.</summary>
/// <param name="Batch">Name of the batch.</param>
/// <param name="Tool">Belt or paper, as the shop file or the ladder names it.</param>
/// <param name="Pieces">Pieces worked on.</param>
/// <param name="Grams">Grams taken off all of them; null when not weighed.</param>
/// <param name="Minutes">Minutes for all of them.</param>
/// <param name="Belts">Belts or sheets worn out; null when not counted.</param>
public sealed record GrindingTyped(string Batch, string Tool, int Pieces, double? Grams, double Minutes, double? Belts);

/// <summary>The grinding log of a shop, <c>grinding.csv</c> in the folder of the shop file, else beside the plan.</summary>
public static class GrindingLogBeside
{
    /// <summary>Name of the file.</summary>
    public const string Name = "grinding.csv";

    /// <summary>Reads it; one with nothing in it when there is none.</summary>
    internal static Checked<GrindingLogFile> Read(string folder)
    {
        var path = System.IO.Path.Combine(folder, Name);
        return System.IO.File.Exists(path) ? TextFile.Read(path).Then(text => GrindingLogReader.Read(text, path)) : Checked<GrindingLogFile>.Good(GrindingLogFile.Empty);
    }

    /// <summary>Adds a line, and gives the plan worked up with it.</summary>
    /// <param name="planPath">The plan, which says whose shop it is.</param>
    /// <param name="shopPath">The shop; null: looked for.</param>
    /// <param name="typed">The line.</param>
    /// <param name="date">Day written beside it.</param>
    public static Checked<OpenedWork> Add(string planPath, string? shopPath, GrindingTyped typed, DateOnly date)
        => OpenWork.Of(planPath, shopPath).Then(work => Add(work, typed, date)).Then(_ => OpenWork.Of(planPath, shopPath));

    private static Checked<GrindingLogFile> Add(OpenedWork work, GrindingTyped typed, DateOnly date)
    {
        var faults = new List<Fault>();
        if (typed.Batch.Trim().Length == 0) faults.Add(Fault.OfFile("batch", "the batch has no name", "write what you call it, as \"autumn\""));
        if (FinishSteps.ToolNames(work.Shop).FirstOrDefault(n => string.Equals(n, typed.Tool.Trim(), StringComparison.OrdinalIgnoreCase)) is not { } tool) return Checked<GrindingLogFile>.Bad([.. faults, Fault.OfFile("belt", $"the shop has no belt or paper \"{typed.Tool}\"", "choose from: " + string.Join(", ", FinishSteps.ToolNames(work.Shop)))]);
        if (typed.Pieces < 1) faults.Add(Fault.OfFile("pieces", $"{typed.Pieces} pieces", "write how many were ground, 1 or more"));
        if (!(typed.Minutes is > 0 and < 1e6)) faults.Add(Fault.OfFile("minutes", "the time is not above 0", "write the minutes for all pieces together"));
        if (typed.Grams is { } g && !(g is > 0 and < 1e7)) faults.Add(Fault.OfFile("grams", "the weight taken off is not above 0", "weigh before and after, or leave it out"));
        if (typed.Belts is { } b && !(b is > 0 and < 1e5)) faults.Add(Fault.OfFile("belts", "the belts are not above 0", "write how many were worn out, as 0.3, or leave it out"));
        if (faults.Count > 0) return Checked<GrindingLogFile>.Bad(faults);
        var path = System.IO.Path.Combine(work.LogFolder, Name);
        var there = Read(work.LogFolder);
        if (!there.IsGood) return there;
        var before = there.Value.Text.Length == 0 ? GrindingLogReader.Heading + "\n" : there.Value.Text.EndsWith('\n') ? there.Value.Text : there.Value.Text + "\n";
        var now = before + GrindingLogReader.Line(new GrindingEntry(date, typed.Batch.Trim(), tool, typed.Pieces, typed.Grams, typed.Minutes, typed.Belts));
        var wrote = OutputFolder.Write([new OutputFile(path, Encoding.UTF8.GetBytes(now))], overwrite: true);
        return wrote.IsEmpty ? GrindingLogReader.Read(now, path) : Checked<GrindingLogFile>.Bad(wrote);
    }
}
