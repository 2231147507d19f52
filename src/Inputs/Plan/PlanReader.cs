using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads a plan file.</summary>
public static class PlanReader
{
    /// <summary>The plan, or every fault found. Any text gives one or the other.</summary>
    /// <param name="text">The whole text of the file.</param>
    /// <param name="fileName">Name of the file, for the faults.</param>
    public static Checked<PlanFile> Read(string text, string fileName)
    {
        var source = new SourceText(text, fileName);
        return TomlReading.Read(source).Then(root => Read(root, source, fileName, text));
    }

    internal static double UnitMm(LengthUnit unit) => unit == LengthUnit.Inch ? Length.MmPerInch : 1;

    private static Checked<PlanFile> Read(TomlTable root, SourceText source, string fileName, string text)
    {
        var faults = new List<Fault>();
        var top = new Fields(source, root, "", PlanKeys.Table, 1, faults);
        var version = top.Number("tangwright", 0, 1e9);
        if (version is not (null or 1)) top.Fault("tangwright", "a plan file of another form", "this program reads tangwright = 1; use a newer program for newer files");
        PlanKeys.Table.Check(root, source, faults);
        var units = top.Word("units") == 1 ? LengthUnit.Inch : LengthUnit.Mm;
        var unitMm = UnitMm(units);
        Fields Under(string heading) => new(source, root.Find(heading)?.Value as TomlTable, heading, PlanKeys.Table, unitMm, faults);

        var name = top.Text("name") ?? "";
        var revision = top.Text("revision") ?? "-";
        var target = ReadTarget(Under("target"), unitMm);
        var stock = ReadStock(Under("stock"));
        var outline = OutlineReading.Read(Under("outline"), unitMm);
        var datum = ReadDatum(Under("datum"));
        var grip = ReadGrip(Under("grip"));
        var edge = ReadEdge(Under("edge"), outline);
        var bevel = BevelReading.Read(Under("bevel"), outline, root.Find("edge") is not null);
        var tapers = new TaperReading(outline, edge, grip, stock);
        var (distal, tang) = tapers.Read(Under("distal_taper"), Under("tang_taper"));
        var masses = new AddedMassReading(source, unitMm, faults, outline).Read(root);
        var broken = ReadBroken(Under("broken_edges"));
        var layout = ReadLayout(Under("layout"));
        var holes = new HoleReading(source, unitMm, faults, root.Find("grip") is not null).Read(root);

        var scales = HandleReading.Scales(Under("scales"), outline, grip is not null);
        var (cord, hand, air) = (HandleReading.Cord(Under("cord")), HandleReading.Hand(Under("hand")), HandleReading.Air(Under("user_air")));
        if (scales is { IsShaped: true } && masses.FirstOrDefault(m => m.Name.StartsWith("scale", StringComparison.OrdinalIgnoreCase)) is { } twice) Under("scales").FaultAt(Under("scales").Offset, $"scales here, and an added mass named {twice.Name}: they would be weighed twice", "take the added mass out, or give it another name when it is something else");
        if (cord is not null && outline is not null) foreach (var (key, at) in new[] { ("from", cord.From), ("to", cord.To) }) if (at is { } p && !Inside.Of(outline, p)) Under("cord").Fault(key, $"{key} lies outside the piece", "write a point on the handle");
        if (cord is not null && grip is null && (cord.From is null || cord.To is null)) Under("cord").FaultAt(Under("cord").Offset, "it is not known where the cord begins and ends", "add from and to, or [grip]");
        if (cord is not null && scales is { IsShaped: true }) Under("cord").FaultAt(Under("cord").Offset, "a cord round a handle with scales", "keep [scales] with its material, or [cord]");
        var heat = HeatReading.Read(Under("heat"));
        var finish = ReadFinish(Under("finish"));
        var sheath = SheathReading.Read(Under("sheath"), outline, root.Find("edge") is not null);

        if (faults.Count > 0) return Checked<PlanFile>.Bad(faults.OrderBy(f => f.Line).ThenBy(f => f.Column).DistinctBy(f => (f.Line, f.Column, f.Message)).Take(50));
        var plan = new Plan(name, revision, units, target, stock!, outline!, datum, edge, bevel, grip, broken, layout, holes) { Scales = scales, Cord = cord, Hand = hand, UserAir = air, DistalTaper = distal, TangTaper = tang, AddedMasses = masses, Heat = heat, Finish = finish, Sheath = sheath };
        return Checked<PlanFile>.Good(new PlanFile(plan, fileName, text, source, root));
    }

    private static FinishWish? ReadFinish(Fields f) => f.IsThere ? new FinishWish(f.Quantity("grit", GritText.Read)) : null;

    private static Target ReadTarget(Fields f, double unitMm)
    {
        var weight = f.Quantity("weight", QuantityText.MassAndTolerance);
        var balance = f.Quantity("balance_from_datum", t => QuantityText.LengthAndTolerance(t, unitMm));
        var hardness = f.Quantity("hardness", QuantityText.Hardness);
        return new Target(weight?.Value, weight?.PlusMinus, balance?.Value, balance?.PlusMinus, hardness);
    }

    private static Stock? ReadStock(Fields f)
    {
        var steel = f.Text("steel");
        var thickness = f.Length("thickness");
        var (width, length, condition) = (f.Length("width"), f.Length("length"), f.Text("condition"));
        return steel is null || thickness is null ? null : new Stock(steel, thickness.Value, width, length, condition ?? "");
    }

    private static Datum ReadDatum(Fields f)
        => new(ReadMark(f, "x", DatumSide.Left, DatumSide.Right), ReadMark(f, "y", DatumSide.Bottom, DatumSide.Top), f.Text("name") ?? "");

    private static DatumMark ReadMark(Fields f, string key, DatumSide low, DatumSide high)
    {
        var node = f.Node(key);
        if (node is null) return new DatumMark(low, default);
        if (node is TomlText { Value: var word } && word.Length > 0 && word.All(char.IsAsciiLetter))
        {
            if (string.Equals(word, low.ToString(), StringComparison.OrdinalIgnoreCase)) return new DatumMark(low, default);
            if (string.Equals(word, high.ToString(), StringComparison.OrdinalIgnoreCase)) return new DatumMark(high, default);
            f.Fault(key, $"{key} is '{NumberText.Clip(word)}', which is no side", $"write {low.ToString().ToLowerInvariant()}, {high.ToString().ToLowerInvariant()} or a length");
            return default;
        }

        return new DatumMark(DatumSide.At, f.Length(key, positive: false) ?? default);
    }

    private static Grip? ReadGrip(Fields f)
    {
        var (from, to) = (f.Point("from"), f.Point("to"));
        if (from is not { } a || to is not { } b) return null;
        if (a.To(b) > 1e-6) return new Grip(a, b);
        f.Fault("to", "the grip begins and ends in the same point", "write its front and its rear end");
        return null;
    }

    private static SharpenedPart? ReadEdge(Fields f, Path? outline)
    {
        var (from, to) = (f.Point("from"), f.Point("to"));
        if (from is not { } a || to is not { } b || outline is null) return null;
        var good = OnOutline(f, "from", a, outline) & OnOutline(f, "to", b, outline);
        if (good && a.To(b) <= 0.1)
        {
            f.Fault("to", "the edge begins and ends in the same point", "write its first and its last point, in the direction the outline is written");
            good = false;
        }

        return good ? new SharpenedPart(a, b) : null;
    }

    private static bool OnOutline(Fields f, string key, Point p, Path outline)
    {
        var (_, nearest, distance) = Nearest.On(outline, p);
        if (distance <= 0.05) return true;
        f.Fault(key, $"{key} lies {Shown.Both(Length.OfMm(distance))} off the outline", $"the nearest point of the outline is x {Shown.Both(Length.OfMm(nearest.X))}, y {Shown.Both(Length.OfMm(nearest.Y))}");
        return false;
    }

    private static BrokenEdges? ReadBroken(Fields f)
        => f.IsThere ? new BrokenEdges(f.Length("rims"), f.Length("outline"), f.Word("form") == 1) : null;

    private static Layout ReadLayout(Fields f)
    {
        var state = (DrilledIn)Math.Max(0, f.Word("drilled_in"));
        var (end, margin) = (f.Length("end_allowance", positive: false), f.Length("edge_margin", positive: false));
        if (end is { Mm: < 0 }) f.Fault("end_allowance", "an allowance below 0", "write how much steel is left, or 0");
        if (margin is { Mm: < 0 }) f.Fault("edge_margin", "a margin below 0", "write how much steel is left, or 0");
        return new Layout(state, end, margin);
    }
}
