using System.Collections.Immutable;
using System.Text;
using Tangwright.Core;
using Tangwright.Formats;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>A program that has passed the check.</summary>
/// <param name="Results">What it was made from.</param>
/// <param name="Program">What it does.</param>
/// <param name="Text">Its text, RS-274/NGC.</param>
public sealed record CheckedProgram(Results Results, MachineProgram Program, string Text);

/// <summary>A program that was written.</summary>
/// <param name="Checked">The program.</param>
/// <param name="File">Where it lies.</param>
public sealed record WrittenProgram(CheckedProgram Checked, string File);

/// <summary>Makes the program for a mill under computer control. One that fails the check is not written.</summary>
public static class MakeProgram
{
    /// <summary>Makes it and writes it.</summary>
    /// <param name="planPath">The plan file.</param>
    /// <param name="shopPath">The shop file; null: looked for.</param>
    /// <param name="machine">Name of the mill; null: the first one.</param>
    /// <param name="file">Where to; null: NAME.ngc beside the plan.</param>
    /// <param name="overwrite">Whether an existing file may be replaced.</param>
    public static Checked<WrittenProgram> Of(string planPath, string? shopPath, string? machine, string? file, bool overwrite)
        => OpenWork.Of(planPath, shopPath).Then(w => For(w.WorkUp(), machine)).Then(made =>
        {
            var path = file ?? System.IO.Path.Combine(System.IO.Path.GetDirectoryName(planPath) ?? "", OpenWork.Stem(planPath) + ".ngc");
            var faults = OutputFolder.Write([new OutputFile(path, Encoding.ASCII.GetBytes(made.Text))], overwrite);
            return faults.IsEmpty ? Checked<WrittenProgram>.Good(new(made, path)) : Checked<WrittenProgram>.Bad(faults);
        });

    /// <summary>The program of what was computed; faults when it cannot be made or fails the check.</summary>
    /// <param name="results">What was computed.</param>
    /// <param name="machine">Name of the mill; null: the first one.</param>
    public static Checked<CheckedProgram> For(Results results, string? machine) => Mill(results.Shop, machine).Then(mill => MachineProgram.Of(results, mill)).Then(program =>
    {
        var text = TextOf(program);
        var troubles = ProgramCheck.Of(text, program.Path.Tools, program.SetUp, program.Wanted);
        return troubles.IsEmpty
            ? Checked<CheckedProgram>.Good(new(results, program, text))
            : Checked<CheckedProgram>.Bad(troubles.Select(t => Fault.OfFile(program.SetUp.Machine.Name, $"the program fails the check and was not written: {(t.Line > 0 ? $"line {t.Line}, " : "")}{t.Message}", t.Remedy)));
    });

    /// <summary>Whether the shop has a mill under computer control.</summary>
    public static bool HasMill(Shop shop) => shop.Machines.Any(m => m.Kind == MachineKind.CncMill);

    private static Checked<Machine> Mill(Shop shop, string? name)
    {
        var mills = shop.Machines.Where(m => m.Kind == MachineKind.CncMill).ToArray();
        if (mills.Length == 0) return Checked<Machine>.Bad(Fault.OfFile("shop", "there is no mill under computer control", "write it down as a [[machine]] of kind \"cnc mill\""));
        return mills.FirstOrDefault(m => name is null || string.Equals(m.Name, name, StringComparison.OrdinalIgnoreCase)) is { } mill
            ? Checked<Machine>.Good(mill)
            : Checked<Machine>.Bad(Fault.OfFile("--machine", $"there is no mill under computer control called \"{name}\"", "choose from: " + string.Join(", ", mills.Select(m => m.Name))));
    }

    private static string TextOf(MachineProgram program)
    {
        var (setUp, ways) = (program.SetUp, program.SetUp.Machine.ProgramWays);
        var remarks = new List<string>
        {
            $"machine: {setUp.Machine.Name}",
            $"zero: {setUp.ZeroInWords}",
            $"stock {Shown.Both(Length.OfMm(setUp.Stock.Width))} by {Shown.Both(Length.OfMm(setUp.Stock.Height))} by {Shown.Both(Length.OfMm(setUp.ThicknessMm))}",
        };
        remarks.AddRange(setUp.Clamps.Select(c => $"{c.Name}: x {Shown.Number(c.Box.MinX, 0)} to {Shown.Number(c.Box.MaxX, 0)} mm, y {Shown.Number(c.Box.MinY, 0)} to {Shown.Number(c.Box.MaxY, 0)} mm, no higher than {Shown.Number(c.TopZMm, 0)} mm"));
        remarks.AddRange(program.LeftOut.Select(l => "NOT DONE HERE: " + l));
        remarks.Add("run it in the air first; the machine's manual and local rules come first");
        return Rs274Writer.Write(program.Path, new ProgramDialect(ways.Units == LengthUnit.Inch, ways.HasDrillCycles, ways.HasArcs, ways.HasHelix, ways.HasToolChange), remarks);
    }
}
