using System.Text;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>The file of measured values beside a plan, <c>NAME.measured.csv</c>.</summary>
public static class MeasuredBeside
{
    /// <summary>Where it lies.</summary>
    public static string PathOf(string planPath)
        => System.IO.Path.Combine(System.IO.Path.GetDirectoryName(planPath) ?? "", OpenWork.Stem(planPath) + ".measured.csv");

    /// <summary>Reads it; one with nothing in it when there is none.</summary>
    internal static Checked<MeasuredFile> Read(string planPath)
    {
        var path = PathOf(planPath);
        return System.IO.File.Exists(path) ? TextFile.Read(path).Then(text => MeasuredReader.Read(text, path)) : Checked<MeasuredFile>.Good(MeasuredFile.Empty);
    }

    /// <summary>Writes it, unless it was changed elsewhere since it was read.</summary>
    internal static Checked<MeasuredFile> Write(string planPath, MeasuredFile before, MeasuredFile now)
    {
        if (now.Text == before.Text) return Checked<MeasuredFile>.Good(now);
        var path = PathOf(planPath);
        var there = Read(planPath);
        if (!there.IsGood) return there;
        if (there.Value.Text != before.Text) return Checked<MeasuredFile>.Bad(Fault.OfFile(path, "was changed elsewhere meanwhile", "look at it and try again"));
        var faults = OutputFolder.Write([new OutputFile(path, Encoding.UTF8.GetBytes(now.Text))], overwrite: true);
        return faults.IsEmpty ? Checked<MeasuredFile>.Good(now) : Checked<MeasuredFile>.Bad(faults);
    }
}
