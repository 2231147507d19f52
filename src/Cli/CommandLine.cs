using System.CommandLine;
using Tangwright.Cli.Commands;

namespace Tangwright.Cli;

/// <summary>The command line: one verb, one use case.</summary>
internal static class CommandLine
{
    private const string About = """
        Tangwright: from one plan and one shop to everything the bench needs.

        A plan is a text file, NAME.plan.toml: outline, holes, steel, bevel. Start with one of
        the examples, look at what is wrong, print the packet:

          tangwright new small-hatchet
          tangwright check small-hatchet.plan.toml
          tangwright packet small-hatchet.plan.toml

        The same on a drawing in your browser:

          tangwright desk

        Exit code: 0 answered, 1 answered with an error finding, 2 unusable file or request,
        3 a fault of the program.
        """;

    /// <summary>Runs one command line.</summary>
    public static int Run(string[] args)
    {
        var root = new RootCommand(About)
        {
            NewCommand.Make(),
            CheckCommand.Make(),
            FiguresCommand.Make(),
            HolesCommand.Make(),
            FitsCommand.Make(),
            AssemblyCommand.Make(),
            StockCommand.Make(),
            RoughcutCommand.Make(),
            BevelsCommand.Make(),
            FinishCommand.Make(),
            HeatCommand.Make(),
            HandleCommand.Make(),
            BalanceCommand.Make(),
            CompareCommand.Make(),
            TemplateCommand.Make(),
            PacketCommand.Make(),
            ProgramCommand.Make(),
            ImportCommand.Make(),
            ExportCommand.Make(),
            MeasureCommand.Make(),
        };
        if (args.Length == 0) args = ["--help"];
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var e in parsed.Errors) Console.Error.WriteLine(Plain(e.Message));
            var verb = parsed.CommandResult.Command.Name;
            Console.Error.WriteLine($"How it is used: tangwright {(parsed.CommandResult.Command == root ? "" : verb + " ")}--help");
            return ExitCode.Unusable;
        }

        try
        {
            return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            Console.Error.WriteLine("This is a fault of the program, not of your files; nothing was written.");
            Console.Error.WriteLine($"Please report it with the plan and these words: {e.GetType().Name}: {e.Message} {FirstFrame(e)}");
            return ExitCode.OurFault;
        }
    }

    /// <summary>The message without the name of a type: "as expected type 'System.Nullable`1[System.Int32]'".</summary>
    private static string Plain(string message)
    {
        const string Type = " as expected type '";
        var at = message.IndexOf(Type, StringComparison.Ordinal);
        if (at < 0) return message;
        var type = message[(at + Type.Length)..];
        return message[..at] + (type.Contains("Int", StringComparison.Ordinal) ? ": write a whole number, not too large." : type.Contains("Double", StringComparison.Ordinal) ? ": write a number, as 2.5." : ": it is not understood.");
    }

    private static string FirstFrame(Exception e)
        => (e.StackTrace ?? "").Split('\n') is [var first, ..] ? first.Trim() : "";
}
