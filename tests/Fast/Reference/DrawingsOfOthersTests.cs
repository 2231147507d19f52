using System.Runtime.CompilerServices;
using System.Text.Json;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>Drawings this project did not write: DXF by ezdxf 0.18.1 and by dxflib 3.26, SVG by cairo and matplotlib and by hand, made by the scripts beside them. What must be found in them the scripts worked out on their own (shoelace of dense points, closed forms).</summary>
public class DrawingsOfOthersTests
{
    private static string Folder([CallerFilePath] string here = "") => System.IO.Path.Combine(System.IO.Path.GetDirectoryName(here)!, "..", "..", "fixtures", "drawings");

    public static TheoryData<string, int> Cases()
    {
        var cases = new TheoryData<string, int>();
        foreach (var list in new[] { "expected-ezdxf.json", "expected-dxflib.json", "expected-svg.json" })
        {
            using var json = JsonDocument.Parse(File.ReadAllBytes(System.IO.Path.Combine(Folder(), list)));
            for (var i = 0; i < json.RootElement.GetArrayLength(); i++) cases.Add(list, i);
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_piece_is_found_true_to_size(string list, int index)
    {
        using var json = JsonDocument.Parse(File.ReadAllBytes(System.IO.Path.Combine(Folder(), list)));
        var want = json.RootElement[index];
        var file = want.GetProperty("file").GetString()!;
        LengthUnit? units = want.GetProperty("units").GetString() switch { "mm" => LengthUnit.Mm, "in" => LengthUnit.Inch, _ => null };
        int? loop = want.GetProperty("loop").ValueKind == JsonValueKind.Null ? null : want.GetProperty("loop").GetInt32();
        var read = DrawingReader.Read(File.ReadAllBytes(System.IO.Path.Combine(Folder(), file)), file, new ImportChoice(units, [.. want.GetProperty("layers").EnumerateArray().Select(l => l.GetString()!)], loop));
        if (want.TryGetProperty("fault", out var words))
        {
            var fault = Assert.Single(read.Faults);
            var text = $"{fault.Message} {fault.Remedy}";
            foreach (var w in words.EnumerateArray()) Assert.Contains(w.GetString()!, text, StringComparison.Ordinal);
            return;
        }

        Assert.True(read.IsGood, $"{file}: {string.Join("; ", read.Faults)}");
        var piece = read.Value;
        var said = string.Join("\n", piece.Taken.Concat(piece.LeftOut));
        var place = want.GetProperty("place_tolerance_mm").GetDouble();
        Assert.True(piece.Outline.Closed);
        Assert.Equal(want.GetProperty("area_mm2").GetDouble(), Moments.Of(piece.Outline).AreaMm2, want.GetProperty("area_tolerance_mm2").GetDouble());
        var b = piece.Outline.Bounds;
        double[] box = [.. want.GetProperty("box_mm").EnumerateArray().Select(v => v.GetDouble())];
        foreach (var (w, f) in box.Zip([b.MinX, b.MinY, b.MaxX, b.MaxY])) Assert.Equal(w, f, place);
        var holes = want.GetProperty("holes").EnumerateArray().Select(h => h.EnumerateArray().Select(v => v.GetDouble()).ToArray()).ToArray();
        Assert.True(holes.Length == piece.Holes.Length, $"{file}: {piece.Holes.Length} holes\n{said}");
        foreach (var (w, f) in holes.Zip(piece.Holes))
        {
            Assert.True(f.Centre.To(new Point(w[0], w[1])) <= 2 * place, $"{file}: {f}");
            Assert.Equal(w[2], f.DiameterMm, 2 * place);
        }

        foreach (var w in want.GetProperty("said").EnumerateArray()) Assert.Contains(w.GetString()!, said, StringComparison.Ordinal);
        if (want.GetProperty("kinds").ValueKind == JsonValueKind.Null) return;
        foreach (var kind in want.GetProperty("kinds").EnumerateObject()) Assert.Equal(kind.Value.GetInt32(), piece.Outline.Segments.Count(s => s.GetType().Name == kind.Name));
    }
}
