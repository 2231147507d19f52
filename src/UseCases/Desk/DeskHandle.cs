using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>The handle as the page shows it.</summary>
/// <param name="Answer">What it is, in one line.</param>
/// <param name="Blocks">The parts.</param>
/// <param name="Svg">Cuts across the handle; empty when it is not known where it is.</param>
/// <param name="Cautions">Cautions.</param>
/// <param name="HasScales">Whether it has scales to draw.</param>
public sealed record HandleShown(string Answer, ImmutableArray<HandleBlock> Blocks, string Svg, ImmutableArray<string> Cautions, bool HasScales);

/// <summary>The page of the handle.</summary>
public static class DeskHandle
{
    /// <summary>Works it out for the plan as it stands.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="pieces">Pieces in the batch, as typed.</param>
    /// <param name="board">A board, as typed.</param>
    public static Checked<HandleShown> Of(PlanOnDesk desk, string pieces, string board)
    {
        int? count = null;
        if (pieces.Trim().Length > 0)
        {
            if (!int.TryParse(pieces.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var n)) return Checked<HandleShown>.Bad(Fault.OfFile("pieces", $"\"{pieces}\" is no whole number", "write how many are made at once, as 8"));
            count = n;
        }

        return PlanHandle.Of(desk.Results, new HandleRequest(count, board)).Then(p => Checked<HandleShown>.Good(new HandleShown(
            Sentence(HandleText.Head(p)),
            [.. HandleText.Blocks(p).Select(b => b with { Lines = [.. b.Lines.Select(Sentence)] })],
            HandlePicture.Of(p) is { } sheet ? DrawnSheet.Of(sheet, "The handle cut across at five places, front to rear").Svg : "",
            HandleText.Cautions(p),
            p.Shape is not null)));
    }

    private static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..] + (text[^1] == '.' ? "" : ".");
}
