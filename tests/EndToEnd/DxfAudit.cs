using System.Diagnostics;
using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>Our DXF opened and audited by ezdxf (Debian's python3-ezdxf), a reader this project did not write.</summary>
public class DxfAudit
{
    private const string Script = """
        import sys, math
        try:
            import ezdxf
        except ImportError:
            print("python3-ezdxf is not installed: apt-get install python3-ezdxf")
            sys.exit(3)
        from ezdxf import recover
        doc = ezdxf.readfile(sys.argv[1])
        audit = doc.audit()
        doc2, audit2 = recover.readfile(sys.argv[1])
        print("version", doc.dxfversion)
        print("units", doc.header["$INSUNITS"])
        print("errors", len(audit.errors) + len(audit2.errors))
        print("fixes", len(audit.fixes) + len(audit2.fixes))
        for e in audit.errors + audit.fixes + audit2.errors + audit2.fixes:
            print("what", e.message)
        print("layers", ",".join(sorted(l.dxf.name for l in doc.layers)))
        kinds = {}
        for e in doc.modelspace():
            kinds[e.dxftype()] = kinds.get(e.dxftype(), 0) + 1
        print("kinds", ",".join(f"{k}:{v}" for k, v in sorted(kinds.items())))
        # area inside the outline by ezdxf's own points, ends joined by nearness
        runs = []
        for e in doc.modelspace().query('*[layer=="OUTLINE"]'):
            t = e.dxftype()
            if t == "LINE":
                pts = [e.dxf.start, e.dxf.end]
            elif t == "ARC":
                n = 4000
                a0, a1 = e.dxf.start_angle, e.dxf.end_angle
                if a1 <= a0:
                    a1 += 360
                pts = list(e.vertices([a0 + (a1 - a0) * i / n for i in range(n + 1)]))
            elif t == "ELLIPSE":
                n = 4000
                a0, a1 = e.dxf.start_param, e.dxf.end_param
                if a1 <= a0:
                    a1 += 2 * math.pi
                pts = list(e.vertices([a0 + (a1 - a0) * i / n for i in range(n + 1)]))
            else:
                c = e.construction_tool()
                pts = [c.point(i / 4000 * c.max_t) for i in range(4001)]
            runs.append([(p[0], p[1]) for p in pts])
        path = runs.pop(0)
        gap = 0
        while runs:
            end = path[-1]
            d, i, flip = min((math.dist(end, r[k]), i, k == -1) for i, r in enumerate(runs) for k in (0, -1))
            gap = max(gap, d)
            r = runs.pop(i)
            path += r[::-1] if flip else r
        gap = max(gap, math.dist(path[0], path[-1]))
        s = sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(path, path[1:] + path[:1])) / 2
        print("gap", gap)
        print("area", abs(s))
        """;

    private static Dictionary<string, string> Audited(FlatDrawing drawing)
    {
        var folder = Directory.CreateTempSubdirectory("tangwright-audit-");
        try
        {
            var dxf = System.IO.Path.Combine(folder.FullName, "a.dxf");
            var script = System.IO.Path.Combine(folder.FullName, "a.py");
            File.WriteAllText(dxf, DxfWriter.Write(drawing));
            File.WriteAllText(script, Script);
            Assert.True(File.Exists("/usr/bin/python3"), "/usr/bin/python3 is not installed: apt-get install python3 python3-ezdxf");
            using var p = Process.Start(new ProcessStartInfo("/usr/bin/python3", [script, dxf]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
            var errors = p.StandardError.ReadToEndAsync();
            var said = p.StandardOutput.ReadToEnd();
            p.WaitForExit();
            Assert.True(p.ExitCode == 0, said + errors.Result);
            return said.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.Split(' ', 2)).GroupBy(l => l[0]).ToDictionary(g => g.Key, g => string.Join("; ", g.Select(l => l[1])));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static Foundation.Path EveryKind()
    {
        var b = new List<Segment> { new Line(new Point(0, 0), new Point(120, 0)) };
        void To(Func<Point, Segment> make) => b.Add(make(b[^1].End));
        To(p => Arc.Through(p, new Point(120, 30), 15.5, large: true, counterClockwise: true));
        To(p => new Line(p, new Point(100, 30)));
        To(p => Arc.Through(p, new Point(90, 40), 10, large: false, counterClockwise: false));
        To(p => new Bezier(p, new Point(85, 50), new Point(70, 35), new Point(60, 42)));
        To(p => Arc.Through(p, new Point(40, 42), Point.Direction(0.4) * 14, Point.Direction(0.4).Left * 9, large: false, counterClockwise: true));
        To(p => Arc.Through(p, new Point(20, 45), new Point(13, 2), new Point(4, 8), large: false, counterClockwise: false));
        To(p => new Line(p, default));
        return new Foundation.Path([.. b], closed: true);
    }

    [Fact]
    public void Every_kind_of_segment_and_holes_pass_without_errors_or_fixes()
    {
        foreach (var outline in new[] { EveryKind(), EveryKind().Transformed(Transform.Turn(2.5).Then(Transform.Scale(-1.3, 1.3))), Foundation.Path.Circle(new Point(-40, 7), 30), Foundation.Path.Polygon(new(0, 0), new(100, 0), new(90, 30)) })
        {
            var drawing = new FlatDrawing("Hatchet <7> ü\n0\nEOF", [new("OUTLINE", outline), new("EDGE", outline.Between(new PathSpot(0, 0.1), new PathSpot(1, 0.9)))], [new("HOLES", "L1", new Point(50, 15), 6), new("a/b*ü", "", new Point(60, 15), 6.35)]);
            var audit = Audited(drawing);
            Assert.Equal("AC1015", audit["version"]);
            Assert.Equal("4", audit["units"]);
            Assert.True(audit["errors"] == "0" && audit["fixes"] == "0", audit.GetValueOrDefault("what", "no word"));
            Assert.Contains("OUTLINE", audit["layers"], StringComparison.Ordinal);
            Assert.Contains("CIRCLE:2", audit["kinds"], StringComparison.Ordinal);
            Assert.True(double.Parse(audit["gap"]) < 1e-9, "gap " + audit["gap"]);
            Assert.Equal(Math.Abs(Moments.Of(outline).AreaMm2), double.Parse(audit["area"]), 1e-3);
        }
    }

    [Fact]
    public void An_empty_drawing_is_still_sound()
    {
        var audit = Audited(new FlatDrawing("", [new("OUTLINE", Foundation.Path.Circle(default, 1))], []));
        Assert.Equal("0", audit["errors"]);
        Assert.Equal("0", audit["fixes"]);
    }
}
