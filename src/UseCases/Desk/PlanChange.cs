using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>One change of a plan, as the desk asks for it.</summary>
public abstract record PlanChange
{
    private protected PlanChange()
    {
    }

    /// <summary>The changed plan.</summary>
    internal abstract Checked<PlanFile> Of(PlanFile file);

    /// <summary>Refuses in words.</summary>
    private protected static Checked<PlanFile> No(PlanFile file, string message, string remedy) => Checked<PlanFile>.Bad(Fault.OfFile(file.FileName, message, remedy));

    /// <summary>What is made with a length above 0 as a maker writes it.</summary>
    private protected static Checked<PlanFile> WithLength(PlanFile file, string written, string what, Func<Length, Checked<PlanFile>> make)
    {
        var read = LengthText.Read(written, file.Plan.Units == LengthUnit.Inch ? Length.MmPerInch : 1, drills: false);
        if (!read.IsGood) return No(file, read.Message, read.Remedy);
        return read.Value.Length > Length.Zero ? make(read.Value.Length) : No(file, $"{what} must be above 0", "write it as 8 or 5/16 in");
    }

    /// <summary>Where a thing is; null when the plan has no such thing.</summary>
    internal static Point? PlaceOf(Plan plan, Thing thing)
    {
        var segment = thing.Segment >= 0 && thing.Segment < plan.Outline.Segments.Length ? plan.Outline.Segments[thing.Segment] : null;
        return thing.Kind switch
        {
            ThingKind.Hole => HoleOf(plan, thing)?.At,
            ThingKind.OutlinePoint => segment?.Start,
            ThingKind.Control => segment is Bezier c ? thing.IsFirst ? c.Control1 : c.Control2 : null,
            ThingKind.Bow => segment is Arc { IsCircle: true } a ? a.At(0.5) : null,
            ThingKind.EdgeEnd => plan.Edge is { } e ? thing.IsFirst ? e.From : e.To : null,
            ThingKind.PlungeEnd => plan.Bevel?.Plunge is { } p ? thing.IsFirst ? p.A : p.B : null,
            ThingKind.GripEnd => plan.Grip is { } g ? thing.IsFirst ? g.From : g.To : null,
            ThingKind.Datum => FromDatum.Zero(plan),
            ThingKind.RowEnd => plan.Holes.OfType<HoleRow>().FirstOrDefault(r => r.Name == thing.Owner) is { } row ? thing.IsFirst ? row.From : row.To : null,
            _ => null,
        };
    }

    /// <summary>The single hole; null when there is none.</summary>
    internal static Hole? HoleOf(Plan plan, Thing thing)
        => thing.Kind == ThingKind.Hole ? plan.Holes.OfType<Hole>().FirstOrDefault(h => h.Name == thing.Name) : null;

    /// <summary>Puts a thing at a place.</summary>
    internal static Checked<PlanFile> Put(PlanFile file, Thing thing, Point to)
    {
        if (thing.Kind == ThingKind.RowHole) return No(file, $"{thing.Name} stands in a row", "move an end of the row, or write each of its holes by itself");
        if (thing.Kind != ThingKind.RowEnd && PlaceOf(file.Plan, thing) is null) return No(file, $"the plan has no {thing} any more", "choose another");
        return thing.Kind switch
        {
            ThingKind.Hole => PlanEdit.MoveHole(file, thing.Name, to),
            ThingKind.OutlinePoint => PlanEdit.MoveOutlinePoint(file, PlaceOf(file.Plan, thing)!.Value, to),
            ThingKind.Control => OutlineEdit.MoveControl(file, thing.Segment, thing.IsFirst, to),
            ThingKind.Bow => OutlineEdit.SetBow(file, thing.Segment, to),
            ThingKind.EdgeEnd => PlaceEdit.MoveEdgeEnd(file, thing.IsFirst, to),
            ThingKind.PlungeEnd => PlaceEdit.MovePlungeEnd(file, thing.IsFirst, to),
            ThingKind.GripEnd => PlaceEdit.MoveGripEnd(file, thing.IsFirst, to),
            ThingKind.Datum => PlaceEdit.MoveDatum(file, to),
            _ => PlaceEdit.MoveRowEnd(file, thing.Owner, thing.IsFirst, to),
        };
    }
}

/// <summary>Puts a thing where it was dragged to.</summary>
/// <param name="Thing">The thing.</param>
/// <param name="To">Where, plan's axes, mm.</param>
/// <param name="Rounded">To the nearest half millimetre or 1/64 in; else as it comes, to 0.001 mm.</param>
public sealed record PutAt(Thing Thing, Point To, bool Rounded) : PlanChange
{
    /// <summary>The step places are rounded to, mm: half a millimetre, or 1/64 in when the plan is in inches.</summary>
    public static double StepMm(LengthUnit units) => units == LengthUnit.Inch ? Length.MmPerInch / 64 : 0.5;

    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file)
    {
        if (!double.IsFinite(To.X) || !double.IsFinite(To.Y) || Math.Abs(To.X) > LengthText.GreatestMm || Math.Abs(To.Y) > LengthText.GreatestMm) return No(file, "that is off the sheet", "keep it on the drawing");
        var step = Rounded ? StepMm(file.Plan.Units) : file.Plan.Units == LengthUnit.Inch ? Length.MmPerInch / 10000 : 0.001;
        return Put(file, Thing, new Point(Near(To.X), Near(To.Y)));

        // a whole number of steps, counted in the plan's own unit so that it is written short
        double Near(double mm)
        {
            var perUnit = Math.Round((file.Plan.Units == LengthUnit.Inch ? Length.MmPerInch : 1) / step);
            var unit = step * perUnit;
            return Math.Round(mm / step, MidpointRounding.AwayFromZero) / perUnit * unit;
        }
    }
}

/// <summary>Which measure of a thing is typed in.</summary>
public enum Measure
{
    /// <summary>Along the piece, plan's axes.</summary>
    X,

    /// <summary>Across the piece, plan's axes.</summary>
    Y,

    /// <summary>Diameter of a hole.</summary>
    Diameter,
}

/// <summary>Sets a measure of a thing as a maker writes it: 100, 4 1/8 in, #30.</summary>
/// <param name="Thing">The thing.</param>
/// <param name="Measure">Which measure.</param>
/// <param name="Written">As written.</param>
public sealed record Typed(Thing Thing, Measure Measure, string Written) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file)
    {
        var unit = file.Plan.Units == LengthUnit.Inch ? Length.MmPerInch : 1;
        var read = LengthText.Read(Written, unit, drills: Measure == Measure.Diameter);
        if (!read.IsGood) return No(file, read.Message, read.Remedy);
        var length = read.Value.Length;
        if (Measure != Measure.Diameter)
        {
            if (PlaceOf(file.Plan, Thing) is not { } at) return Put(file, Thing, default);
            return Put(file, Thing, Measure == Measure.X ? at with { X = length.Mm } : at with { Y = length.Mm });
        }

        if (HoleOf(file.Plan, Thing) is null) return No(file, "only a single hole has a diameter to set", "choose a hole");
        if (length <= Length.Zero) return No(file, "a hole needs a diameter above 0", "write it as 8, 5/16 in or #30");
        return read.Value.Writing == LengthWriting.Drill && DrillSeries.Named(Written.Trim()) is { } drill
            ? PlanEdit.SetDiameter(file, Thing.Name, drill)
            : PlanEdit.SetDiameter(file, Thing.Name, length);
    }
}
