using System.Text.Json;
using Tangwright.Core;

namespace Tangwright.UseCases;

/// <summary>Bars as JSON.</summary>
public static class StockJson
{
    /// <summary>The answer; names are stable between versions.</summary>
    public static string Of(StockAnswer answer) => JsonText.Of(w =>
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
            w.WriteString("steel", b.Steel);
            w.Number("thickness_mm", b.Thickness.Mm);
            w.Number("width_mm", b.Width.Mm);
            w.Number("length_mm", b.Length.Mm);
            w.Number("price", (double?)b.Price);
            w.WriteNumber("pieces_in_bar", b.MostInBar);
            w.WriteNumber("pieces_in_bar_end_to_end", b.StraightInBar);
        });
        w.Number("buy_mass_g", s.Mass?.Grams);
        w.Number("bars_end_to_end", s.StraightBars);
        w.Number("price", (double?)s.Price);
        w.WriteString("money", s.Money);
        w.List("patterns", s.Patterns, p =>
        {
            w.WriteString("name", p.Results.Plan.Name);
            w.WriteString("revision", p.Results.Plan.Revision);
            w.WriteNumber("good", p.Good);
            w.WriteNumber("starts", p.Starts);
            w.Number("chance", p.ChanceShare);
            w.Number("steel_price_of_good_piece", (double?)p.SteelPrice);
        });
        w.WriteBoolean("proven", s.IsLeast);
        w.WriteString("service", s.Service?.Name);
        w.WriteBoolean("straight_cuts", s.IsByStraightCuts);
        if (answer.Free is { } free)
        {
            w.WriteNumber("bars_without_straight_cuts", free.Buy.Sum(b => b.Count));
            w.Number("new_steel_without_straight_cuts_mm", free.Buy.Sum(b => b.Count * b.Length.Mm));
            w.Number("price_without_straight_cuts", (double?)free.Price);
        }

        w.List("cuts", s.Cuts, c => WriteCut(w, s, c));
        w.List("notes", s.Notes.Select(n => n), n => w.WriteString("note", n));
    });

    private static void WriteCut(Utf8JsonWriter w, StockPlan s, BarCut c)
    {
        w.WriteString("rack", c.Rack?.Name);
        w.WriteNumber("bars", c.Count);
        w.WriteString("steel", c.Steel);
        w.Number("thickness_mm", c.Thickness.Mm);
        w.Number("width_mm", c.Width.Mm);
        w.Number("length_mm", c.Length.Mm);
        w.WriteNumber("pieces", c.Places.Length);
        w.Number("row_mm", c.Row.Mm);
        w.WriteBoolean("shortest", c.IsShortest);
        w.Number("least_gap_mm", c.Places.Length > 1 ? c.LeastGap.Mm : null);
        w.Number("drop_mm", c.Drop.Mm);
        w.WriteBoolean("drop_holds_piece", c.DropHoldsPiece);
        w.List("saw_lines", c.SawLines, l =>
        {
            w.Number("lower_edge_mm", l.LowMm);
            w.Number("upper_edge_mm", l.HighMm);
            w.Number("room_mm", l.RoomMm);
        });
        w.List("places", c.Places, p =>
        {
            w.WriteString("pattern", s.Patterns[p.Pattern].Results.Plan.Name);
            w.Number("along_mm", p.AlongMm);
            w.Number("up_mm", p.UpMm);
            w.WriteBoolean("turned", Lies.IsTurned(p.Lie));
            w.WriteBoolean("back_face_up", Lies.IsOver(p.Lie));
            w.WriteBoolean("across", Lies.IsAcross(p.Lie));
        });
    }
}
