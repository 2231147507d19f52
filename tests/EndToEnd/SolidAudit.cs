using System.IO.Compression;
using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;
using System.Xml.Schema;
using Tangwright.Core;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>Our solids read by admesh (Debian), which this project did not write, and our 3MF held against the schema of the 3MF Core Specification.</summary>
public sealed partial class SolidAudit : IDisposable
{
    private readonly Scratch _scratch = new();

    public static TheoryData<string> Blades => [.. OddBlades.Examples, .. OddBlades.Odd.Keys];

    public void Dispose() => _scratch.Dispose();

    [Theory]
    [MemberData(nameof(Blades))]
    public void Another_reader_mends_nothing_and_finds_the_same_volume(string name)
    {
        var results = OddBlades.Of(name);
        var mesh = BladeMesh.Of(results, Stage.Finished).Value;
        var file = _scratch.Path("solid.stl");
        System.IO.File.WriteAllBytes(file, PieceSolid.Bytes(mesh, results.Plan, "stl"));
        var audit = Audited(file);
        Assert.Equal(mesh.Solid.Triangles.Length, audit["Number of facets"]);
        foreach (var what in new[] { "Total disconnected facets", "Degenerate facets", "Edges fixed", "Facets removed", "Facets added", "Facets reversed", "Backwards edges" }) Assert.Equal(0, audit[what]);
        Assert.Equal(1, audit["Number of parts"]);
        Assert.Equal(mesh.Figure.Mm3, audit["Volume"], 1e-3 * mesh.Figure.Mm3);
    }

    [Fact]
    public void The_other_reader_would_notice_a_missing_triangle_and_a_turned_one()
    {
        var results = OddBlades.Example("paring-knife");
        var mesh = BladeMesh.Of(results, Stage.Finished).Value;
        var (solid, first) = (mesh.Solid, mesh.Solid.Triangles[0]);
        var file = _scratch.Path("solid.stl");
        System.IO.File.WriteAllBytes(file, Formats.StlWriter.Write(solid with { Triangles = solid.Triangles.RemoveAt(0) }, ""));
        Assert.Equal(3, Audited(file)["Total disconnected facets"]);
        System.IO.File.WriteAllBytes(file, Formats.StlWriter.Write(solid with { Triangles = solid.Triangles.SetItem(0, new(first.A, first.C, first.B)) }, ""));
        Assert.True(Audited(file)["Facets reversed"] > 0);
    }

    [Fact]
    public void The_verb_writes_what_another_reader_accepts()
    {
        var plan = _scratch.PutExample("skeleton-hatchet");
        var run = ProgramRun.Of(_scratch.Folder, "export", plan, "--to", "stl", "--stage", "before_hardening");
        Assert.Equal(0, run.Exit);
        Assert.Contains("not for use", run.Out, StringComparison.Ordinal);
        var audit = Audited(_scratch.Path("skeleton-hatchet-before-hardening.stl"));
        Assert.Equal(0, audit["Total disconnected facets"]);

        // the volume the verb for figures gives, not the one the solid was made with
        var figures = System.Text.Json.JsonDocument.Parse(ProgramRun.Of(_scratch.Folder, "figures", plan, "--json").Out);
        var stage = figures.RootElement.GetProperty("stages").EnumerateArray().Single(s => s.GetProperty("stage").GetString() == "before_hardening");
        var volume = stage.GetProperty("volume_mm3").GetDouble();
        Assert.Equal(volume, audit["Volume"], 1e-3 * volume);
        Assert.Equal(2, ProgramRun.Of(_scratch.Folder, "export", plan, "--to", "stl", "--stage", "tempered").Exit);
    }

    [Fact]
    public void The_same_plan_gives_the_same_bytes_and_the_heading_names_no_text_format()
    {
        var results = OddBlades.Example("kitchen-knife");
        var (first, again) = (BladeMesh.Of(results, Stage.Finished).Value, BladeMesh.Of(OddBlades.Example("kitchen-knife"), Stage.Finished).Value);
        foreach (var (ending, _) in PieceSolid.Kinds) Assert.Equal(PieceSolid.Bytes(first, results.Plan, ending), PieceSolid.Bytes(again, results.Plan, ending));
        Assert.Equal("Tangwright, mm: Kitchen"u8.ToArray(), PieceSolid.Bytes(first, results.Plan, "stl")[..23]);
    }

    [Theory]
    [InlineData("skeleton-hatchet")]
    [InlineData("kitchen-knife")]
    [InlineData("holes in the bevel")]
    public void A_3mf_is_a_sound_zip_and_its_model_keeps_the_schema(string name)
    {
        var results = OddBlades.Of(name);
        var mesh = BladeMesh.Of(results, Stage.Finished).Value;
        var file = _scratch.Path("solid.3mf");
        System.IO.File.WriteAllBytes(file, PieceSolid.Bytes(mesh, results.Plan with { Name = "Axe <7> & \u0001 ü" }, "3mf"));

        // python's zipfile checks the sums; .NET wrote it
        var zipped = ProgramRun.Other("/usr/bin/python3", _scratch.Folder, "-m", "zipfile", "-t", file);
        Assert.True(zipped.Exit == 0 && zipped.Out.Contains("Done", StringComparison.Ordinal), zipped.Out + zipped.Error);

        using var zip = ZipFile.OpenRead(file);
        Assert.Equal(["[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model"], zip.Entries.Select(e => e.FullName));
        var target = Part("_rels/.rels").Root!.Elements().Single().Attribute("Target")!.Value;
        Assert.Equal("/3D/3dmodel.model", target);
        Assert.Contains(Part("[Content_Types].xml").Root!.Elements(), e => e.Attribute("Extension")!.Value == "model" && e.Attribute("ContentType")!.Value == "application/vnd.ms-package.3dmanufacturing-3dmodel+xml");

        var model = Part("3D/3dmodel.model");
        var schema = new XmlSchemaSet();
        using (var reader = XmlReader.Create(Repository.Path("tests", "fixtures", "solids", "3mf-core-part.xsd"))) schema.Add(null, reader);
        var complaints = new List<string>();
        model.Validate(schema, (_, e) => complaints.Add(e.Message));
        Assert.Empty(complaints);
        Assert.Equal("millimeter", model.Root!.Attribute("unit")!.Value);

        // the volume from the file alone
        var points = model.Descendants().Where(e => e.Name.LocalName == "vertex").Select(e => (X: Number(e, "x"), Y: Number(e, "y"), Z: Number(e, "z"))).ToArray();
        var volume = model.Descendants().Where(e => e.Name.LocalName == "triangle").Sum(e =>
        {
            var (a, b, c) = (points[(int)Number(e, "v1")], points[(int)Number(e, "v2")], points[(int)Number(e, "v3")]);
            return ((a.X * ((b.Y * c.Z) - (b.Z * c.Y))) + (a.Y * ((b.Z * c.X) - (b.X * c.Z))) + (a.Z * ((b.X * c.Y) - (b.Y * c.X)))) / 6;
        });
        Assert.Equal(mesh.Figure.Mm3, volume, 1e-3 * mesh.Figure.Mm3);

        XDocument Part(string part)
        {
            using var s = zip.GetEntry(part)!.Open();
            return XDocument.Load(s);
        }

        static double Number(XElement e, string name) => XmlConvert.ToDouble(e.Attribute(name)!.Value);
    }

    private Dictionary<string, double> Audited(string stl)
    {
        Assert.True(System.IO.File.Exists("/usr/bin/admesh"), "/usr/bin/admesh is not installed: apt-get install admesh");
        var run = ProgramRun.Other("/usr/bin/admesh", _scratch.Folder, stl);
        Assert.True(run.Exit == 0, run.Error);

        // "name : as it came  as mended" or "name : value  name : value"
        return Told().Matches(run.Out).GroupBy(m => m.Groups["name"].Value.Trim()).ToDictionary(g => g.Key, g => double.Parse(g.First().Groups["value"].Value));
    }

    [GeneratedRegex(@"(?<name>[A-Z][A-Za-z0-9 ]+?)\s*:\s+(?<value>-?[\d.]+)")]
    private static partial Regex Told();
}
