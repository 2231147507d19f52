using System.Text;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The page docs/findings.md, made from <see cref="FindingCodes.All"/>.</summary>
public static class FindingCodesPage
{
    /// <summary>The page as Markdown.</summary>
    public static string Text()
    {
        var s = new StringBuilder();
        s.Append("# Findings\n\n");
        s.Append("What `check` and the packet say about a plan. This page is made from the code; do not edit it.\n\n");
        s.Append("An error means that the piece cannot be made, or will not hold, as planned. A warning means: look at it before cutting steel. A note is worth knowing. ");
        s.Append("What has more than one severity stands here with the gravest. A finding that rests on the assumed shop is always a note and says so. ");
        s.Append("Each code has a plan in `examples/broken` that brings it out.\n\n");
        s.Append("| code | severity | meaning |\n| --- | --- | --- |\n");
        foreach (var c in FindingCodes.All) s.Append($"| `{c.Code}` | {Word(c.Severity)} | {c.Meaning} |\n");
        return s.ToString();
    }

    private static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };
}
