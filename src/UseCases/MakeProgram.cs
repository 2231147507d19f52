using System.Collections.Immutable;
using System.Text;
using Tangwright.Core;
using Tangwright.Formats;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>A program that has passed the check.</summary>
/// <param name="Results">What it was made from.</param>
/// <param name="Report">What it does, its time, how much was checked.</param>
/// <param name="Text">Its text, RS-274/NGC.</param>
public sealed record CheckedProgram(Results Results, ProgramReport Report, string Text)
{
    /// <summary>What it does.</summary>
    public MachineProgram Program => Report.Program!;
}

/// <summary>A program that was written.</summary>
/// <param name="Checked">The program.</param>
/// <param name="File">Where it lies.</param>
public sealed record WrittenProgram(CheckedProgram Checked, string File);

/// <summary>Makes the program for a mill under computer control. One that fails the check is not written.</summary>
public static class MakeProgram
{
    /// <summary>The words for the work of a program, in the order of <see cref="ProgramWork"/>.</summary>
    public static ImmutableArray<string> Works { get; } = ["all", "holes", "profile"];

    /// <summary>Makes it and writes it.</summary>
    /// <param name="planPath">The plan file.</param>
    /// <param name="shopPath">The shop file; null: looked for.</param>
    /// <param name="machine">Name of the mill; null: the first one.</param>
    /// <param name="choice">What it is asked to do.</param>
    /// <param name="file">Where to; null: NAME.ngc beside the plan.</param>
    /// <param name="overwrite">Whether an existing file may be replaced.</param>
    public static Checked<WrittenProgram> Of(string planPath, string? shopPath, string? machine, ProgramChoice choice, string? file, bool overwrite)
        => OpenWork.Of(planPath, shopPath).Then(w => For(w.WorkUp(), machine, choice, FileName(OpenWork.Stem(planPath), choice))).Then(made =>
        {
            var path = file ?? System.IO.Path.Combine(System.IO.Path.GetDirectoryName(planPath) ?? "", made.Report.FileName);
            var faults = OutputFolder.Write([new OutputFile(path, Bytes(made))], overwrite);
            return faults.IsEmpty ? Checked<WrittenProgram>.Good(new(made, path)) : Checked<WrittenProgram>.Bad(faults);
        });

    /// <summary>The program of what was computed; faults when it cannot be made or fails the check.</summary>
    /// <param name="results">What was computed.</param>
    /// <param name="machine">Name of the mill; null: the first one.</param>
    /// <param name="choice">What it is asked to do.</param>
    /// <param name="fileName">Name of its file.</param>
    public static Checked<CheckedProgram> For(Results results, string? machine, ProgramChoice choice, string fileName)
        => Mill(results.Shop, machine).Then(mill => MachineProgram.Of(results, mill, choice)).Then(program =>
        {
            var (text, mill, tools) = (TextOf(program), program.SetUp.Machine, program.Path.Tools);
            var reading = ProgramReader.Read(text, tools, mill.ProgramWays.HasToolChange, ProgramReader.Anywhere);
            var troubles = ProgramSweep.Of(reading, tools, program.SetUp, program.Wanted);
            if (!troubles.IsEmpty) return Checked<CheckedProgram>.Bad(troubles.Select(t => Fault.OfFile(mill.Name, $"the program fails the check and was not written: {(t.Line > 0 ? $"line {t.Line}, " : "")}{t.Message}", t.Remedy)));
            var times = ProgramTime.Of(reading.Motions, tools, mill.RapidMmPerMin ?? ProgramTime.UsualRapidMmPerMin);
            return Checked<CheckedProgram>.Good(new(results, new(mill, fileName, program, times, reading.Motions.Length, []), text));
        });

    /// <summary>What came of the programs that go with a packet.</summary>
    /// <param name="results">What was computed.</param>
    /// <param name="stem">The plan's name without folder and ending.</param>
    public static ImmutableArray<ProgramReport> Reports(Results results, string stem) => [.. All(results, stem).Select(p => p.Report)];

    /// <summary>What goes with a packet: one program for one clamping; two where the profile can only be cut with the piece on pins. Empty when the shop has no mill under computer control.</summary>
    /// <param name="results">What was computed.</param>
    /// <param name="stem">The plan's name without folder and ending.</param>
    internal static ImmutableArray<(ProgramReport Report, CheckedProgram? Made)> All(Results results, string stem)
    {
        if (!HasMill(results.Shop)) return [];
        var all = Tried(results, stem, ProgramChoice.Usual);
        if (all.Made?.Program.Wanted.Outline is not null) return [all];
        var (holes, profile) = (Tried(results, stem, new(ProgramWork.Holes, null)), Tried(results, stem, new(ProgramWork.Profile, null)));
        return holes.Made is not null && profile.Made is not null ? [holes, profile] : [all];
    }

    private static (ProgramReport Report, CheckedProgram? Made) Tried(Results results, string stem, ProgramChoice choice)
    {
        var file = FileName(stem, choice);
        var made = For(results, machine: null, choice, file);
        return made.IsGood ? (made.Value.Report, made.Value) : (new(results.Shop.Machines.First(m => m.Kind == MachineKind.CncMill), file, null, [], 0, made.Faults), null);
    }

    /// <summary>NAME.ngc; of two clampings NAME-holes.ngc and NAME-profile.ngc.</summary>
    internal static string FileName(string stem, ProgramChoice choice)
        => stem + (choice.Work == ProgramWork.All ? "" : "-" + Works[(int)choice.Work]) + ".ngc";

    /// <summary>The bytes of its file.</summary>
    internal static byte[] Bytes(CheckedProgram made) => Encoding.ASCII.GetBytes(made.Text);

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
        remarks.AddRange(setUp.Pins.Select(p => $"pin {Shown.Both(Length.OfMm(p.DiameterMm))} in hole {p.Name} at x {Shown.Trimmed(p.At.X, 3)} mm, y {Shown.Trimmed(p.At.Y, 3)} mm"));
        remarks.AddRange(program.LeftOut.Select(l => "NOT DONE HERE: " + l));
        remarks.Add("run it in the air first; the machine's manual and local rules come first");
        return Rs274Writer.Write(program.Path, new ProgramDialect(ways.Units == LengthUnit.Inch, ways.HasDrillCycles, ways.HasArcs, ways.HasHelix, ways.HasToolChange), remarks);
    }
}
