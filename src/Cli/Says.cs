using Tangwright.Foundation;

namespace Tangwright.Cli;

/// <summary>What the program says: answers on standard output, faults on standard error.</summary>
internal static class Says
{
    /// <summary>Tells the faults, each once, with the line it stands in.</summary>
    /// <returns>The exit code.</returns>
    public static int Faults(IEnumerable<Fault> faults)
    {
        foreach (var f in faults)
        {
            var place = f.Line > 0 ? f.Column > 0 ? $"{f.File}:{f.Line}:{f.Column}" : $"{f.File}:{f.Line}" : f.File;
            Console.Error.WriteLine($"{place}: {f.Message}");
            if (f.LineText.Length > 0) Console.Error.WriteLine("    " + Shortened(f.LineText.Trim()));
            if (f.Remedy.Length > 0) Console.Error.WriteLine("  -> " + f.Remedy);
        }

        return ExitCode.Unusable;
    }

    /// <summary>Says a line.</summary>
    public static void Line(string text = "") => Console.Out.WriteLine(text);

    /// <summary>Puts out a text as it is.</summary>
    public static void Text(string text) => Console.Out.Write(text);

    private static string Shortened(string line) => line.Length <= 160 ? line : line[..157] + "...";
}
