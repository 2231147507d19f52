using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Adds a hole after the last one.</summary>
/// <param name="At">Its centre as typed: <c>100, 18.2</c>.</param>
/// <param name="Diameter">Its diameter as typed: 8, 5/16 in, #30.</param>
/// <param name="Use">What for; empty: to save weight.</param>
/// <param name="Make">How; empty: drilled.</param>
/// <param name="Name">Its name; empty: the next free one of H1, H2, ...</param>
public sealed record AddHole(string At, string Diameter, string Use = "", string Make = "", string Name = "") : PlanChange
{
    /// <summary>Adds one where the drawing was clicked.</summary>
    /// <param name="at">Where, plan's axes, mm.</param>
    /// <param name="units">Unit of the plan.</param>
    /// <param name="diameter">Its diameter as typed.</param>
    public static AddHole Where(Point at, LengthUnit units, string diameter)
        => new($"{DeskFigures.Typed(Length.OfMm(at.X), units)}, {DeskFigures.Typed(Length.OfMm(at.Y), units)}", diameter);

    /// <summary>Adds one as a form has it: keys of a hole with what was typed.</summary>
    public static AddHole Of(ImmutableArray<(string Key, string Written)> said)
    {
        string Said(string key) => said.FirstOrDefault(v => v.Key == key).Written ?? "";
        return new($"{Said("x")}, {Said("y")}", Said("diameter"), Said("use"), Said("make"), Said("name"));
    }

    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file)
        => HoleBlock.AddHole(file, [("name", Name), ("at", At), ("diameter", Diameter), ("use", Use), ("make", Make)]);
}

/// <summary>Takes a single hole away.</summary>
/// <param name="Name">Its name.</param>
public sealed record RemoveHole(string Name) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => PlanEdit.RemoveHole(file, Name);
}
