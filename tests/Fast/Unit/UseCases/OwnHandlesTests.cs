using Tangwright.UseCases;

namespace Tangwright.Tests.Handles;

/// <summary>Handle materials of the maker's own, in a folder beside the plan.</summary>
public class OwnHandlesTests
{
    private const string Plan = "kitchen-knife.plan.toml";

    [Fact]
    public void A_material_of_ones_own_comes_before_that_of_the_program()
    {
        using var folder = new OwnFolder("tangwright = 1\nname = \"black walnut\"\nkind = \"wood\"\n[density]\nvalue = \"0.58 g/cm3\"\nsource = \"common practice\"\n");
        var known = OpenWork.Of(folder.Plan, null).Value.Shop.KnownHandles;
        Assert.Equal(0.58, known.First(m => m.IsCalled("Black Walnut")).Density!.Value.GramsPerCm3, 9);
        Assert.Contains(known, m => m.IsCalled("G10"));
    }

    [Fact]
    public void A_value_without_its_source_stops_the_work_and_names_the_file()
    {
        using var folder = new OwnFolder("tangwright = 1\nname = \"my wood\"\nkind = \"wood\"\n[density]\nvalue = \"0.58 g/cm3\"\n");
        var faults = OpenWork.Of(folder.Plan, null).Faults;
        Assert.Contains(faults, f => f.File.EndsWith("own.toml", StringComparison.Ordinal) && f.Message.Contains("has no source", StringComparison.Ordinal));
    }

    private sealed class OwnFolder : IDisposable
    {
        private readonly string _folder = System.IO.Directory.CreateTempSubdirectory("handles").FullName;

        public OwnFolder(string material)
        {
            foreach (var file in System.IO.Directory.EnumerateFiles(Repository.Path("examples"), "kitchen-knife.*")) System.IO.File.Copy(file, System.IO.Path.Combine(_folder, System.IO.Path.GetFileName(file)));
            System.IO.File.WriteAllText(System.IO.Path.Combine(System.IO.Directory.CreateDirectory(System.IO.Path.Combine(_folder, "handles")).FullName, "own.toml"), material);
        }

        public string Plan => System.IO.Path.Combine(_folder, OwnHandlesTests.Plan);

        public void Dispose() => System.IO.Directory.Delete(_folder, recursive: true);
    }
}
