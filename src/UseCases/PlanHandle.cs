using System.Text.Json;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>What is asked of the handle, as a person writes it.</summary>
/// <param name="Pieces">Pieces in the batch; null: 1.</param>
/// <param name="Board">A board the scales come out of, "400 x 120 x 27 mm": length along the grain, width, thickness; null: none.</param>
public sealed record HandleRequest(int? Pieces, string? Board);

/// <summary>Scales, pins, glue, cord and grip of a plan.</summary>
public static class PlanHandle
{
    private const int MostPieces = 10_000;

    /// <summary>Works it out.</summary>
    /// <param name="planPath">The plan file.</param>
    /// <param name="shopPath">The shop file; null: looked for.</param>
    /// <param name="request">What is asked.</param>
    public static Checked<HandlePlan> Of(string planPath, string? shopPath, HandleRequest request)
        => OpenWork.Of(planPath, shopPath).Then(w => Of(w.WorkUp(), request));

    /// <summary>The same for a plan that is worked up already.</summary>
    internal static Checked<HandlePlan> Of(Results results, HandleRequest request)
        => Read(request, results.Plan.Units).Then(wanted => Checked<HandlePlan>.Good(HandlePlan.Of(results, wanted)));

    /// <summary>What is asked, understood.</summary>
    internal static Checked<HandleWanted> Read(HandleRequest request, LengthUnit units)
    {
        var faults = new List<Fault>();
        var pieces = request.Pieces ?? 1;
        if (pieces is < 1 or > MostPieces) faults.Add(Fault.OfFile("pieces", $"{pieces} pieces", $"write 1 to {MostPieces}"));
        BlockSize? board = null;
        if (!string.IsNullOrWhiteSpace(request.Board))
        {
            board = Board(request.Board, units);
            if (board is null) faults.Add(Fault.OfFile("board", $"\"{request.Board}\" is no board", "write its length along the grain, its width and its thickness with x between, as 400 x 120 x 27 mm"));
        }

        return faults.Count > 0 ? Checked<HandleWanted>.Bad(faults) : Checked<HandleWanted>.Good(new HandleWanted(pieces, board));
    }

    /// <summary>The same as JSON; names are stable between versions.</summary>
    public static string Json(HandlePlan p) => JsonText.Of(w =>
    {
        w.WriteString("name", p.Results.Plan.Name);
        w.WriteString("revision", p.Results.Plan.Revision);
        w.WriteString("kind", p.Shape is not null ? "scales" : p.Cord is not null ? "cord" : "bare");
        w.Number("pieces", p.Wanted.Pieces);
        w.Number("mass_g", p.Results.At(Stage.Assembled)?.Mass?.Grams);
        w.Number("balance_from_datum_mm", p.Results.At(Stage.Assembled)?.BalanceFromDatum.Mm);
        w.List("parts", p.Parts, m =>
        {
            w.WriteString("name", m.Name);
            w.Number("mass_g", m.Weight.Grams);
            w.Number("x_mm", m.At.X);
            w.Number("y_mm", m.At.Y);
        });
        w.List("pins", p.Pins, pin =>
        {
            w.WriteString("hole", pin.Hole.Name);
            w.Number("diameter_mm", pin.Diameter.Mm);
            w.Number("bore_mm", pin.Bore.Mm);
            w.Number("flush_mm", pin.Length.Mm);
            w.Number("cut_mm", Documents.HandleWords.CutLength(pin).Mm);
        });
        w.List("holes", p.Under, u =>
        {
            w.WriteString("name", u.Hole.Name);
            w.WriteBoolean("drill_scales", u.IsDrilled);
            w.Number("loose_mm", u.Loose?.Mm);
            w.Number("scale_beside_mm", u.Wood?.Mm);
        });
        if (p.Blank is { } b) w.Object("blank", () => Write(w, b));
        if (p.Glue is { } g) w.Object("glue", () => Write(w, g));
        w.List("wood", p.Wood, c => Write(w, c));
        w.List("heat", p.Heat, h =>
        {
            w.WriteString("of", h.Faces);
            w.Number("grows_more_mm", h.More.Mm);
            w.Number("difference_c", h.DifferenceC);
        });
        if (p.Cord is { } cord)
        {
            w.Object("cord", () =>
            {
                w.Number("diameter_mm", cord.Diameter.Mm);
                w.Number("along_mm", cord.Along.Mm);
                w.Number("turns", cord.Turns);
                w.Number("turn_mm", cord.TurnLength.Mm);
                w.Number("wound_mm", cord.Wound.Mm);
                w.Number("cut_mm", cord.Cut.Mm);
                w.Number("mass_g", cord.Grams);
            });
        }

        w.List("cuts", p.Cuts, c =>
        {
            w.Number("station_mm", c.Station.Mm);
            w.Number("x_mm", c.At.X);
            w.Number("y_mm", c.At.Y);
            w.Number("height_mm", c.Height.Mm);
            w.Number("width_mm", c.Width.Mm);
            w.Number("girth_mm", c.Girth.Mm);
        });
        if (p.Grip is { } grip) w.Object("grip", () => Write(w, grip));
    });

    private static void Write(Utf8JsonWriter w, ScaleBlank b)
    {
        w.Number("length_mm", b.Size.Long.Mm);
        w.Number("width_mm", b.Size.Wide.Mm);
        w.Number("thickness_mm", b.Size.Thick.Mm);
        w.Number("pairs_from_board", b.Yield?.Pairs);
        w.Number("boards", b.Boards);
    }

    private static void Write(Utf8JsonWriter w, GlueUp g)
    {
        w.Number("joint_mm2", g.Joint.Mm2);
        w.Number("joints", g.Joints);
        w.Number("net_ml", g.Each.Net.Mm3 / 1000);
        w.Number("mix_ml", g.Each.ToMix.Mm3 / 1000);
        w.Number("mixes", g.Batches.Mixes);
        w.Number("most_in_a_mix", g.Batches.PiecesEach.IsEmpty ? 0 : g.Batches.PiecesEach.Max());
        w.Number("bond_low_n", g.Bond.Low.Newtons);
        w.Number("bond_high_n", g.Bond.High.Newtons);
        w.Number("pins_low_n", g.Pins?.Low.Newtons);
        w.Number("pins_high_n", g.Pins?.High.Newtons);
    }

    private static void Write(Utf8JsonWriter w, WoodChange c)
    {
        w.WriteString("wood", c.Wood.Name);
        w.WriteString("of", c.Faces);
        w.Number("across_mm", c.Across.Mm);
        w.Number("coefficient_per_percent", c.CoefficientPerPercent);
        w.Number("from_percent", c.FromPercent?.Value);
        w.Number("to_percent", c.ToPercent?.Value);
        w.Number("change_mm", c.Change?.Value.Mm);
        w.Number("change_low_mm", c.Change?.Low.Mm);
        w.Number("change_high_mm", c.Change?.High.Mm);
        w.Number("each_side_mm", c.EachSide?.Value.Mm);
    }

    private static void Write(Utf8JsonWriter w, GripCheck g)
    {
        w.WriteBoolean("survey", g.IsSurvey);
        w.Number("room_mm", g.Room.Mm);
        w.Number("largest_hand_breadth_mm", g.LargestThatFits.Mm);
        w.Number("least_girth_mm", g.Least.Girth.Mm);
        w.Number("most_girth_mm", g.Most.Girth.Mm);
        w.Number("best_round_small_mm", g.BestRound.Small.Mm);
        w.Number("best_round_large_mm", g.BestRound.Large.Mm);
        w.Number("swell_mm", g.Swell.Mm);
        w.Number("edge_away_mm", g.EdgeAway?.Mm);
        w.Number("knuckle_room_mm", g.KnuckleRoom?.Mm);
        w.Number("edge_round_mm", g.EdgeRound?.Mm);
    }

    // "400 x 120 x 27 mm", "16 in x 4 in x 1 in": a unit at the end holds for all that have none
    private static BlockSize? Board(string text, LengthUnit units)
    {
        var parts = text.Split(['x', 'X', '×'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length != 3) return null;
        var unit = parts[2].EndsWith("in", StringComparison.OrdinalIgnoreCase) || parts[2].EndsWith('"') ? Length.MmPerInch : parts[2].EndsWith("mm", StringComparison.OrdinalIgnoreCase) ? 1 : (units == LengthUnit.Inch ? Length.MmPerInch : 1);
        var read = parts.Select(p => LengthText.Read(p, unit)).ToArray();
        return read.All(l => l.IsGood && l.Value.Length.Mm is > 0 and < 10_000) ? new BlockSize(read[0].Value.Length, read[1].Value.Length, read[2].Value.Length) : null;
    }
}
