using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>A point in space, mm, in numbers of the size a mesh file holds: x along the piece, y up on the face, z out of the face.</summary>
/// <param name="X">mm.</param>
/// <param name="Y">mm.</param>
/// <param name="Z">mm.</param>
public readonly record struct MeshPoint(float X, float Y, float Z);

/// <summary>A triangle of a mesh: its three points by number, counter-clockwise seen from outside.</summary>
/// <param name="A">First point.</param>
/// <param name="B">Second point.</param>
/// <param name="C">Third point.</param>
public readonly record struct MeshTriangle(int A, int B, int C);

/// <summary>A solid bounded by triangles that share their points. mm.</summary>
/// <param name="Points">The points.</param>
/// <param name="Triangles">The triangles.</param>
public sealed record TriangleMesh(ImmutableArray<MeshPoint> Points, ImmutableArray<MeshTriangle> Triangles)
{
    /// <summary>Volume inside, mm³: each triangle with the origin spans a tetrahedron, outward ones positive (Gauss's divergence theorem).</summary>
    public double VolumeMm3
    {
        get
        {
            if (Points.IsEmpty) return 0;
            var o = Points[0];
            var six = 0.0;
            foreach (var (a, b, c) in Triangles)
            {
                var ((ax, ay, az), (bx, by, bz), (cx, cy, cz)) = (Off(Points[a], o), Off(Points[b], o), Off(Points[c], o));
                six += (ax * ((by * cz) - (bz * cy))) + (ay * ((bz * cx) - (bx * cz))) + (az * ((bx * cy) - (by * cx)));
            }

            return six / 6;
        }
    }

    /// <summary>Sides that are not shared by exactly two triangles running them in opposite directions; 0 when the mesh is closed and all triangles face outwards alike.</summary>
    public int OpenSides
    {
        get
        {
            var sides = new Dictionary<(int From, int To), int>(3 * Triangles.Length);
            foreach (var (a, b, c) in Triangles)
            {
                Count(a, b);
                Count(b, c);
                Count(c, a);
            }

            return sides.Count(s => s.Value != 1 || !sides.TryGetValue((s.Key.To, s.Key.From), out var back) || back != 1);

            void Count(int from, int to) => sides[(from, to)] = sides.GetValueOrDefault((from, to)) + 1;
        }
    }

    /// <summary>Triangles two points of which are one place.</summary>
    public int Collapsed => Triangles.Count(t => Points[t.A] == Points[t.B] || Points[t.B] == Points[t.C] || Points[t.C] == Points[t.A]);

    /// <summary>Points less sides plus triangles (Euler): 2 for one solid without holes, 2 less for each hole through it.</summary>
    public int Euler => Points.Length - (3 * Triangles.Length / 2) + Triangles.Length;

    private static (double X, double Y, double Z) Off(MeshPoint p, MeshPoint o) => ((double)p.X - o.X, (double)p.Y - o.Y, (double)p.Z - o.Z);
}
