using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads scales, cord, hand and air.</summary>
internal static class HandleReading
{
    private const int MostStations = 50;

    public static ScalesPlan? Scales(Fields f, Path? outline, bool hasGrip)
    {
        if (!f.IsThere) return null;
        var (way, hole, chance) = (f.Word("holes"), f.Length("hole"), f.Number("chance", 0.01, 0.9999));
        var (material, liner) = (f.Text("material") ?? "", f.Text("liner") ?? "");
        var (thickness, linerThickness, board) = (f.Length("thickness"), f.Length("liner_thickness"), f.Length("board"));
        var scales = new ScalesPlan(way < 0 ? null : (PlacingWay)way, hole, chance ?? 0.95)
        {
            Material = material,
            BackMaterial = f.Text("back_material") ?? "",
            Liner = liner,
            LinerThickness = linerThickness ?? default,
            Rod = f.Text("rod") ?? "",
            Stations = Stations(f),
            Board = board,
            Front = EndLine(f, "front", outline),
            Rear = EndLine(f, "rear", outline),
            FrontBulge = f.Length("front_bulge", positive: false) ?? default,
            Section = (HandleSection)Math.Max(0, f.Word("section")),
            Round = f.Length("round"),
            Side = f.Length("side", positive: false),
            Grain = (WoodGrain)(f.Word("grain") + 1),
            MoisturePercent = f.Number("moisture", 0, 40),
        };
        scales = scales with { Thickness = thickness ?? (scales.Stations.IsEmpty ? null : scales.Stations.MaxBy(s => s.Thickness.Mm).Thickness) };
        if (scales.Side is { Mm: < 0 }) f.Fault("side", "a thickness below 0", "write how thick the scale is left at the edges of the tang, or 0");
        if (material.Length > 0 && scales.Thickness is null) f.Fault("material", "scales of a material, but no thickness", "add thickness = 8, the finished thickness of each");
        if (material.Length == 0 && (thickness is not null || liner.Length > 0)) f.FaultAt(f.Offset, "scales without their material", "add material = \"black walnut\", or another file of data/handles or of your own folder");
        if (material.Length > 0 && !f.Has("front") && !hasGrip) f.Fault("material", "it is not known where the scales begin", "add front = and the x of their front end, or [grip]");
        if (liner.Length > 0 != linerThickness is not null) f.Fault(liner.Length > 0 ? "liner" : "liner_thickness", liner.Length > 0 ? "a liner without its thickness" : "a thickness without a liner", liner.Length > 0 ? "add liner_thickness = 0.8" : "add liner = \"vulcanised fibre\", or take this line out");
        if (board is { } b && scales.Thickness is { } t && b < t) f.Fault("board", "the board is thinner than the finished scale", "write the thickness it starts from, which is the greater one");
        return scales;
    }

    public static CordPlan? Cord(Fields f)
    {
        if (!f.IsThere) return null;
        var (gap, tails) = (f.Length("gap", positive: false), f.Length("tails", positive: false));
        if (gap is { Mm: < 0 }) f.Fault("gap", "a gap below 0", "write the room between one turn and the next, or 0");
        if (tails is { Mm: < 0 }) f.Fault("tails", "tails shorter than nothing", "write what is left over at both ends together");
        var (from, to) = (f.Point("from"), f.Point("to"));
        if (from is { } a && to is { } b && a.To(b) < 1) f.Fault("to", "the cord begins and ends in the same place", "write its front and its rear end");
        return new CordPlan { Material = f.Text("material") ?? "", Diameter = f.Length("diameter"), From = from, To = to, Gap = gap ?? default, Tails = tails };
    }

    public static Hand? Hand(Fields f)
    {
        if (!f.IsThere) return null;
        var (length, breadth) = (f.Length("length"), f.Length("breadth"));
        if (length is { Mm: not (>= 120 and <= 260) }) f.Fault("length", $"a hand {Shown.Both(length.Value)} long", "measure from the crease of the wrist to the tip of the middle finger: 120 to 260 mm");
        if (breadth is { Mm: not (>= 50 and <= 130) }) f.Fault("breadth", $"a hand {Shown.Both(breadth.Value)} broad", "measure across the four knuckles, thumb left out: 50 to 130 mm");
        return new Hand(length, breadth, f.Flag("glove") ?? false);
    }

    public static Air? Air(Fields f)
    {
        if (!f.IsThere) return null;
        var temperature = f.Quantity("temperature", QuantityText.Temperature);
        if (temperature is { Celsius: not (>= -20 and <= 60) }) f.Fault("temperature", $"air of {Shown.Both(temperature.Value)}", "write it between -20 C and 60 C");
        var (humidity, moisture) = (f.Number("humidity", 1, 98), f.Number("moisture", 0, 30));
        if (humidity is not null && moisture is not null) f.Fault("moisture", "moisture beside humidity", "one follows from the other: keep the one you measured");
        return new Air(temperature, humidity, moisture);
    }

    private static PlungeLine? EndLine(Fields f, string key, Path? outline) => f.Node(key) switch
    {
        null => null,
        TomlList list => f.TwoPoints(list, key) is { } p ? new PlungeLine(p.A, p.B) : null,
        _ => f.Length(key, positive: false) is { } x && outline is not null ? new PlungeLine(new Point(x.Mm, outline.Bounds.MinY), new Point(x.Mm, outline.Bounds.MaxY)) : null,
    };

    private static ImmutableArray<ScaleStation> Stations(Fields f)
    {
        if (f.Node("thickness_at") is not { } node) return [];
        if (node is not TomlList { Items: { Count: >= 2 and <= MostStations } items })
        {
            f.Fault("thickness_at", $"thickness_at is no list of 2 to {MostStations} places", "write x and thickness for each place, as [[210, 7], [260, 9], [325, 8]]");
            return [];
        }

        var read = new List<ScaleStation>();
        foreach (var item in items)
        {
            if (f.Point(item, "thickness_at") is not { } p) return [];
            if (p.Y <= 0) f.Fault("thickness_at", "a thickness that is not above 0", "write x and thickness for each place, as [[210, 7], [260, 9]]");
            read.Add(new ScaleStation(Length.OfMm(p.X), Length.OfMm(p.Y)));
        }

        if (read.Zip(read.Skip(1)).Any(p => p.Second.X <= p.First.X)) f.Fault("thickness_at", "the places do not follow one another", "write them with x growing");
        return [.. read];
    }
}
