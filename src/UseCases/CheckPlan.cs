using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>What is wrong or risky about a plan.</summary>
public static class CheckPlan
{
    /// <summary>Works up the plan; its findings are in the results.</summary>
    public static Checked<Results> Of(string planPath, string? shopPath) => Figures.Of(planPath, shopPath);

    /// <summary>Whether a finding of error severity is among them.</summary>
    public static bool HasError(Results results) => results.Findings.Any(f => f.Severity == Severity.Error);

    /// <summary>The findings as JSON; names are stable between versions.</summary>
    public static string Json(Results r) => JsonText.Of(w =>
    {
        w.WriteString("name", r.Plan.Name);
        w.WriteString("revision", r.Plan.Revision);
        w.WriteBoolean("assumed_shop", r.Shop.IsAssumed);
        w.List("findings", r.Findings, f =>
        {
            w.WriteString("code", f.Code);
            w.WriteString("severity", SeverityWord(f.Severity));
            w.WriteString("where", f.Where);
            w.Place("place", f.Place);
            w.WriteString("message", f.Message);
            w.WriteString("found", f.Found);
            w.WriteString("limit", f.Limit);
            w.WriteString("source", f.Source);
            w.WriteString("remedy", f.Remedy);
            w.WriteBoolean("assumed_shop", f.AssumedShop);
        });
    });

    /// <summary>The word for a severity, as in the open standard SARIF 2.1.0.</summary>
    public static string SeverityWord(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };
}
