using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>Bevels in words, the same on the command line and the desk.</summary>
public static class BevelText
{
    /// <summary>Cautions.</summary>
    public static string Caution => BevelWords.Caution;

    /// <summary>Both angle conventions.</summary>
    public static string Angle(Angle perSide, bool oneSided) => BevelWords.Angle(perSide, oneSided);

    /// <summary>A thickness to gauge.</summary>
    public static string Fine(Length l, UnitsShown units) => BevelWords.Fine(l, units);

    /// <summary>Thicknesses of a station: "2 mm up 0.95 mm, ...".</summary>
    public static string Thicknesses(BevelStation s, UnitsShown units)
        => string.Join("; ", s.Thicknesses.Select(t => $"{FigureText.Size(t.Up, units, brief: true)} up {(t.Soft is { } soft ? BevelWords.Fine(soft, units) + ", finished " : "")}{BevelWords.Fine(t.Finished, units)}"));

    /// <summary>Lines to scribe.</summary>
    public static string Scribe(ScribeLines s, bool oneSided, UnitsShown units)
        => oneSided
            ? $"bar {BevelWords.Fine(s.Stock, units)}: one line {BevelWords.Gauge(s.FromFace, units)} from the face that stays"
            : $"bar {BevelWords.Fine(s.Stock, units)}: height gauge {BevelWords.Gauge(s.FromFace, units)} from each face leaves {BevelWords.Fine(s.Edge, units)}; middle line at {BevelWords.Gauge(s.Centre, units)}";

    /// <summary>Each station's own setting once the taper is ground, a line each after one that says so; none where all are as thick as the bar.</summary>
    public static ImmutableArray<string> ScribeAt(BevelNumbers n, UnitsShown units)
    {
        string Of(ScribeLines s) => $"{BevelWords.Fine(s.Stock, units)} thick, gauge {BevelWords.GaugeOf(s, units)}";
        return n.ScribeAt.IsEmpty ? [] : ["Taper ground first, the tapered face down on the plate:", .. n.ScribeAt.Select(s => $"{s.Name}: {Of(s.Sold)}{(s.Measured is { } m ? "; as measured " + Of(m) : "")}")];
    }

    /// <summary>Wheels, a line each, then the smallest change.</summary>
    public static ImmutableArray<string> Wheels(BevelsAnswer a)
    {
        var (r, n) = a;
        var units = r.Shop.Show;
        var lines = n.Wheels.Select(v => $"{v.Name}, {BevelWords.Fine(v.Diameter, units)}: {BevelWords.Verdict(v, r.Plan.Bevel!.EdgeFinished, units)}");
        return [.. lines, .. BevelWords.Change(n, units) is { Length: > 0 } change ? [change] : Array.Empty<string>()];
    }

    /// <summary>How thick to leave the edge; empty when not asked.</summary>
    public static string Advice(BevelNumbers n, UnitsShown units) => n.Advice is { } a ? BevelWords.Advice(a, units) : "";

    /// <summary>Grams per side.</summary>
    public static ImmutableArray<string> Grams(BevelsAnswer a) => BevelWords.Grams(a.Bevels, a.Results.Shop.Show, a.Results.Plan.Bevel!.OneSided);

    /// <summary>Sharpening in one line; empty when no angle is said.</summary>
    public static string Sharpening(BevelsAnswer a)
    {
        var (r, n) = a;
        if (r.Plan.Bevel!.SharpenPerSide is not { } s) return "";
        var units = r.Shop.Show;
        return $"Sharpen at {BevelWords.Angle(s, r.Plan.Bevel.OneSided)}{(n.Facet is { } f ? ": " + BevelWords.Facet(f, units) : ": flatter than the bevel, no facet forms")}{(n.BlockHeight is { } b ? $"; spine {BevelWords.Fine(b, units)} over the stone where the blade is {BevelWords.Fine(n.Table.BladeHeight, units)} high" : "")}.";
    }
}
