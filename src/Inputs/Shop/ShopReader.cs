using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads a shop file. What the file leaves out comes from another shop, the built-in one unless given.</summary>
public static partial class ShopReader
{
    private const int MostItems = 200;
    private static readonly Lazy<Shop> BuiltInShop = new(ReadBuiltIn);

    /// <summary>The shop that is assumed when the maker has no file: data/shop.toml.</summary>
    public static Shop BuiltIn => BuiltInShop.Value;

    /// <summary>The text of the built-in shop.</summary>
    public static string BuiltInText => DataText.Of("shop.toml");

    /// <summary>The shop, or every fault found. Any text gives one or the other.</summary>
    /// <param name="text">The whole text of the file.</param>
    /// <param name="fileName">Name of the file, for the faults.</param>
    /// <param name="rest">Where what the file leaves out comes from; null: the built-in shop.</param>
    public static Checked<Shop> Read(string text, string fileName, Shop? rest = null)
    {
        var source = new SourceText(text, fileName);
        return TomlReading.Read(source).Then(root => Read(root, source, () => rest ?? BuiltIn));
    }

    /// <summary>The shop with its text, ready to be changed, or every fault found.</summary>
    /// <param name="text">The whole text of the file.</param>
    /// <param name="fileName">Name of the file, for the faults.</param>
    public static Checked<ShopFile> ReadFile(string text, string fileName)
    {
        var source = new SourceText(text, fileName);
        return TomlReading.Read(source).Then(root => Read(root, source, () => BuiltIn).Then(shop => Checked<ShopFile>.Good(new ShopFile(shop, fileName, text, source, root))));
    }

    private static Shop ReadBuiltIn()
    {
        var nothing = new Shop("", true, UnitsShown.Both, [], [], [], [], [], null, null, null, [], Length.Zero, Length.Zero);
        return Read(BuiltInText, "data/shop.toml", nothing).Value with { IsAssumed = true };
    }

    private static Checked<Shop> Read(TomlTable root, SourceText source, Func<Shop> rest)
    {
        var faults = new List<Fault>();
        ShopKeys.Table.Check(root, source, faults);
        var top = new Fields(source, root, "", ShopKeys.Table, 1, faults);
        var version = top.Number("tangwright", 0, 1e9);
        if (version is not (null or 1)) top.Fault("tangwright", "a shop file of another form", "this program reads tangwright = 1; use a newer program for newer files");
        var unitMm = top.Word("units") == 1 ? Length.MmPerInch : 1;
        Fields One(string heading) => new(source, root.Find(heading)?.Value as TomlTable, heading, ShopKeys.Table, unitMm, faults);
        ImmutableArray<T>? Many<T>(string heading, Func<Fields, T?> read)
            where T : class
            => ReadMany(root, source, heading, faults, t => read(new Fields(source, t, heading, ShopKeys.Table, unitMm, faults)));

        var name = top.Text("name");
        var show = top.Word("show");
        var tooling = One("tooling");
        var drills = ReadSizes(tooling, "drills", unitMm);
        var reamers = ReadSizes(tooling, "reamers", unitMm);
        var machines = Many("machine", ReadMachine);
        var grind = ReadGrind(tooling);
        var spots = Many("spot_drill", f => ReadPointed(f));
        var sinks = Many("countersink", f => ReadPointed(f));
        var mills = Many("end_mill", ReadEndMill);
        var clamps = Many("clamp", ReadClamp);
        var placings = Many("placing", ReadPlacing);
        var saws = Many("saw", ReadSaw);
        var wheels = Many("wheel", ReadWheel);
        var belts = Many("belt", ReadBelt);
        var grinder = One("grinder");
        var grinderPower = grinder.Number("power_w", 1, 100_000);
        var beltWidth = grinder.Length("belt_width");
        var beltSpeeds = grinder.Quantity("belt_speed", BeltSpeedText.Read);
        var papers = ReadPapers(One("papers"));
        var printers = Many("printer", ReadPrinter);
        var (oven, temperOven) = (One("oven"), One("temper_oven"));
        var (hardening, tempering) = (ReadOven(oven, hardens: true), ReadOven(temperOven, hardens: false));
        var testing = One("hardness_tester");
        var tester = ReadTester(testing);
        var quench = One("quenchant");
        var quenchant = ReadQuenchant(quench);
        var allowances = One("allowances");
        var (end, edge) = (allowances.Length("end", positive: false), allowances.Length("edge", positive: false));
        if (end is { Mm: < 0 }) allowances.Fault("end", "an allowance below 0", "write how much steel is left, or 0");
        if (edge is { Mm: < 0 }) allowances.Fault("edge", "an allowance below 0", "write how much steel is left, or 0");
        var barEdge = allowances.Length("bar_edge", positive: false);
        if (barEdge is { Mm: < 0 }) allowances.Fault("bar_edge", "an allowance below 0", "write how much steel is left, or 0");
        var (rough, profile) = (allowances.Length("rough", positive: false), allowances.Length("profile", positive: false));
        if (rough is { Mm: < 0 }) allowances.Fault("rough", "an allowance below 0", "write how much steel is left, or 0");
        if (profile is { Mm: < 0 }) allowances.Fault("profile", "an allowance below 0", "write how far the width may be off, or 0");
        var (gluing, air) = (ReadGluing(One("gluing")), HandleReading.Air(One("air")));
        var rack = Many("rack", ReadRack);
        var bars = Many("bar", ReadBar);
        var money = top.Text("money");
        var starts = One("starts");
        var (yield, chance) = (starts.Number("yield", GoodPieces.LeastYieldShare, 1), starts.Number("chance", 0.01, 0.9999));
        if (faults.Count > 0) return Checked<Shop>.Bad(faults.OrderBy(f => f.Line).ThenBy(f => f.Column).DistinctBy(f => (f.Line, f.Column, f.Message)).Take(50));

        var other = rest();
        return Checked<Shop>.Good(new Shop(
            name ?? "own shop",
            IsAssumed: false,
            show switch { 0 => UnitsShown.Mm, 1 => UnitsShown.Inch, 2 => UnitsShown.Both, _ => other.Show },
            machines ?? other.Machines,
            drills ?? other.Drills,
            reamers ?? other.Reamers,
            saws ?? other.Saws,
            wheels is { } w ? [.. w.OrderBy(x => x.Diameter.Mm)] : other.Wheels,
            oven.IsThere ? hardening : other.Oven,
            temperOven.IsThere ? tempering : oven.IsThere ? null : other.TemperOven,
            quench.IsThere ? quenchant : other.Quenchant,
            printers is { IsEmpty: false } p ? p : other.Printers,
            end ?? other.EndAllowance,
            edge ?? other.EdgeMargin)
        {
            KnownMedia = QuenchList.BuiltIn.All,
            KnownHandles = HandleList.BuiltIn.All,
            Air = air ?? other.Air,
            Gluing = gluing ?? other.Gluing,
            DrillGrind = grind ?? (drills is null ? other.DrillGrind : DrillGrind.Usual),
            SpotDrills = spots is { } sp ? [.. sp.OrderBy(x => x.Diameter.Mm)] : other.SpotDrills,
            Countersinks = sinks is { } cs ? [.. cs.OrderBy(x => x.Diameter.Mm)] : other.Countersinks,
            EndMills = mills is { } em ? [.. em.OrderBy(x => x.Diameter.Mm)] : other.EndMills,
            Clamps = clamps ?? other.Clamps,
            SawsAreAssumed = saws is null,
            BeltsAreAssumed = belts is null,
            Rack = rack ?? other.Rack,
            Bars = bars ?? other.Bars,
            Money = money ?? other.Money,
            BarEdge = barEdge ?? other.BarEdge,
            RoughAllowance = rough ?? other.RoughAllowance,
            ProfileTolerance = profile ?? other.ProfileTolerance,
            Belts = belts is { } bl ? [.. bl.OrderBy(x => x.Grit)] : other.Belts,
            GrinderPowerW = grinderPower ?? other.GrinderPowerW,
            BeltWidth = beltWidth ?? other.BeltWidth,
            BeltSpeeds = beltSpeeds ?? other.BeltSpeeds,
            Papers = papers ?? other.Papers,
            YieldShare = yield ?? other.YieldShare,
            ChanceShare = chance ?? other.ChanceShare,
            HardnessTester = testing.IsThere ? tester : other.HardnessTester,
            Placings = [.. placings ?? [], .. other.Placings.Select(x => x with { IsOwn = false })],
        });
    }

    private static ImmutableArray<T>? ReadMany<T>(TomlTable root, SourceText source, string heading, List<Fault> faults, Func<TomlTable, T?> read)
        where T : class
    {
        switch (root.Find(heading)?.Value)
        {
            case TomlTables many when many.Items.Count > MostItems:
                faults.Add(source.Fault(many.Items[MostItems].Offset, $"more than {MostItems} of [[{heading}]]", "leave some out"));
                return [];
            case TomlTables many:
                return [.. many.Items.Select(read).OfType<T>()];
            case TomlList { Items.Count: 0 }:
                return [];
            default:
                return null;
        }
    }

    private static ImmutableArray<Grit>? ReadPapers(Fields f)
    {
        if (f.Node("grits") is TomlList { Items.Count: 0 }) return [];
        if (f.Texts("grits", MostItems) is not { } items) return null;
        var grits = new List<Grit>();
        foreach (var (text, offset) in items)
        {
            var read = GritText.Read(text);
            if (read.IsGood) grits.Add(read.Value);
            else f.FaultAt(offset, $"grits: {read.Message}", read.Remedy);
        }

        return [.. grits.Distinct().OrderByDescending(g => GritScale.Micron(g))];
    }

    private static ImmutableArray<DrillSize>? ReadSizes(Fields f, string key, double unitMm)
    {
        if (f.Node(key) is TomlList { Items.Count: 0 }) return [];
        if (f.Texts(key, MostItems) is not { } items) return null;
        var sizes = new List<DrillSize>();
        foreach (var (text, offset) in items)
        {
            var read = DrillList.Read(text, unitMm);
            if (read.IsGood) sizes.AddRange(read.Value);
            else f.FaultAt(offset, $"{key}: {read.Message}", read.Remedy);
        }

        return DrillList.Sorted(sizes);
    }

    private static Machine? ReadMachine(Fields f)
    {
        var (name, kind) = (f.Text("name"), f.Word("kind"));
        var (speeds, stepless) = ReadSpeeds(f);
        var (chuck, throat) = (f.Length("chuck"), f.Length("throat"));
        var travel = f.Point("travel");
        if (travel is { } t && !(t.X > 0 && t.Y > 0)) f.Fault("travel", "a travel that is not above 0", "write the travel along and across, as [300, 200]");
        var power = f.Number("power_w", 1, 100_000);
        var readout = f.Flag("readout") ?? false;
        var table = f.Point("table");
        if (table is { } tb && !(tb.X > 0 && tb.Y > 0)) f.Fault("table", "a table that is not above 0", "write its size along and across, as [200, 200]");
        var (vise, travelZ, backlash) = (f.Length("vise_opens"), f.Length("travel_z"), f.Length("backlash", positive: false));
        if (backlash is { Mm: < 0 }) f.Fault("backlash", "a play below 0", "write the play of the screws, or 0");
        var thrust = f.Quantity("most_thrust", OtherTexts.Newtons);
        var (efficiency, change, rapid) = (f.Number("efficiency", 0.05, 1), f.Number("tool_change_s", 0, 3600), f.Number("rapid_mm_per_min", 1, 200_000));
        var ways = ReadWays(f);
        if (name is null || kind < 0 || speeds.IsEmpty) return null;
        return new Machine(name, (MachineKind)kind, speeds, stepless, chuck, throat, travel is { } x ? Length.OfMm(x.X) : null, travel is { } y ? Length.OfMm(y.Y) : null, power, readout)
        {
            Table = table is { } b ? (Length.OfMm(b.X), Length.OfMm(b.Y)) : null,
            ViseOpens = vise,
            TravelZ = travelZ,
            MostThrust = thrust is { } n ? Force.OfNewtons(n) : null,
            Backlash = backlash,
            EfficiencyShare = efficiency,
            ToolChangeSeconds = change,
            RapidMmPerMin = rapid,
            ProgramWays = ways,
        };
    }

    private static ProgramWays ReadWays(Fields f) => new(
        f.Word("program_units") == 1 ? LengthUnit.Inch : LengthUnit.Mm,
        f.Flag("drill_cycles") ?? true,
        f.Flag("arcs") ?? true,
        f.Flag("helix") ?? true,
        f.Flag("tool_change") ?? true);

    private static DrillGrind? ReadGrind(Fields f)
    {
        var (metal, reach) = (f.Word("drill_metal"), f.Word("drill_reach"));
        var (point, split) = (ReadPoint(f, "drill_point", 60, 150, 118), f.Flag("split_point"));
        return f.Has("drill_metal") || f.Has("drill_reach") || f.Has("drill_point") || f.Has("split_point")
            ? new DrillGrind((DrillMetal)Math.Max(0, metal), point, split ?? false, reach < 0 ? DrillReach.Jobber : (DrillReach)reach)
            : null;
    }

    private static Angle ReadPoint(Fields f, string key, double low, double high, double usual)
    {
        var point = f.Quantity(key, QuantityText.Degrees);
        if (point is { } p && !(p.Degrees >= low && p.Degrees <= high)) f.Fault(key, $"{key} is not between {low} and {high} degrees", $"write the angle of both sides together, as {usual}");
        return point ?? Angle.OfDegrees(usual);
    }

    private static PointedTool? ReadPointed(Fields f)
    {
        var (name, diameter, point) = (f.Text("name"), f.Length("diameter"), ReadPoint(f, "point", 40, 160, 90));
        return name is null || diameter is null ? null : new PointedTool(name, diameter.Value, point);
    }

    private static EndMill? ReadEndMill(Fields f)
    {
        var (name, diameter, flutes) = (f.Text("name"), f.Length("diameter"), f.Whole("flutes", 1, 20));
        var (cuts, carbide, feed) = (f.Length("cutting_length"), f.Flag("carbide"), f.Length("feed_per_tooth"));
        return name is null || diameter is null ? null : new EndMill(name, diameter.Value, flutes ?? 3, cuts, carbide ?? true, feed);
    }

    private static Clamp? ReadClamp(Fields f)
    {
        var (name, size, height) = (f.Text("name"), f.Point("size"), f.Length("height"));
        if (size is { } s && !(s.X > 0 && s.Y > 0)) f.Fault("size", "a size that is not above 0", "write along the edge and onto the stock, as [25, 20]");
        return name is null || size is not { } b || height is null ? null : new Clamp(name, Length.OfMm(b.X), Length.OfMm(b.Y), height.Value);
    }

    private static PlacingCapability? ReadPlacing(Fields f)
    {
        var (way, machine, zone) = (f.Word("way"), f.Text("machine"), f.Length("zone"));
        var (sigma, holes) = (f.Length("measured_sigma"), f.Whole("measured_holes", 1, 1_000_000));
        return way < 0 || zone is null ? null : new PlacingCapability((PlacingWay)way, machine ?? "", zone.Value, sigma, holes ?? 0, true);
    }

    [GeneratedRegex(@"^\s*(?<low>\d{1,6}(\.\d{1,3})?)\s+to\s+(?<high>\d{1,6}(\.\d{1,3})?)\s*$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex SpeedRange();

    private static (ImmutableArray<double> Speeds, bool Stepless) ReadSpeeds(Fields f)
    {
        const string remedy = "write each step, as [500, 900, 1500], or \"100 to 3000\" when any speed between can be set";
        switch (f.Node("speeds_rpm"))
        {
            case null:
                return ([], false);
            case TomlList { Items.Count: > 0 and <= 100 } list when list.Items.All(i => i is TomlNumber { Value: > 0 and <= 200_000 }):
                return ([.. list.Items.Cast<TomlNumber>().Select(n => n.Value).Distinct().Order()], false);
            case TomlText { Value: var v } when v.Length < 40 && SpeedRange().Match(v) is { Success: true } m:
                var (low, high) = (double.Parse(m.Groups["low"].ValueSpan), double.Parse(m.Groups["high"].ValueSpan));
                if (low > 0 && high > low && high <= 200_000) return ([low, high], true);
                f.Fault("speeds_rpm", "a range of speeds that does not rise from above 0 to at most 200000", remedy);
                return ([], false);
            default:
                f.Fault("speeds_rpm", "speeds_rpm is no list of speeds above 0", remedy);
                return ([], false);
        }
    }

    private static RackBar? ReadRack(Fields f)
    {
        var (name, steel) = (f.Text("name"), f.Text("steel"));
        var (thickness, width, length) = (f.Length("thickness"), f.Length("width"), f.Length("length"));
        return name is null || steel is null || thickness is null || width is null || length is null ? null : new RackBar(name, steel, thickness.Value, width.Value, length.Value);
    }

    private static PricedBar? ReadBar(Fields f)
    {
        var steel = f.Text("steel");
        var (thickness, width, length) = (f.Length("thickness"), f.Length("width"), f.Length("length"));
        var (price, perKg) = (f.Number("price", 0.001, 1e6), f.Number("price_per_kg", 0.001, 1e5));
        if (price is not null && perKg is not null) f.Fault("price_per_kg", "a price for the bar and one for the kilogram", "write one of the two");
        return steel is null || thickness is null || width is null || length is null ? null : new PricedBar(steel, thickness.Value, width.Value, length.Value, (decimal?)price, (decimal?)perKg);
    }

    private static Saw? ReadSaw(Fields f)
    {
        var (name, kerf, throat, kind) = (f.Text("name"), f.Length("kerf"), f.Length("throat"), f.Word("kind"));
        var (longest, wander, disc) = (f.Length("longest_cut"), f.Length("wander", positive: false), f.Length("disc_diameter"));
        var (rate, setUp) = (f.Number("rate_cm2_per_min", 0.01, 10_000), f.Number("set_up_min", 0, 600));
        if (wander is { Mm: < 0 }) f.Fault("wander", "a wander below 0", "write how far the cut strays, both sides together, or 0");
        var angle = f.Quantity("most_angle", QuantityText.Degrees);
        if (angle is { Degrees: not (>= 0 and <= 90) }) f.Fault("most_angle", "most_angle is not between 0 and 90 degrees", "write 0 when the saw cuts square only, 45 with a mitre vise, 90 for any angle");
        var teeth = ReadTeeth(f);
        if (name is null || kerf is null) return null;
        return new Saw(name, kerf.Value, throat)
        {
            Kind = (SawKind)Math.Max(0, kind),
            LongestCut = longest,
            MostAngle = angle,
            Wander = wander,
            RateCm2PerMin = rate,
            SetUpMinutes = setUp,
            TeethPerInch = teeth,
            DiscDiameter = disc,
        };
    }

    private static ImmutableArray<double> ReadTeeth(Fields f)
    {
        switch (f.Node("teeth_per_inch"))
        {
            case null:
                return [];
            case TomlNumber { Value: >= 1 and <= 100 } one:
                return [one.Value];
            case TomlList { Items.Count: <= 50 } list when list.Items.All(i => i is TomlNumber { Value: >= 1 and <= 100 }):
                return [.. list.Items.Cast<TomlNumber>().Select(n => n.Value).Distinct().Order()];
            default:
                f.Fault("teeth_per_inch", "teeth_per_inch is no list of teeth, 1 to 100", "write the blades you own, as [14, 18, 24]");
                return [];
        }
    }

    private static Belt? ReadBelt(Fields f)
    {
        var (name, rate, life) = (f.Text("name"), f.Number("grams_per_min", 0.01, 10_000), f.Number("grams_per_belt", 1, 1_000_000));
        var marked = f.Node("grit") is TomlText ? f.Quantity("grit", GritText.Read) : null;
        var grit = marked is { } m ? m.Series == GritSeries.FepaP ? m.Number : GritScale.Number(GritSeries.FepaP, GritScale.Micron(m)!.Value) : f.Node("grit") is TomlText ? null : f.Number("grit", 8, 5000);
        if (marked is not null && grit is null) f.Fault("grit", "a grain coarser or finer than any P grade", "write a grit between P12 and P3000");
        return name is null || grit is null ? null : new Belt(name, grit.Value, rate, life) { Marked = marked is { Series: not GritSeries.FepaP } ? marked : null };
    }

    private static Wheel? ReadWheel(Fields f)
    {
        var (name, diameter) = (f.Text("name"), f.Length("diameter"));
        return name is null || diameter is null ? null : new Wheel(name, diameter.Value);
    }

    private static Oven? ReadOven(Fields f, bool hardens)
    {
        var name = f.Text("name");
        var (width, height, depth) = (f.Length("width"), f.Length("height"), f.Length("depth"));
        var high = f.Quantity("reads_high_by", OtherTexts.TemperatureDifferenceC);
        var swing = f.Quantity("swing", OtherTexts.TemperatureDifferenceC);
        if (swing is < 0) f.Fault("swing", "a swing below 0", "write how far it goes to either side, as 8 C");
        var guard = hardens ? f.Word("guard") : -1;
        return name is null || IsNone(name) ? null : new Oven(name, width, height, depth, high) { Guard = guard < 0 ? SkinGuard.None : (SkinGuard)guard, SwingC = swing };
    }

    private static Gluing? ReadGluing(Fields f)
    {
        if (!f.IsThere) return null;
        var (pot, cure, usual) = (f.Quantity("pot_life", OtherTexts.Minutes), f.Quantity("cure", OtherTexts.Minutes), Gluing.Usual);
        if (cure is <= 0) f.Fault("cure", "a cure of nothing", "write the time until the handle may be shaped, as \"24 h\"");
        if (pot is <= 0) f.Fault("pot_life", "a pot life of nothing", "write how long a mixed pot stays workable, as \"60 min\"");
        return new Gluing(
            pot ?? usual.PotLifeMinutes,
            f.Number("minutes_per_piece", 0.1, 600) ?? usual.PieceMinutes,
            f.Whole("clamps", 1, 1000),
            f.Whole("clamps_per_piece", 1, 100) ?? usual.ClampsPerPiece,
            f.Length("line") ?? usual.Line,
            cure is { } c ? c / 60 : usual.CureHours)
        { IsSaid = pot is not null };
    }

    private static HardnessTester? ReadTester(Fields f)
    {
        var name = f.Text("name");
        var high = f.Quantity("reads_high_by", OtherTexts.HardnessDifferenceHrc);
        return name is null || IsNone(name) ? null : new HardnessTester(name, high);
    }

    private static Quenchant? ReadQuenchant(Fields f)
    {
        var name = f.Text("name");
        var volume = f.Quantity("volume", OtherTexts.Litres);
        var (at, flash, warmest) = (f.Quantity("temperature", QuantityText.Temperature), f.Quantity("flash_point", QuantityText.Temperature), f.Quantity("warmest", QuantityText.Temperature));
        return name is null || IsNone(name) ? null : new Quenchant(name, volume) { Medium = QuenchList.BuiltIn.Find(name), At = at, FlashPoint = flash, Warmest = warmest };
    }

    private static Printer? ReadPrinter(Fields f)
    {
        var (name, paper) = (f.Text("name"), f.Word("paper"));
        var (width, margin) = (f.Length("roll_width"), f.Length("margin", positive: false));
        if (paper == 3 && width is null && !f.Has("roll_width")) f.Fault("paper", "a roll without its width", "add roll_width = \"24 in\"");
        if (margin is { Mm: not (>= 0 and <= 50) }) f.Fault("margin", "a margin outside 0 to 50 mm", "write the margin the printer cannot print, as 6");
        var (across, along) = (ReadCheckBar(f, "bar_across"), ReadCheckBar(f, "bar_along"));
        if (name is null || paper < 0) return null;
        return new Printer(name, ShopKeys.Table.Find("printer", "paper")!.Words[paper], paper == 3 ? width : null, margin ?? Length.OfMm(10), across, along);
    }

    private static double ReadCheckBar(Fields f, string key)
    {
        var bar = f.Length(key);
        if (bar is { Mm: not (>= 80 and <= 120) })
        {
            f.Fault(key, $"{key} is {Shown.Mm(bar.Value)}, too far from 100 mm", "measure the 100 mm bar of a printed template and write what it measured");
            return 100;
        }

        return bar?.Mm ?? 100;
    }

    private static bool IsNone(string name) => string.Equals(name, "none", StringComparison.OrdinalIgnoreCase);
}
