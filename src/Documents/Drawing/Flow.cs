using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A row that is drawn into a box of its own.</summary>
/// <param name="HeightMm">Height it needs.</param>
/// <param name="Draw">Draws it.</param>
internal sealed record FlowRow(double HeightMm, Action<Canvas, Box> Draw)
{
    /// <summary>Drawn above it when it is the first on a sheet that goes on; null for nothing.</summary>
    public FlowRow? Again { get; init; }

    /// <summary>Rows that stay on one sheet, one under the other.</summary>
    public static FlowRow Together(params ImmutableArray<FlowRow> rows) => new(rows.Sum(r => r.HeightMm), (canvas, box) =>
    {
        var top = box.MaxY;
        foreach (var r in rows)
        {
            r.Draw(canvas, box with { MinY = top - r.HeightMm, MaxY = top });
            top -= r.HeightMm;
        }
    });
}

/// <summary>A sheet with room left on it.</summary>
/// <param name="Canvas">The sheet.</param>
/// <param name="Room">The room.</param>
internal readonly record struct OpenSheet(Canvas Canvas, Box Room);

/// <summary>Rows that run from sheet to sheet under a repeated head.</summary>
internal static class Flow
{
    /// <summary>Draws all rows; gives the sheets in order.</summary>
    /// <param name="first">The first sheet and the room on it.</param>
    /// <param name="next">Starts the sheet after that.</param>
    /// <param name="head">Head of the table, drawn again on every sheet; null for none.</param>
    /// <param name="rows">The rows.</param>
    /// <param name="foot">Drawn below the last row when there is room, else on a sheet of its own; null for none.</param>
    /// <param name="after">Given what room is left on the last sheet; null for nothing.</param>
    public static ImmutableArray<Sheet> Over(OpenSheet first, Func<OpenSheet> next, FlowRow? head, IEnumerable<FlowRow> rows, FlowRow? foot = null, Action<Canvas, Box>? after = null)
    {
        var sheets = ImmutableArray.CreateBuilder<Sheet>();
        var (canvas, room) = first;
        var top = room.MaxY;
        var fresh = true;
        foreach (var row in foot is null ? rows : rows.Append(foot))
        {
            var needed = row.HeightMm + (fresh ? head?.HeightMm ?? 0 : 0);
            if (top - needed < room.MinY && !(fresh && sheets.Count > 0))
            {
                sheets.Add(canvas.Done());
                (canvas, room) = next();
                top = room.MaxY;
                fresh = true;
            }

            var above = !fresh || ReferenceEquals(row, foot) ? null : head ?? (sheets.Count > 0 ? row.Again : null);
            if (above is not null)
            {
                above.Draw(canvas, room with { MinY = top - above.HeightMm, MaxY = top });
                top -= above.HeightMm;
            }

            fresh = false;
            row.Draw(canvas, room with { MinY = top - row.HeightMm, MaxY = top });
            top -= row.HeightMm;
        }

        after?.Invoke(canvas, room with { MaxY = Math.Max(room.MinY, top - 4) });
        sheets.Add(canvas.Done());
        return sheets.ToImmutable();
    }
}
