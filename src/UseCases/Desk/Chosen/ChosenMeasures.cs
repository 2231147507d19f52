using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>One measure of a chosen thing.</summary>
/// <param name="Label">What stands at it.</param>
/// <param name="Written">As it would be typed.</param>
/// <param name="Beside">The same in the other unit; empty when it is no length.</param>
/// <param name="Set">The change when something is typed in; null when it cannot be changed by itself.</param>
/// <param name="Offer">Name of the list of values that are offered while typing; empty when none.</param>
public sealed record ChosenMeasure(string Label, string Written, string Beside, Func<string, PlanChange>? Set, string Offer = "");

/// <summary>Something that can be done with a chosen thing.</summary>
/// <param name="Says">What the button says.</param>
/// <param name="Change">The change it makes.</param>
public sealed record ChosenWay(string Says, PlanChange Change);

/// <summary>Something that can be done with a chosen thing once a size is typed.</summary>
/// <param name="Label">What is typed.</param>
/// <param name="Says">What the button says.</param>
/// <param name="Offers">Sizes that are offered while typing.</param>
/// <param name="Change">The change it makes.</param>
public sealed record ChosenEntry(string Label, string Says, ImmutableArray<string> Offers, Func<string, PlanChange> Change);

/// <summary>A chosen thing: its measures as they can be typed in, and what can be done with it.</summary>
/// <param name="Name">What it is: "Hole L1".</param>
/// <param name="About">More of it, in a sentence.</param>
/// <param name="Measures">The measures.</param>
/// <param name="Ways">What can be done with it.</param>
/// <param name="Entries">What can be done with it once a size is typed.</param>
public sealed record ChosenMeasures(string Name, string About, ImmutableArray<ChosenMeasure> Measures, ImmutableArray<ChosenWay> Ways, ImmutableArray<ChosenEntry> Entries)
{
    /// <summary>Name of the list of drills owned.</summary>
    public const string Drills = "drills-beside";

    /// <summary>Those of what is chosen; null when nothing is chosen or it is gone.</summary>
    public static ChosenMeasures? Of(PlanOnDesk desk, ChosenOnDrawing? chosen)
    {
        if (chosen is null) return null;
        var r = desk.Results;
        if (chosen.Thing is not { } thing) return ChosenOutline.Line(r, chosen);
        return thing.Kind switch
        {
            ThingKind.Hole or ThingKind.RowHole => ChosenHole.Of(r, thing),
            ThingKind.RowEnd => ChosenHole.RowEnd(r, thing),
            ThingKind.OutlinePoint or ThingKind.Control or ThingKind.Bow => ChosenOutline.Of(r, thing),
            _ => ChosenPlace.Of(r, desk.File, thing),
        };
    }

    /// <summary>Along and across, plan's axes.</summary>
    internal static ImmutableArray<ChosenMeasure> Place(Results r, Thing thing, Point at, bool isFixed = false)
    {
        return [One("x", at.X, Measure.X), One("y", at.Y, Measure.Y)];

        ChosenMeasure One(string label, double mm, Measure measure) => Sized(r, label, Length.OfMm(mm), isFixed ? null : w => new Typed(thing, measure, w));
    }

    /// <summary>A length with the other unit beside it.</summary>
    internal static ChosenMeasure Sized(Results r, string label, Length length, Func<string, PlanChange>? set, string offer = "")
        => new(label, DeskFigures.Typed(length, r.Plan.Units), BesideLength.Of(length, r.Plan.Units), set, offer);
}
