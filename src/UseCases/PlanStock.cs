using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Tangwright.Core;
using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>How many pieces to start, which bars to buy and how to cut them.</summary>
/// <param name="Results">The plan worked up.</param>
/// <param name="Stock">The bars.</param>
public sealed record StockAnswer(Results Results, StockPlan Stock);

/// <summary>From good pieces wanted to starts, bars and cuts.</summary>
public static class PlanStock
{
    /// <summary>Works it out.</summary>
    /// <param name="planPath">The plan file.</param>
    /// <param name="shopPath">The shop file; null: looked for.</param>
    /// <param name="request">What is asked.</param>
    public static Checked<StockAnswer> Of(string planPath, string? shopPath, StockRequest request)
        => OpenWork.Of(planPath, shopPath).Then(w => Of(w.WorkUp(), request));

    /// <summary>The same for a plan that is worked up already.</summary>
    internal static Checked<StockAnswer> Of(Results results, StockRequest request)
        => request.Read(results.Plan.Units).Then(wanted => BarPlan.Of(results, wanted)).Then(stock => Checked<StockAnswer>.Good(new StockAnswer(results, stock)));

    /// <summary>Writes each way of cutting a bar as a drawing for a cutting service: bar, outlines and holes at true size, mm; the service allows for its own kerf.</summary>
    /// <param name="answer">The bars.</param>
    /// <param name="planPath">The plan file, for the names.</param>
    /// <param name="folder">Where to; null: beside the plan.</param>
    /// <param name="overwrite">Whether existing files may be replaced.</param>
    public static Checked<WrittenDrawings> Draw(StockAnswer answer, string planPath, string? folder, bool overwrite)
    {
        var into = folder ?? System.IO.Path.GetDirectoryName(planPath) ?? "";
        var files = answer.Stock.Cuts.SelectMany((cut, i) =>
        {
            var drawing = Drawing(answer.Results, cut, i + 1);
            var name = System.IO.Path.Combine(into, $"{OpenWork.Stem(planPath)}-bar-{i + 1}");
            return new[] { new OutputFile(name + ".dxf", Encoding.UTF8.GetBytes(DxfWriter.Write(drawing))), new OutputFile(name + ".svg", Encoding.UTF8.GetBytes(SvgWriter.Write(drawing))) };
        }).ToArray();
        var faults = OutputFolder.Write(files, overwrite);
        return faults.Length > 0 ? Checked<WrittenDrawings>.Bad(faults) : Checked<WrittenDrawings>.Good(new WrittenDrawings([.. files.Select(f => f.Path)]));
    }

    /// <summary>The same as JSON; names are stable between versions.</summary>
    public static string Json(StockAnswer answer) => JsonText.Of(w =>
    {
        var (r, s) = answer;
        w.WriteString("name", r.Plan.Name);
        w.WriteString("revision", r.Plan.Revision);
        w.WriteString("steel", r.Plan.Stock.Steel);
        w.Number("thickness_mm", r.Plan.Stock.Thickness.Mm);
        w.WriteNumber("good", s.Good);
        w.Number("wanted_chance", s.WantedChanceShare);
        w.Number("yield", s.Yield.Share);
        w.WriteBoolean("assumed_yield", s.Yield.IsPrior);
        w.WriteNumber("starts", s.Starts);
        w.WriteNumber("starts_for_same_steel", s.Free.Starts);
        w.List("chances", s.Rows, row =>
        {
            w.WriteNumber("starts", row.Starts);
            w.Number("chance", row.ChanceShare);
            w.Number("chance_low", row.LowChanceShare);
            w.Number("chance_high", row.HighChanceShare);
            w.WriteNumber("new_bars", row.NewBars);
            w.Number("new_steel_mm", row.NewSteel.Mm);
        });
        w.Number("clearance_mm", s.Room.Clearance.Mm);
        w.Number("end_allowance_mm", s.Room.End.Mm);
        w.Number("bar_edge_mm", s.Room.Edge.Mm);
        w.List("buy", s.Buy, b =>
        {
            w.WriteNumber("bars", b.Count);
            w.Number("width_mm", r.Plan.Stock.Width!.Value.Mm);
            w.Number("length_mm", b.Length.Mm);
            w.WriteNumber("pieces_in_bar", b.MostInBar);
            w.WriteNumber("pieces_in_bar_end_to_end", b.StraightInBar);
        });
        w.Number("buy_mass_g", s.Mass?.Grams);
        w.Number("bars_end_to_end", s.StraightBars);
        w.List("cuts", s.Cuts, c => WriteCut(w, c));
        w.List("notes", s.Notes.Select(n => n), n => w.WriteString("note", n));
    });

    private static void WriteCut(Utf8JsonWriter w, BarCut c)
    {
        w.WriteString("rack", c.Rack?.Name);
        w.WriteNumber("bars", c.Count);
        w.Number("width_mm", c.Width.Mm);
        w.Number("length_mm", c.Length.Mm);
        w.WriteNumber("pieces", c.Places.Length);
        w.Number("row_mm", c.Row.Mm);
        w.WriteBoolean("shortest", c.IsShortest);
        w.Number("least_gap_mm", c.Places.Length > 1 ? c.LeastGap.Mm : null);
        w.Number("drop_mm", c.Drop.Mm);
        w.WriteBoolean("drop_holds_piece", c.DropHoldsPiece);
        w.List("places", c.Places, p =>
        {
            w.Number("along_mm", p.AlongMm);
            w.Number("up_mm", p.UpMm);
            w.WriteBoolean("turned", p.Lie is Lie.Turned or Lie.OverTurned);
            w.WriteBoolean("back_face_up", p.Lie is Lie.Over or Lie.OverTurned);
        });
    }

    private static FlatDrawing Drawing(Results r, BarCut cut, int number)
    {
        var box = r.Plan.Outline.Bounds;
        var (paths, circles) = (ImmutableArray.CreateBuilder<DrawnPath>(), ImmutableArray.CreateBuilder<DrawnCircle>());
        paths.Add(new DrawnPath("BAR", Path.Polygon(new(0, 0), new(cut.Length.Mm, 0), new(cut.Length.Mm, cut.Width.Mm), new(0, cut.Width.Mm))));
        for (var i = 0; i < cut.Places.Length; i++)
        {
            var p = cut.Places[i];
            var turn = Lies.Turn(p.Lie, box).Then(Transform.Shift(new Point(p.AlongMm, p.UpMm)));
            paths.Add(new DrawnPath("OUTLINE", r.Plan.Outline.Transformed(turn)));
            foreach (var h in r.Holes) circles.Add(new DrawnCircle("HOLES", $"{i + 1}-{h.Name}", turn.Map(h.MadeAt), h.MadeDiameter.Mm));
        }

        return new FlatDrawing($"{r.Plan.Name} rev {r.Plan.Revision}, bar {number}", paths.ToImmutable(), circles.ToImmutable());
    }
}

/// <summary>Drawings that were written.</summary>
/// <param name="Files">The files, in order.</param>
public sealed record WrittenDrawings(ImmutableArray<string> Files);
