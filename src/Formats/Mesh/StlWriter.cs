using System.Buffers.Binary;
using System.Text;
using Tangwright.Foundation;

namespace Tangwright.Formats;

/// <summary>A solid as binary STL, mm: 80 bytes of heading, the number of triangles, then for each its outward direction, three points and two bytes of nothing, all little-endian (layout from memory).</summary>
public static class StlWriter
{
    private const int HeadingLength = 80;
    private const int TriangleLength = 50;

    /// <summary>The bytes.</summary>
    /// <param name="solid">The solid.</param>
    /// <param name="title">What it is, for the heading.</param>
    public static byte[] Write(TriangleMesh solid, string title)
    {
        var bytes = new byte[HeadingLength + 4 + (TriangleLength * solid.Triangles.Length)];

        // readers take a heading that begins with "solid" for the other kind of STL, so the name of the program stands first
        var heading = $"Tangwright, mm: {title}";
        Encoding.ASCII.GetBytes(new string([.. heading.Take(HeadingLength).Select(c => c is >= ' ' and <= '~' ? c : '?')]), bytes);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(HeadingLength), solid.Triangles.Length);
        var at = HeadingLength + 4;
        foreach (var (a, b, c) in solid.Triangles)
        {
            Put(Outward(solid.Points[a], solid.Points[b], solid.Points[c]));
            Put(solid.Points[a]);
            Put(solid.Points[b]);
            Put(solid.Points[c]);
            at += 2;
        }

        return bytes;

        void Put(MeshPoint p)
        {
            BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(at), p.X);
            BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(at + 4), p.Y);
            BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(at + 8), p.Z);
            at += 12;
        }
    }

    // length 1; nothing for a triangle without area
    private static MeshPoint Outward(MeshPoint a, MeshPoint b, MeshPoint c)
    {
        var (ux, uy, uz) = ((double)b.X - a.X, (double)b.Y - a.Y, (double)b.Z - a.Z);
        var (vx, vy, vz) = ((double)c.X - a.X, (double)c.Y - a.Y, (double)c.Z - a.Z);
        var (x, y, z) = ((uy * vz) - (uz * vy), (uz * vx) - (ux * vz), (ux * vy) - (uy * vx));
        var l = Math.Sqrt((x * x) + (y * y) + (z * z));
        return l > 0 ? new MeshPoint((float)(x / l), (float)(y / l), (float)(z / l)) : default;
    }
}
