using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>Measured pieces as JSON; names are stable between versions.</summary>
public static class MeasuredJson
{
    /// <summary>The text.</summary>
    /// <param name="r">The plan with its measured pieces.</param>
    public static string Of(Results r) => JsonText.Of(w =>
    {
        w.WriteString("name", r.Plan.Name);
        w.WriteString("revision", r.Plan.Revision);
        w.List("pieces", r.Measured, p =>
        {
            w.WriteString("piece", p.Piece);
            w.WriteBoolean("carried_on", p.IsGuide);
            w.Number("fit_turn_degrees", p.Fit.Turn.Degrees);
            w.Number("fit_shift_x_mm", p.Fit.Shift.X);
            w.Number("fit_shift_y_mm", p.Fit.Shift.Y);
            w.Number("fit_rms_mm", p.Fit.RmsMm);
            w.Number("fit_most_mm", p.Fit.MostMm);
            w.Number("passing_turn_degrees", p.Passing.Turn.Degrees);
            w.Number("passing_shift_x_mm", p.Passing.Shift.X);
            w.Number("passing_shift_y_mm", p.Passing.Shift.Y);
            w.List("holes", p.Holes, h =>
            {
                w.WriteString("hole", h.Hole.Name);
                w.Number("x_mm", h.Built.At.X);
                w.Number("y_mm", h.Built.At.Y);
                w.Number("diameter_mm", h.Built.Diameter?.Mm);
                w.Number("planned_x_mm", h.Hole.At.X);
                w.Number("planned_y_mm", h.Hole.At.Y);
                w.Number("planned_diameter_mm", h.Hole.Diameter.Mm);
                w.Number("position_mm", h.Position.Mm);
                w.Number("position_fitted_mm", h.PositionFitted.Mm);
                w.Number("position_passing_mm", h.PositionPassing.Mm);
                w.Number("allowed_mm", h.Allowed?.Mm);
                w.WriteString("action", Word(h.Verdict.Action));
                w.Number("to_mm", h.Verdict.To?.Diameter.Mm);
                w.WriteString("what_to_do", h.Verdict.Words);
            });
            w.WriteString("not_measured", string.Join(", ", p.NotMeasured));
        });
        if (LearnScatter.Of(r, null) is { } learnt)
        {
            w.Object("scatter", () =>
            {
                w.Number("sigma_mm", learnt.Sigma.Mm);
                w.Number("bound_95_mm", learnt.Bound.Mm);
                w.Number("zone_99_mm", learnt.Zone.Mm);
                w.WriteNumber("pieces", learnt.Pieces);
                w.WriteNumber("holes", learnt.Holes);
                w.WriteNumber("degrees_of_freedom", learnt.Freedom);
            });
        }
        else
        {
            w.WriteNull("scatter");
        }
    });

    /// <summary>What to do, in a word.</summary>
    public static string Word(HoleAction action) => action switch
    {
        HoleAction.Accept => "accept",
        HoleAction.OpenUp => "open up",
        HoleAction.ThickerRod => "thicker rod",
        HoleAction.MeasureAgain => "measure again",
        _ => "scrap",
    };
}
