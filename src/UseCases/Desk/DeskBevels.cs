using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>One station as the page shows it.</summary>
/// <param name="Name">"S1".</param>
/// <param name="From">From the datum.</param>
/// <param name="Height">Height of the bevel.</param>
/// <param name="Soft">Angle before hardening; empty when ground hard.</param>
/// <param name="Finished">Angle finished.</param>
/// <param name="Thickness">Thickness at heights above the edge.</param>
public sealed record BevelStationShown(string Name, string From, string Height, string Soft, string Finished, string Thickness);

/// <summary>The bevels as the page shows them.</summary>
/// <param name="Stations">The stations.</param>
/// <param name="Svg">Sections, an SVG element.</param>
/// <param name="Scribe">Lines to scribe, a line each.</param>
/// <param name="Grams">Grams per side, a line each.</param>
/// <param name="Wheels">Wheels judged, a line each.</param>
/// <param name="Advice">The edge for hardening; empty when ground hard.</param>
/// <param name="Sharpening">Sharpening; empty when no angle is said.</param>
/// <param name="Notes">What to know.</param>
public sealed record BevelsShown(ImmutableArray<BevelStationShown> Stations, string Svg, ImmutableArray<string> Scribe, ImmutableArray<string> Grams, ImmutableArray<string> Wheels, string Advice, string Sharpening, ImmutableArray<string> Notes)
{
    /// <summary>What the section shows; empty without one.</summary>
    public string Caption { get; init; } = "";

    /// <summary>Each station's own setting once the taper is ground, after a line that says so; none where all are as thick as the bar.</summary>
    public ImmutableArray<string> ScribeAt { get; init; } = [];
}

/// <summary>The page of bevels.</summary>
public static class DeskBevels
{
    /// <summary>What was asked last.</summary>
    public static BevelsRequest Asked(PlanOnDesk desk) => desk.BevelsAsked ?? new BevelsRequest();

    /// <summary>Works it out for the plan as it stands and keeps the question for the sheets.</summary>
    public static Checked<BevelsShown> Of(PlanOnDesk desk, string measured, string stations, string wheel, bool isProtected)
    {
        var count = int.TryParse(stations, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : stations.Trim().Length == 0 ? BevelStations.Usual : 0;
        var request = new BevelsRequest(measured, count, wheel, isProtected);
        var answer = PlanBevels.Of(desk.Results, request);
        if (answer.IsGood) desk.BevelsAsked = request;
        return answer.Then(a => Checked<BevelsShown>.Good(Shown(a)));
    }

    /// <summary>What follows from another angle, height, edge or stock, in one line; empty when nothing is tried.</summary>
    public static Checked<string> WhatIf(PlanOnDesk desk, string angle, string height, string edge, string stock)
    {
        var tried = new BevelTried(Or(angle), Or(height), Or(edge), Or(stock));
        return tried.IsAsked
            ? PlanBevels.Of(desk.Results, new BevelsRequest()).Then(a => PlanBevels.Try(a, tried)).Then(w => Checked<string>.Good(w.Says))
            : Checked<string>.Good("");

        static string? Or(string text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
    }

    /// <summary>The print request with the bevels last asked for.</summary>
    internal static PrintRequest With(PlanOnDesk desk, PrintRequest print) => print.Bevels is null ? print with { Bevels = desk.BevelsAsked } : print;

    private static BevelsShown Shown(BevelsAnswer a)
    {
        var (r, n) = a;
        var (units, one) = (r.Shop.Show, r.Plan.Bevel!.OneSided);
        return new BevelsShown(
            [.. n.Table.Stations.Select(s => new BevelStationShown(s.Name, BevelText.Fine(s.FromDatum, units), BevelText.Fine(s.Height, units), s.SoftAngle is { } soft ? BevelText.Angle(soft, one) : "", BevelText.Angle(s.FinishedAngle, one), BevelText.Thicknesses(s, units)))],
            n.Table.Stations.IsEmpty ? "" : Section(r, n.Table.Stations[n.Table.Stations.Length / 2]),
            [BevelText.Scribe(n.Scribe, one, units), .. n.ScribeMeasured is { } m ? ["As measured: " + BevelText.Scribe(m, one, units)] : Array.Empty<string>()],
            BevelText.Grams(a),
            BevelText.Wheels(a),
            BevelText.Advice(n, units),
            BevelText.Sharpening(a),
            n.Notes)
        {
            ScribeAt = BevelText.ScribeAt(n, units),
            Caption = n.Table.Stations.IsEmpty ? "" : Caption(r, n.Table.Stations[n.Table.Stations.Length / 2]),
        };
    }

    /// <summary>What the section shows.</summary>
    private static string Caption(Results r, BevelStation s)
    {
        var top = Top(s);
        return $"Section at {s.Name}, finished, before sharpening: edge {BevelText.Fine(r.Plan.Bevel!.EdgeFinished, r.Shop.Show)}, shoulder {BevelText.Fine(s.Height, r.Shop.Show)} up. Thicknesses are drawn {Foundation.Shown.Number(90 / r.Plan.Stock.Thickness.Mm / (200 / top), 1)} times as large as heights.";
    }

    private static double Top(BevelStation s) => Math.Min(s.Spine.Mm, 1.3 * s.Height.Mm);

    /// <summary>A section as an SVG element, heights and thicknesses each to their own scale.</summary>
    private static string Section(Results r, BevelStation s)
    {
        var top = Top(s);
        var (up, across) = (200 / top, 90 / r.Plan.Stock.Thickness.Mm);
        string N(double v) => v.ToString("0.##", CultureInfo.InvariantCulture);
        var points = string.Join(' ', BevelSection.Of(r.Plan, s, top).Select(p => $"{N(120 + (p.X * across))},{N(215 - (p.Y * up))}"));
        var shoulder = N(215 - (s.Height.Mm * up));
        return $"<svg viewBox=\"0 0 280 225\" role=\"img\" aria-label=\"Section at {s.Name}\"><polygon points=\"{points}\" fill=\"#d8d4c6\" stroke=\"#1b1a17\" stroke-width=\"1.5\"/><line x1=\"50\" x2=\"190\" y1=\"{shoulder}\" y2=\"{shoulder}\" stroke=\"#1b1a17\" stroke-dasharray=\"12 3 2 3\"/></svg>";
    }
}
