using System.Collections.Immutable;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Sets any value of a plan as a maker types it; an empty one takes the key out.</summary>
/// <param name="Heading">Heading of docs/plan-file.md; empty for the top.</param>
/// <param name="Item">Name of the hole or row under a heading that repeats; else empty.</param>
/// <param name="Key">Key.</param>
/// <param name="Written">As typed.</param>
public sealed record SetValue(string Heading, string Item, string Key, string Written) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => ValueEdit.Set(file, Heading, Item, Key, Written);
}

/// <summary>Begins a heading with its values; the ends of the sharpened part go to the nearest points of the outline.</summary>
/// <param name="Heading">Heading.</param>
/// <param name="Values">Keys with what was typed; empty ones are left out.</param>
public sealed record BeginHeading(string Heading, ImmutableArray<(string Key, string Written)> Values) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file)
        => Heading == "edge" ? PlaceEdit.Sharpen(file, Said("from"), Said("to")) : ValueEdit.Begin(file, Heading, Values);

    private string Said(string key) => Values.FirstOrDefault(v => v.Key == key).Written ?? "";
}

/// <summary>Takes a heading out of the plan, with all its lines.</summary>
/// <param name="Heading">Heading.</param>
public sealed record TakeOutHeading(string Heading) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => ValueEdit.TakeOutHeading(file, Heading);
}

/// <summary>Writes the plunge line square to the piece, as one x, or as two points, so that it can be tilted.</summary>
/// <param name="Square">Square to the piece.</param>
public sealed record WritePlunge(bool Square) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => PlaceEdit.WritePlunge(file, Square);
}
