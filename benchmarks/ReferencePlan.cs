using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Benchmarks;

/// <summary>The plan speed is measured on: 100 cubic Béziers, 40 holes, a bevel with a plunge line. Made here, kept as <c>reference.plan.toml</c>.</summary>
internal static class ReferencePlan
{
    public const double Thickness = 4, BevelHeight = 20, PlungeX = 188;

    /// <summary>The outline: belly in 40, heel in 4, handle below in 8, butt in 4, back in 44 pieces.</summary>
    public static Path Outline { get; } = new(
        [
            .. Pieces(new(new(0, 24), new(20, 4), new(60, 1), new(100, 1)), 20),
            .. Pieces(new(new(100, 1), new(140, 1), new(165, -3), new(200, 0)), 20),
            .. Pieces(new(new(200, 0), new(203, 8), new(199, 16), new(206, 21)), 4),
            .. Pieces(new(new(206, 21), new(240, 18), new(270, 26), new(315, 16)), 8),
            .. Pieces(new(new(315, 16), new(330, 22), new(330, 42), new(315, 47)), 4),
            .. Pieces(new(new(315, 47), new(270, 50), new(245, 45), new(200, 46)), 14),
            .. Pieces(new(new(200, 46), new(130, 47), new(50, 50), new(0, 24)), 30),
        ],
        closed: true);

    public static ImmutableArray<Hole> Holes { get; } =
    [
        .. Enumerable.Range(0, 39).Select(i => Hole($"L{i + 1}", new(212 + (7.5 * (i / 3)), 27.5 + (6 * (i % 3))), 3.5)),
        Hole("H", new(80, 30), 12),
    ];

    public static Plan Plan { get; } = new(
        "Reference",
        "A",
        LengthUnit.Mm,
        Target.None,
        new Stock("80CrV2", Length.OfMm(Thickness), Length.OfMm(60), null, "annealed"),
        Outline,
        Datum.LowerLeft,
        new SharpenedPart(new(0, 24), new(200, 0)),
        new Bevel(Grind.Flat, false, Length.OfMm(BevelHeight), GroundWhen.BeforeHardening, Length.OfMm(0.8), Length.OfMm(0.3), Angle.OfDegrees(15), new PlungeLine(new(PlungeX, 0), new(PlungeX, 10))),
        new Grip(new(215, 33), new(305, 33)),
        null,
        new Layout(DrilledIn.Rectangle, null, null),
        [.. Holes]);

    public static string Text
    {
        get
        {
            var b = new StringBuilder();
            string N(double v) => Math.Round(v, 6).ToString(CultureInfo.InvariantCulture);
            b.Append("# The plan speed is measured on; written by benchmarks/ReferencePlan.cs\n");
            b.Append("tangwright = 1\nname = \"Reference\"\nrevision = \"A\"\nunits = \"mm\"\n\n[stock]\nsteel = \"80CrV2\"\nthickness = 4\nwidth = 60\ncondition = \"annealed\"\n\n[outline]\npath = \"\"\"\n");
            b.Append($"M {N(Outline.Start.X)} {N(Outline.Start.Y)}\n");
            foreach (var s in Outline.Segments.Cast<Bezier>()) b.Append($"C {N(s.Control1.X)} {N(s.Control1.Y)} {N(s.Control2.X)} {N(s.Control2.Y)} {N(s.End.X)} {N(s.End.Y)}\n");
            b.Append("Z\"\"\"\n\n[edge]\nfrom = [0, 24]\nto = [200, 0]\n\n[bevel]\ngrind = \"flat\"\nheight = 20\nground = \"before\"\nedge_before_hardening = 0.8\nedge_finished = 0.3\nsharpen_per_side = 15\nplunge = 188\n\n[grip]\nfrom = [215, 33]\nto = [305, 33]\n");
            foreach (var h in Holes) b.Append($"\n[[hole]]\nname = \"{h.Name}\"\nat = [{N(h.At.X)}, {N(h.At.Y)}]\ndiameter = {N(h.Diameter.Mm)}\nuse = \"lightening\"\n");
            return b.ToString();
        }
    }

    private static Hole Hole(string name, Point at, double d) => new(name, at, Length.OfMm(d), "", HoleUse.Lightening, HoleMake.Drill);

    private static IEnumerable<Segment> Pieces(Bezier b, int n) => Enumerable.Range(0, n).Select(i => b.Part((double)i / n, (i + 1.0) / n));
}
