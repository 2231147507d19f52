using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A new hole put on the drawing.</summary>
public static class NewHoleOnDesk
{
    /// <summary>Makes it, with the diameter of the last one.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="at">Where, plan's axes, mm.</param>
    /// <returns>The hole.</returns>
    public static Checked<Thing> At(PlanOnDesk desk, Point at)
    {
        var plan = desk.Results.Plan;
        var faults = desk.Make(AddHole.Where(at, plan.Units, Diameter(plan)));
        if (faults.Length > 0) return Checked<Thing>.Bad(faults);
        return desk.Results.Plan.Holes.OfType<Core.Hole>().LastOrDefault(h => plan.Holes.All(o => o.Name != h.Name)) is { } made
            ? Checked<Thing>.Good(new Thing(ThingKind.Hole, made.Name))
            : Checked<Thing>.Bad(Fault.OfFile(desk.Path, "the hole is not in the plan", "try again"));
    }

    /// <summary>Diameter a new hole is given: that of the last single hole as written, else 6 mm or 1/4 in.</summary>
    private static string Diameter(Core.Plan plan)
        => plan.Holes.OfType<Core.Hole>().LastOrDefault()?.DiameterAsWritten is { Length: > 0 } written ? written : plan.Units == Core.LengthUnit.Inch ? "1/4 in" : "6 mm";
}
