using Tangwright.Core;

namespace Tangwright.Inputs;

/// <summary>A plan with the text it was read from and the place of every value in it, so that a change can be written back into the text.</summary>
public sealed class PlanFile
{
    internal PlanFile(Plan plan, string fileName, string text, SourceText source, TomlTable root)
    {
        Plan = plan;
        FileName = fileName;
        Text = text;
        Source = source;
        Root = root;
    }

    /// <summary>The plan.</summary>
    public Plan Plan { get; }

    /// <summary>Name of the file as given.</summary>
    public string FileName { get; }

    /// <summary>The text exactly as given.</summary>
    public string Text { get; }

    internal SourceText Source { get; }

    internal TomlTable Root { get; }

    /// <summary>Unit of bare numbers, mm.</summary>
    internal double UnitMm => PlanReader.UnitMm(Plan.Units);
}
