using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A thing of the drawing that can be taken hold of, plan's axes, mm.</summary>
/// <param name="Id">Name as a <see cref="Thing"/>.</param>
/// <param name="Name">What the maker calls it.</param>
/// <param name="X">Along.</param>
/// <param name="Y">Across.</param>
/// <param name="Diameter">Diameter of a hole; else 0.</param>
/// <param name="Fixed">Whether it cannot be moved by itself.</param>
public sealed record DrawnThing(string Id, string Name, double X, double Y, double Diameter = 0, bool Fixed = false);

/// <summary>Lists what can be taken hold of.</summary>
public static class DrawnThings
{
    /// <summary>Single holes.</summary>
    public static ImmutableArray<DrawnThing> Holes(Results r) => [.. r.Holes.Where(h => h.Row is null).Select(h => Hole(h, "hole"))];

    /// <summary>Holes of rows.</summary>
    public static ImmutableArray<DrawnThing> RowHoles(Results r) => [.. r.Holes.Where(h => h.Row is not null).Select(h => Hole(h, "row"))];

    /// <summary>Points, control points, middles of arcs and the lines themselves, in the outline's order.</summary>
    public static ImmutableArray<DrawnThing> OfOutline(Path outline)
    {
        var things = ImmutableArray.CreateBuilder<DrawnThing>();
        for (var i = 0; i < outline.Segments.Length; i++)
        {
            var s = outline.Segments[i];
            Add($"point:{i}", $"Point {i + 1}", s.Start);
            switch (s)
            {
                case Bezier c:
                    Add($"control:{i}.1", $"First control point of curve {i + 1}", c.Control1);
                    Add($"control:{i}.2", $"Second control point of curve {i + 1}", c.Control2);
                    break;
                case Arc { IsCircle: true } a:
                    Add($"bow:{i}", $"Middle of arc {i + 1}", a.At(0.5));
                    break;
            }

            Add($"segment:{i}", LineName(s, i), s.At(0.5));
        }

        return things.ToImmutable();

        void Add(string id, string name, Point at) => things.Add(new(id, name, at.X, at.Y));
    }

    /// <summary>Ends of the sharpened part, the plunge line, the grip and the rows, and the datum.</summary>
    public static ImmutableArray<DrawnThing> Rest(Results r)
    {
        var plan = r.Plan;
        var things = ImmutableArray.CreateBuilder<DrawnThing>();
        if (plan.Edge is { } e)
        {
            Add("edge:from", "Start of the sharpened part", e.From);
            Add("edge:to", "End of the sharpened part", e.To);
        }

        if (plan.Bevel?.Plunge is { } p)
        {
            Add("plunge:a", "First end of the plunge line", p.A);
            Add("plunge:b", "Second end of the plunge line", p.B);
        }

        if (plan.Grip is { } g)
        {
            Add("grip:from", "Front end of the grip", g.From);
            Add("grip:to", "Rear end of the grip", g.To);
        }

        Add("datum:at", "Datum", FromDatum.Zero(plan));
        foreach (var row in plan.Holes.OfType<HoleRow>())
        {
            if (r.Holes.FirstOrDefault(h => h.Row == row.Name) is not { } first) continue;
            Add($"rowend:{row.Name}.from", $"First end of row {row.Name}", first.At);
            Add($"rowend:{row.Name}.to", $"Last end of row {row.Name}", r.Holes.Last(h => h.Row == row.Name).At);
        }

        return things.ToImmutable();

        void Add(string id, string name, Point at) => things.Add(new(id, name, at.X, at.Y));
    }

    /// <summary>What a line of the outline is called: "Line 3, straight".</summary>
    public static string LineName(Segment s, int i) => $"Line {i + 1}, " + s switch { Bezier => "a curve", Arc => "an arc", _ => "straight" };

    private static DrawnThing Hole(PlacedHole h, string kind) => new($"{kind}:{h.Name}", $"Hole {h.Name}", h.At.X, h.At.Y, h.Diameter.Mm, h.Row is not null);
}
