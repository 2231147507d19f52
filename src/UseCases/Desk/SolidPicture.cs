using System.Runtime.InteropServices;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A solid as the screen draws it: points with their outward directions, smooth over a face and kinked between faces, and the lines. Little-endian.</summary>
/// <remarks>Three whole numbers (points, triangles, ends of lines); then for each point x y z, for each its direction x y z, for each triangle three numbers of points, for each end of a line x y z; last a byte for each point: the face it belongs to, as <see cref="BladeFace"/> counts them.</remarks>
internal static class SolidPicture
{
    /// <summary>The bytes.</summary>
    public static byte[] Of(BladeMesh mesh)
    {
        var (points, shared) = (new List<(MeshPoint At, double X, double Y, double Z, BladeFace Face)>(), new Dictionary<(int Point, BladeFace Face), List<int>>());
        var corners = new int[3 * mesh.Solid.Triangles.Length];
        for (var t = 0; t < mesh.Solid.Triangles.Length; t++)
        {
            var (a, b, c) = mesh.Solid.Triangles[t];
            var (face, n) = (mesh.Faces[t], Across(mesh.Solid.Points[a], mesh.Solid.Points[b], mesh.Solid.Points[c]));
            (corners[3 * t], corners[(3 * t) + 1], corners[(3 * t) + 2]) = (Put(a), Put(b), Put(c));

            int Put(int point)
            {
                if (!shared.TryGetValue((point, face), out var there)) shared.Add((point, face), there = []);
                foreach (var i in there)
                {
                    var p = points[i];
                    var dot = (p.X * n.X) + (p.Y * n.Y) + (p.Z * n.Z);
                    if (dot < LeastCosine(face) * Size(p.X, p.Y, p.Z) * Size(n.X, n.Y, n.Z)) continue;
                    points[i] = p with { X = p.X + n.X, Y = p.Y + n.Y, Z = p.Z + n.Z };
                    return i;
                }

                there.Add(points.Count);
                points.Add((mesh.Solid.Points[point], n.X, n.Y, n.Z, face));
                return points.Count - 1;
            }
        }

        var numbers = new List<float>((6 * points.Count) + (3 * mesh.Lines.Length));
        foreach (var p in points) numbers.AddRange([p.At.X, p.At.Y, p.At.Z]);
        foreach (var p in points)
        {
            var size = Math.Max(double.Epsilon, Size(p.X, p.Y, p.Z));
            numbers.AddRange([(float)(p.X / size), (float)(p.Y / size), (float)(p.Z / size)]);
        }

        var lines = new List<float>();
        foreach (var end in mesh.Lines) lines.AddRange([mesh.Solid.Points[end].X, mesh.Solid.Points[end].Y, mesh.Solid.Points[end].Z]);
        return
        [
            .. MemoryMarshal.AsBytes<int>(new[] { points.Count, mesh.Solid.Triangles.Length, mesh.Lines.Length }),
            .. MemoryMarshal.AsBytes<float>(numbers.ToArray()),
            .. MemoryMarshal.AsBytes<int>(corners),
            .. MemoryMarshal.AsBytes<float>(lines.ToArray()),
            .. points.Select(p => (byte)p.Face),
        ];
    }

    // walls are drawn round, the ground faces keep their ridges: cosines of 25° and 3°
    private static double LeastCosine(BladeFace face) => face == BladeFace.Wall ? 0.906 : 0.9986;

    private static double Size(double x, double y, double z) => Math.Sqrt((x * x) + (y * y) + (z * z));

    private static (double X, double Y, double Z) Across(MeshPoint a, MeshPoint b, MeshPoint c)
    {
        var (ux, uy, uz) = ((double)b.X - a.X, (double)b.Y - a.Y, (double)b.Z - a.Z);
        var (vx, vy, vz) = ((double)c.X - a.X, (double)c.Y - a.Y, (double)c.Z - a.Z);
        return ((uy * vz) - (uz * vy), (uz * vx) - (ux * vz), (ux * vy) - (uy * vx));
    }
}
