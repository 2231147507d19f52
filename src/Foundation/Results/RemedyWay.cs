using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>One way out of a finding, as data: the least change of the plan that would pass.</summary>
/// <param name="Says">The way in words: "drill L1 15 mm (0.591 in) instead of 16 mm".</param>
/// <param name="Changes">What changes in the plan, in order; never empty.</param>
public sealed record RemedyWay(string Says, ImmutableArray<RemedyChange> Changes);

/// <summary>One change of a plan that a way out of a finding asks for. The kinds are closed.</summary>
public abstract record RemedyChange
{
    private protected RemedyChange()
    {
    }
}

/// <summary>A single hole is made in another size.</summary>
/// <param name="Hole">Its name.</param>
/// <param name="Diameter">The new diameter.</param>
/// <param name="Drill">Name of the drill as the trade calls it, "#30" or "1/4 in"; empty when it is a bare size.</param>
public sealed record HoleResized(string Hole, Length Diameter, string Drill) : RemedyChange;

/// <summary>A single hole is made in another place.</summary>
/// <param name="Hole">Its name.</param>
/// <param name="To">New centre, plan's axes, mm.</param>
public sealed record HoleMoved(string Hole, Point To) : RemedyChange;

/// <summary>A single hole is left out.</summary>
/// <param name="Hole">Its name.</param>
public sealed record HoleLeftOut(string Hole) : RemedyChange;

/// <summary>The holes of a row are made in other sizes.</summary>
/// <param name="Row">Name of the row.</param>
/// <param name="Diameters">One for all, or one for each hole.</param>
public sealed record RowResized(string Row, ImmutableArray<Length> Diameters) : RemedyChange;

/// <summary>A length of the plan gets another value.</summary>
/// <param name="Heading">Heading in the plan file.</param>
/// <param name="Key">Key under it.</param>
/// <param name="Length">New length.</param>
public sealed record LengthSet(string Heading, string Key, Length Length) : RemedyChange;

/// <summary>An angle of the plan gets another value.</summary>
/// <param name="Heading">Heading in the plan file.</param>
/// <param name="Key">Key under it.</param>
/// <param name="Angle">New angle.</param>
public sealed record AngleSet(string Heading, string Key, Angle Angle) : RemedyChange;

/// <summary>A word of the plan is another one.</summary>
/// <param name="Heading">Heading in the plan file.</param>
/// <param name="Key">Key under it.</param>
/// <param name="Word">New word.</param>
public sealed record WordSet(string Heading, string Key, string Word) : RemedyChange;

/// <summary>A point of the plan lies elsewhere.</summary>
/// <param name="Heading">Heading in the plan file.</param>
/// <param name="Key">Key under it.</param>
/// <param name="Point">New place, plan's axes, mm.</param>
public sealed record PointSet(string Heading, string Key, Point Point) : RemedyChange;

/// <summary>The plunge line lies elsewhere.</summary>
/// <param name="A">A point on it, plan's axes, mm.</param>
/// <param name="B">Another.</param>
public sealed record PlungeSet(Point A, Point B) : RemedyChange;

/// <summary>A corner of the outline is rounded.</summary>
/// <param name="At">The corner, plan's axes, mm.</param>
/// <param name="Radius">Radius of the arc.</param>
public sealed record CornerRounded(Point At, Length Radius) : RemedyChange;
