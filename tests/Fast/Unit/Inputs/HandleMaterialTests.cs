using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests.Handles;

/// <summary>The handle materials that come with the program, and what the file of one may say.</summary>
public class HandleMaterialTests
{
    private const string Whole = """
        tangwright = 1
        name = "pear"
        other_names = ["pear wood"]
        kind = "wood"
        dust = ["wood"]
        [density]
        value = "0.70 g/cm3"
        source = "from memory"
        [tangential]
        value = 0.003
        source = "wood-handbook-13-5"
        """;

    private static HandleMaterial One(string name) => HandleList.BuiltIn.Find(name) ?? throw new InvalidOperationException(name);

    public static TheoryData<string> Names() => [.. HandleList.BuiltIn.All.Select(m => m.Name)];

    /// <summary>Wood Handbook FPL-GTR-190, table 13-5, and the flooring pages that print the 1987 table.</summary>
    [Theory]
    [InlineData("walnut", 0.00274, 0.00190)]
    [InlineData("hickory", 0.00411, 0.00259)]
    [InlineData("white ash", 0.00274, 0.00169)]
    [InlineData("American beech", 0.00431, 0.00190)]
    [InlineData("yellow birch", 0.00338, 0.00256)]
    [InlineData("black cherry", 0.00248, 0.00126)]
    [InlineData("hard maple", 0.00353, 0.00165)]
    [InlineData("red oak", 0.00369, 0.00158)]
    [InlineData("white oak", 0.00365, 0.00180)]
    [InlineData("black locust", 0.00252, 0.00158)]
    [InlineData("pecan", 0.00315, 0.00169)]
    [InlineData("mesquite", 0.00129, null)]
    [InlineData("jarrah", 0.00396, null)]
    public void Movement_is_the_printed_one(string name, double tangential, double? radial)
    {
        var movement = One(name).Movement!;
        Assert.Equal(tangential, movement.TangentialPerPercent!.Value);
        Assert.Equal(radial, movement.RadialPerPercent?.Value);
    }

    /// <summary>Charts of the NEMA grades and usual handbook densities, g/cm³.</summary>
    [Theory]
    [InlineData("G10", 1.80)]
    [InlineData("FR4", 1.85)]
    [InlineData("NEMA CE", 1.35)]
    [InlineData("NEMA LE", 1.34)]
    [InlineData("NEMA XX", 1.34)]
    [InlineData("brass", 8.50)]
    [InlineData("C260", 8.53)]
    [InlineData("nickel silver", 8.73)]
    [InlineData("Ti-6Al-4V", 4.43)]
    [InlineData("black walnut", 0.616)]
    [InlineData("hickory", 0.806)]
    public void Densities_are_the_printed_ones(string name, double gramsPerCm3) => Assert.Equal(gramsPerCm3, One(name).Density!.Value.GramsPerCm3, 6);

    /// <summary>Whatever a grade is called on a sheet or in a shop finds the same file.</summary>
    [Theory]
    [InlineData("g-10", "glass and epoxy laminate, NEMA G10")]
    [InlineData("BRASS", "brass C360")]
    [InlineData("stag", "antler")]
    public void Other_names_find_it(string name, string file) => Assert.Equal(file, One(name).Name);

    [Fact]
    public void Names_are_used_once()
    {
        var names = HandleList.BuiltIn.All.SelectMany(m => m.OtherNames.Add(m.Name)).Select(n => n.ToLowerInvariant()).ToArray();
        Assert.Equal(names.Distinct(), names);
    }

    /// <summary>Every material can be weighed, and every value says where it is from: a listed source or one of the two tags.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Every_value_has_its_source(string name)
    {
        var m = One(name);
        string?[] sources =
        [
            m.Density?.SourceKey, m.SpecificGravity?.SourceKey, m.Stiffness?.SourceKey, m.ExpansionMillionthsPerK?.SourceKey, m.ShearMPa?.SourceKey, m.WaterPercent?.SourceKey,
            m.Drilling?.SourceKey, m.CordDiameter?.SourceKey, m.GramsPerMetre?.SourceKey, m.Movement?.TangentialPerPercent?.SourceKey, m.Movement?.RadialPerPercent?.SourceKey,
        ];
        var given = sources.OfType<string>().ToArray();
        Assert.NotEmpty(given);
        Assert.All(given, k => Assert.True(k is SourceTag.FromMemory or SourceTag.CommonPractice || SourceList.BuiltIn.Find(k) is not null, k));
        Assert.True(m.Kind == HandleKind.Cord ? m.GramsPerMetre is not null && m.CordDiameter is not null : m.Density is not null);
        Assert.True(m.Kind == HandleKind.Cord || (m.Dust.Length > 0 && m.DustLimits.Length == m.Dust.Length && m.Cautions.Length > 0));
    }

    /// <summary>In the text of each file every heading that gives a value gives a source under it, so that none can come without.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void A_file_without_one_of_its_sources_is_refused(string name)
    {
        var text = System.IO.Directory.EnumerateFiles(Repository.Path("data", "handles"), "*.toml").Select(System.IO.File.ReadAllText).Single(t => t.Contains($"\nname = \"{name}\"\n", StringComparison.Ordinal));
        var lines = text.Split('\n');
        var sources = Enumerable.Range(0, lines.Length).Where(i => lines[i].StartsWith("source = ", StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(sources);
        Assert.Equal(lines.Count(l => l.StartsWith('[')), sources.Length);
        Assert.All(sources, at =>
        {
            Assert.Contains(HandleReader.Read(string.Join('\n', lines.Where((_, i) => i != at)), name).Faults, f => f.Message.Contains("has no source", StringComparison.Ordinal));
            Assert.Contains(HandleReader.Read(string.Join('\n', lines.Select((l, i) => i == at ? "source = \"a friend\"" : l)), name).Faults, f => f.Message.Contains("no known source", StringComparison.Ordinal));
        });
    }

    /// <summary>Bands of weight: 3 % metals and laminates, 8 % woods and the rest, its own where the file says so.</summary>
    [Theory]
    [InlineData("brass", 0.03)]
    [InlineData("G10", 0.03)]
    [InlineData("walnut", 0.08)]
    [InlineData("antler", 0.09)]
    [InlineData("stabilised wood", 0.15)]
    public void Bands(string name, double share)
    {
        var m = One(name);
        Assert.Equal(share, m.DensityBandShare, 9);
        Assert.Equal(2 * share * m.Density!.Value.GramsPerCm3, m.GreatestDensity!.Value.GramsPerCm3 - m.LeastDensity!.Value.GramsPerCm3, 9);
    }

    /// <summary>What can hurt is said: lead, nickel, glass, hot phenol, nose cancer, oily woods, bone, carbon, burning chips.</summary>
    [Theory]
    [InlineData("brass C360", "lead", "lead")]
    [InlineData("nickel silver", "Nickel", "nickel")]
    [InlineData("G10", "Glass", "glass")]
    [InlineData("NEMA CE", "formaldehyde", "formaldehyde")]
    [InlineData("white oak", "cancer", "wood")]
    [InlineData("American beech", "cancer", "wood")]
    [InlineData("teak", "solvent", "wood")]
    [InlineData("cocobolo", "solvent", "wood")]
    [InlineData("bone", "P100", "nuisance")]
    [InlineData("horn", "cracks with heat", "nuisance")]
    [InlineData("carbon fibre", "conducts electricity", "nuisance")]
    [InlineData("titanium", "steel sparks", "nuisance")]
    [InlineData("6061-T6", "steel sparks", "aluminium")]
    public void Cautions_are_there(string name, string says, string dust)
    {
        Assert.Contains(One(name).Cautions, c => c.Contains(says, StringComparison.Ordinal));
        Assert.Contains(dust, One(name).Dust);
    }

    /// <summary>OSHA and NIOSH on wood dust (NIOSH Pocket Guide), as said on a sheet; every source of the table is listed.</summary>
    [Fact]
    public void Limits_of_dust()
    {
        Assert.Equal("wood dust: OSHA 15 total / 5 respirable, NIOSH 1, ACGIH 1 (western red cedar 0.5) mg/m3; " + ExposureLimit.Find("wood")!.Note + "; your local rules come first", ExposureLimit.Find("wood")!.Line);
        Assert.Equal(ExposureLimit.All.Length, ExposureLimit.All.Select(l => l.Key).Distinct().Count());
        Assert.All(ExposureLimit.All.SelectMany(l => new[] { l.Osha, l.Niosh, l.Acgih }), s => Assert.True(s.SourceKey is SourceTag.FromMemory || SourceList.BuiltIn.Find(s.SourceKey) is not null, s.SourceKey));
        Assert.All(ExposureLimit.All, l => Assert.True(l.Osha.Words.Length + l.Niosh.Words.Length + l.Acgih.Words.Length > 0));
    }

    [Fact]
    public void A_file_is_read()
    {
        var pear = HandleReader.Read(Whole, "x.toml").Value;
        Assert.Equal((HandleKind.Wood, 0.70, 0.003), (pear.Kind, pear.Density!.Value.GramsPerCm3, pear.Movement!.TangentialPerPercent!.Value));
        Assert.Equal("wood-handbook-13-5", pear.Movement.TangentialPerPercent.SourceKey);
        Assert.Null(pear.Movement.RadialPerPercent);
        Assert.True(pear.IsCalled(" Pear Wood "));
    }

    [Theory]
    [InlineData("[density]", "[densty]", "is not known")]
    [InlineData("value = 0.003", "valeu = 0.003", "is not known")]
    [InlineData("value = 0.003", "value = 0.3", "outside")]
    [InlineData("value = 0.003", "value = 0", "not above 0")]
    [InlineData("\"0.70 g/cm3\"", "\"0.70\"", "without its unit")]
    [InlineData("kind = \"wood\"", "kind = \"stone\"", "not known")]
    [InlineData("kind = \"wood\"", "kind = \"metal\"", "no wood")]
    [InlineData("dust = [\"wood\"]", "dust = [\"wod\"]", "no dust with a limit")]
    [InlineData("tangwright = 1", "tangwright = 2", "another form")]
    [InlineData("[tangential]", "[diameter]", "no cord")]
    public void A_wrong_one_is_refused_with_the_reason(string was, string becomes, string says)
    {
        Assert.Contains(was, Whole, StringComparison.Ordinal);
        var read = HandleReader.Read(Whole.Replace(was, becomes, StringComparison.Ordinal), "x.toml");
        Assert.Contains(read.Faults, f => f.Message.Contains(says, StringComparison.Ordinal));
    }

    /// <summary>3500 psi is 24.13 MPa (international pound and inch); 200 ft/min is 60.96 m/min.</summary>
    [Fact]
    public void Units_of_a_workshop_are_read()
    {
        var m = HandleReader.Read("tangwright = 1\nname = \"x\"\nkind = \"metal\"\n[shear]\nrange = [\"3500 psi\", \"180 MPa\"]\nsource = \"from memory\"\n[drilling]\nrange = [\"200 ft/min\", \"90 m/min\"]\nsource = \"common practice\"\n[stiffness]\nlengthwise = \"1600 ksi\"\nsource = \"from memory\"\n", "x.toml").Value;
        Assert.Equal(24.13, m.ShearMPa!.Value.LowMPa, 2);
        Assert.Equal(60.96, m.Drilling!.Value.Low.MetresPerMin, 6);
        Assert.Equal(11.03, m.Stiffness!.Value.LengthwiseGPa, 2);
        Assert.Null(m.Stiffness.Value.CrosswiseGPa);
    }
}
