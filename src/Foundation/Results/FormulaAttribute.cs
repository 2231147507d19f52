namespace Tangwright.Foundation;

/// <summary>Marks a type that holds a formula, a model or a rule with limits: what it gives, where it comes from, where it holds. <c>docs/formulas.md</c> is made from these marks, and a house rule checks that each source is listed and each formula tested.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Struct)]
public sealed class FormulaAttribute : Attribute
{
    /// <summary>Marks a formula.</summary>
    /// <param name="gives">What it gives, with unit.</param>
    /// <param name="sourceKey">Key in <c>data/sources.toml</c>.</param>
    /// <param name="range">Where it holds, and its error.</param>
    public FormulaAttribute(string gives, string sourceKey, string range)
    {
        Gives = gives;
        SourceKey = sourceKey;
        Range = range;
    }

    /// <summary>What it gives, with unit.</summary>
    public string Gives { get; }

    /// <summary>Key in <c>data/sources.toml</c>.</summary>
    public string SourceKey { get; }

    /// <summary>Where it holds, and its error.</summary>
    public string Range { get; }
}
