using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>One motion as the outside reader says it; mm.</summary>
internal sealed record OutsideMotion(bool IsRapid, SpacePoint To, Point? Centre, bool IsCounterClockwise, int Tool);

/// <summary>What Debian's rs274 (package linuxcnc-uspace), which this project did not write, makes of a program.</summary>
internal sealed record OutsideReader(int Exit, string Said, ImmutableArray<OutsideMotion> Motions, int ToolChanges)
{
    private static readonly string Unpacked = Repository.Path("artifacts", "rs274");

    /// <summary>The installed program, or the one unpacked beside the build.</summary>
    private static (string Program, string Libraries) Found()
    {
        const string Installed = "/usr/bin/rs274";
        if (File.Exists(Installed)) return (Installed, "");
        var program = System.IO.Path.Combine(Unpacked, "usr", "bin", "rs274");
        Assert.True(File.Exists(program), "rs274 is not there: apt-get install --no-install-recommends linuxcnc-uspace, or tools/rs274/unpack");
        return (program, string.Join(':', new[] { "usr/lib", "usr/lib/x86_64-linux-gnu", "lib/x86_64-linux-gnu" }.Select(l => System.IO.Path.Combine(Unpacked, l))));
    }

    /// <summary>Has a program read.</summary>
    public static OutsideReader Of(string program, IEnumerable<ProgramTool> tools)
    {
        using var scratch = new Scratch();
        var (reader, libraries) = Found();

        // lengths of the tool table are in inches, whatever the program's unit
        var table = scratch.Put("tool.tbl", string.Concat(tools.Select(t => string.Create(CultureInfo.InvariantCulture, $"T{t.Number} P{t.Number} Z0 D{t.DiameterMm / 25.4:F9}\n"))));
        var start = new ProcessStartInfo(reader, ["-g", "-t", table, "-v", scratch.Put("parameters.var", ""), scratch.Put("program.ngc", program), scratch.Path("said.txt")])
        {
            WorkingDirectory = scratch.Folder,
            RedirectStandardError = true,
            RedirectStandardOutput = true,
            RedirectStandardInput = true,
            UseShellExecute = false,
        };

        // it keeps its tool table in a file there, which must not be shared by two that run at once
        start.Environment["HOME"] = scratch.Folder;
        if (libraries.Length > 0) start.Environment["LD_LIBRARY_PATH"] = libraries;
        using var p = Process.Start(start)!;
        p.StandardInput.Close();
        var error = p.StandardError.ReadToEndAsync();
        var text = p.StandardOutput.ReadToEnd();
        p.WaitForExit();
        return Read(p.ExitCode, text + error.GetAwaiter().GetResult(), File.Exists(scratch.Path("said.txt")) ? File.ReadAllText(scratch.Path("said.txt")) : "");
    }

    private static OutsideReader Read(int exit, string complaints, string said)
    {
        var motions = ImmutableArray.CreateBuilder<OutsideMotion>();
        var (unit, changes, next, tool) = (1.0, 0, 0, 0);
        var byHand = !said.Contains("CHANGE_TOOL", StringComparison.Ordinal);
        foreach (var line in said.Split('\n'))
        {
            var open = line.IndexOf('(');
            if (open < 0) continue;
            var call = line[..open].Split(' ')[^1];
            var words = line[(open + 1)..line.LastIndexOf(')')].Split(',', StringSplitOptions.TrimEntries);
            double Mm(int i) => double.Parse(words[i], CultureInfo.InvariantCulture) * unit;
            switch (call)
            {
                case "USE_LENGTH_UNITS":
                    unit = words[0] == "CANON_UNITS_INCHES" ? 25.4 : 1;
                    break;
                case "SELECT_TOOL":
                    next = int.Parse(words[0], CultureInfo.InvariantCulture);
                    break;
                case "CHANGE_TOOL":
                case "PROGRAM_STOP" when byHand && next != tool:
                    changes++;
                    tool = next;
                    break;
                case "STRAIGHT_TRAVERSE" or "STRAIGHT_FEED":
                    motions.Add(new(call == "STRAIGHT_TRAVERSE", new(Mm(0), Mm(1), Mm(2)), null, false, tool));
                    break;
                case "ARC_FEED":
                    motions.Add(new(false, new(Mm(0), Mm(1), Mm(5)), new(Mm(2), Mm(3)), words[4][0] != '-', tool));
                    break;
            }
        }

        return new(exit, complaints, motions.ToImmutable(), changes);
    }
}
