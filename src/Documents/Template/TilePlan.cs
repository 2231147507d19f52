using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>One sheet of a tiled template.</summary>
/// <param name="Number">From 1, along the rows, the upper row first.</param>
/// <param name="Column">From 0, left to right.</param>
/// <param name="Row">From 0, from the top.</param>
/// <param name="PlanToSheet">From the plan's axes to the sheet, printer's correction included.</param>
public sealed record Tile(int Number, int Column, int Row, Transform PlanToSheet);

/// <summary>How a piece is spread over sheets of paper at true scale. The piece lies level, x to the right; the sheets lie along it or across it, whichever takes fewer.</summary>
/// <param name="WidthMm">Width of a sheet as looked at, mm.</param>
/// <param name="HeightMm">Height of a sheet as looked at, mm.</param>
/// <param name="Window">The part of a sheet that is printed, mm from its lower left corner.</param>
/// <param name="FeedIsLevel">Whether the feed runs along x of the sheet as looked at (a sheet lying on its long side); else along y.</param>
/// <param name="Stretch">Correction along x and y of the sheet as looked at.</param>
/// <param name="Columns">Sheets side by side.</param>
/// <param name="Rows">Sheets one above the other.</param>
/// <param name="OverlapMm">What neighbours share, true mm.</param>
/// <param name="Tiles">The sheets.</param>
public sealed record TilePlan(
    double WidthMm,
    double HeightMm,
    Box Window,
    bool FeedIsLevel,
    Point Stretch,
    int Columns,
    int Rows,
    double OverlapMm,
    ImmutableArray<Tile> Tiles)
{
    /// <summary>Most sheets a template is spread over.</summary>
    public const int MostSheets = 100;

    /// <summary>Least printable width of a cut sheet on which piece, bars and words find room, mm: A5 and larger.</summary>
    public const double LeastUsableMm = 110;

    /// <summary>The same of a roll, which is as long as needed, mm.</summary>
    public const double LeastUsableRollMm = 75;

    /// <summary>Room kept between a datum edge and the border of the sheet when there is room to spare, mm.</summary>
    private const double DatumRoomMm = 7;

    /// <summary>Room for check bars and words beside the piece on a roll, mm.</summary>
    private const double RollRoomMm = 118;

    /// <summary>True width of the printed part of one sheet, mm.</summary>
    public double UsableWidthMm => Window.Width / Stretch.X;

    /// <summary>True height of the printed part of one sheet, mm.</summary>
    public double UsableHeightMm => Window.Height / Stretch.Y;

    /// <summary>Step from one column to the next, true mm.</summary>
    public double StepXMm => UsableWidthMm - OverlapMm;

    /// <summary>Step from one row to the next, true mm.</summary>
    public double StepYMm => UsableHeightMm - OverlapMm;

    /// <summary>From the plan's axes to the assembled template: true mm from the lower left corner of what the sheets print together.</summary>
    public Transform PlanToAssembled
    {
        get
        {
            var first = Tiles[(Rows - 1) * Columns];
            return first.PlanToSheet.Then(Transform.Shift(new Point(-Window.MinX, -Window.MinY))).Then(Transform.Scale(1 / Stretch.X, 1 / Stretch.Y));
        }
    }

    /// <summary>What one sheet prints, on the assembled template, true mm.</summary>
    public Box OnAssembled(Tile tile)
    {
        var (x, y) = (tile.Column * StepXMm, (Rows - 1 - tile.Row) * StepYMm);
        return new Box(x, y, x + UsableWidthMm, y + UsableHeightMm);
    }

    /// <summary>From the assembled template to one sheet.</summary>
    public Transform AssembledToSheet(Tile tile)
    {
        var box = OnAssembled(tile);
        return Transform.Shift(new Point(-box.MinX, -box.MinY)).Then(Transform.Scale(Stretch.X, Stretch.Y)).Then(Transform.Shift(new Point(Window.MinX, Window.MinY)));
    }

    /// <summary>How many sheets a length takes: 1, or 1 + ceil((L − u) / (u − overlap)).</summary>
    /// <param name="lengthMm">L, the length to be covered, mm.</param>
    /// <param name="usableMm">u, what one sheet prints, mm.</param>
    /// <param name="overlapMm">What neighbours share, mm; less than u.</param>
    public static int SheetsFor(double lengthMm, double usableMm, double overlapMm)
        => lengthMm <= usableMm + 1e-6 ? 1 : 1 + (int)Math.Min(1e6, Math.Ceiling(((lengthMm - usableMm) / (usableMm - overlapMm)) - 1e-6));

    /// <summary>Why paper, margin and overlap do not make a template; null when they do.</summary>
    public static string? Trouble(TemplateOptions options)
    {
        var usable = (options.Paper.WidthMm - (2 * options.MarginMm)) / Math.Max(options.Scale.Across, options.Scale.Along);
        if (!double.IsFinite(usable) || !(options.MarginMm >= 0)) return "the paper's size and margin are not usable";
        if (options.Scale.Across is not (> 0.8 and < 1.25) || options.Scale.Along is not (> 0.8 and < 1.25)) return "the printer's correction is more than a quarter: measure the bars again";
        var least = options.Paper.Key == "roll" ? LeastUsableRollMm : LeastUsableMm;
        if (usable < least) return $"the paper prints only {Shown.Number(usable, 0)} mm across; a template needs {Shown.Number(least, 0)} mm";
        if (options.OverlapMm is not (>= 5 and <= 40)) return "the overlap must be 5 to 40 mm";
        return options.SurroundMm is >= 0 and <= 200 ? null : "the surround must be 0 to 200 mm";
    }

    /// <summary>Spreads a piece over sheets; null when it would take more than <see cref="MostSheets"/>.</summary>
    /// <param name="content">What must be on paper, plan's axes, mm, surround not included.</param>
    /// <param name="holes">Discs the joins had better not cut, plan's axes.</param>
    /// <param name="cornerAtLeft">Whether the datum corner is at the left of the content, as plotted before mirroring.</param>
    /// <param name="cornerAtBottom">Whether it is at the lower side.</param>
    /// <param name="options">Paper and the rest; <see cref="Trouble"/> is null.</param>
    /// <param name="feedIsLevel">How the sheets lie; null: whichever takes fewer.</param>
    public static TilePlan? Of(Box content, ImmutableArray<Box> holes, bool cornerAtLeft, bool cornerAtBottom, TemplateOptions options, bool? feedIsLevel = null)
    {
        var board = options.Mirror ? Flipped(content) : content;
        board = board.Grown(options.SurroundMm);
        var plotted = options.Mirror ? holes.Select(Flipped) : holes;
        var level = Frame(board, options, feedIsLevel: true);
        var upright = Frame(board, options, feedIsLevel: false);
        var (a, b) = ((long)level.Columns * level.Rows, (long)upright.Columns * upright.Rows);
        var best = feedIsLevel is { } wanted ? (wanted ? level : upright)
            : a != b ? (a < b ? level : upright)
            : options.Paper.Key == "roll" && upright.HeightMm < level.WidthMm ? upright : level;
        if ((long)best.Columns * best.Rows > MostSheets) return null;

        // the datum corner goes towards the border of the sheet, so that the paper can be folded or cut along the edges
        var x = Origin(board.MinX, board.Width, best.UsableWidthMm, best.StepXMm, best.Columns, cornerAtLeft, best.OverlapMm, [.. plotted.Select(h => (h.MinX, h.MaxX))]);
        var y = Origin(board.MinY, board.Height, best.UsableHeightMm, best.StepYMm, best.Rows, cornerAtBottom != options.Mirror, best.OverlapMm, [.. plotted.Select(h => (h.MinY, h.MaxY))]);
        var flip = options.Mirror ? Transform.Scale(1, -1) : Transform.None;
        var tiles = ImmutableArray.CreateBuilder<Tile>();
        for (var row = 0; row < best.Rows; row++)
        {
            for (var column = 0; column < best.Columns; column++)
            {
                var corner = new Point(x + (column * best.StepXMm), y + ((best.Rows - 1 - row) * best.StepYMm));
                var map = flip.Then(Transform.Shift(-corner)).Then(Transform.Scale(best.Stretch.X, best.Stretch.Y)).Then(Transform.Shift(new Point(best.Window.MinX, best.Window.MinY)));
                tiles.Add(new Tile(tiles.Count + 1, column, row, map));
            }
        }

        return best with { Tiles = tiles.ToImmutable() };
    }

    private static Box Flipped(Box b) => new(b.MinX, -b.MaxY, b.MaxX, -b.MinY);

    private static TilePlan Frame(Box board, TemplateOptions options, bool feedIsLevel)
    {
        var stretch = feedIsLevel ? new Point(options.Scale.Along, options.Scale.Across) : new Point(options.Scale.Across, options.Scale.Along);
        var (across, along) = (options.Paper.WidthMm, options.Paper.HeightMm);
        if (options.Paper.Key == "roll")
        {
            // as long as is needed: the piece, and room beside it for bars and words where the roll's width leaves none
            var usableAcross = across - (2 * options.MarginMm);
            var (wantAlong, spareAcross) = feedIsLevel
                ? (board.Width * stretch.X, usableAcross - (board.Height * stretch.Y))
                : (board.Height * stretch.Y, usableAcross - (board.Width * stretch.X));
            var room = feedIsLevel && spareAcross >= RollRoomMm ? 2 * DatumRoomMm : RollRoomMm + DatumRoomMm;
            along = Math.Min(along, Math.Ceiling(wantAlong + room + (2 * options.MarginMm)));
        }

        var (w, h) = feedIsLevel ? (along, across) : (across, along);
        var m = options.MarginMm;
        var frame = new TilePlan(w, h, new Box(m, m, w - m, h - m), feedIsLevel, stretch, 1, 1, options.OverlapMm, []);
        return frame with
        {
            Columns = SheetsFor(board.Width, frame.UsableWidthMm, options.OverlapMm),
            Rows = SheetsFor(board.Height, frame.UsableHeightMm, options.OverlapMm),
        };
    }

    /// <summary>Lower end of the first sheet along one axis: near the datum, shifted where that keeps the joins off the holes.</summary>
    private static double Origin(double from, double length, double usable, double step, int count, bool datumAtLow, double overlap, ImmutableArray<(double From, double To)> holes)
    {
        var slack = Math.Max(0, usable + ((count - 1) * step) - length);
        var first = Math.Min(slack / 2, DatumRoomMm);
        var (best, bestCut) = (first, int.MaxValue);
        for (var room = first; room <= slack - first + 1e-9; room += 2)
        {
            var low = from - (datumAtLow ? room : slack - room);
            var cut = 0;
            for (var j = 1; j < count; j++)
            {
                var join = low + (j * step) + (overlap / 2);
                cut += holes.Count(h => h.From < join + (overlap / 2) && h.To > join - (overlap / 2));
            }

            if (cut < bestCut) (best, bestCut) = (room, cut);
            if (cut == 0) break;
        }

        return from - (datumAtLow ? best : slack - best);
    }
}
