using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A program as the page shows it: made and checked, or why there is none.</summary>
/// <param name="Made">The program; null when there is none.</param>
/// <param name="Picture">Drawing of the set-up; null when there is none.</param>
/// <param name="Faults">Why there is none.</param>
public sealed record ProgramShown(CheckedProgram? Made, DrawnSheet? Picture, ImmutableArray<Fault> Faults);

/// <summary>The program for a mill under computer control, of an open plan.</summary>
public static class MillProgram
{
    /// <summary>The work to choose from: the word, and what it is.</summary>
    public static ImmutableArray<(string Key, string Says)> Works { get; } =
    [
        (MakeProgram.Works[0], "holes and profile in one clamping"),
        (MakeProgram.Works[1], "first clamping: the holes"),
        (MakeProgram.Works[2], "second clamping: the profile, on pins"),
    ];

    /// <summary>The mills of the shop.</summary>
    public static ImmutableArray<string> Mills(Results results) => [.. results.Shop.Machines.Where(m => m.Kind == MachineKind.CncMill).Select(m => m.Name)];

    /// <summary>Which one is asked for, from the words of an address; what is not known falls back to the usual.</summary>
    public static ProgramChoice Choice(string? work, string? zero)
        => new((ProgramWork)Math.Max(0, MakeProgram.Works.IndexOf(work ?? "")), string.IsNullOrEmpty(zero) ? null : zero);

    /// <summary>What makes and checks it, for the plan as it stands now; it takes up to about a second, so never run it where a page waits.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="machine">Name of the mill; empty: the first one.</param>
    /// <param name="choice">What it is asked to do.</param>
    /// <param name="print">How things are shown.</param>
    public static Func<ProgramShown> Of(PlanOnDesk desk, string? machine, ProgramChoice choice, PrintRequest print)
    {
        var (work, results, stem) = (desk.Work, desk.Results, desk.Stem);
        return () =>
        {
            var made = Made(results, stem, machine, choice);
            if (!made.IsGood) return new(null, null, made.Faults);
            var picture = print.For(work, results).Then(r => Checked<DrawnSheet>.Good(DrawnSheet.Of(SetUpPicture.Of(r, made.Value.Program), "Set-up on the table of the mill")));
            return new(made.Value, picture.IsGood ? picture.Value : null, []);
        };
    }

    /// <summary>The program as a file for the browser to save.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="machine">Name of the mill; empty: the first one.</param>
    /// <param name="choice">What it is asked to do.</param>
    public static Checked<OutputFile> File(PlanOnDesk desk, string? machine, ProgramChoice choice)
        => Made(desk.Results, desk.Stem, machine, choice).Then(made => Checked<OutputFile>.Good(new OutputFile(made.Report.FileName, MakeProgram.Bytes(made))));

    private static Checked<CheckedProgram> Made(Results results, string stem, string? machine, ProgramChoice choice)
        => MakeProgram.For(results, string.IsNullOrEmpty(machine) ? null : machine, choice, MakeProgram.FileName(stem, choice));
}
