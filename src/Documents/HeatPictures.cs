using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The charts of heat treatment as pictures by themselves.</summary>
public static class HeatPictures
{
    private const double WidthMm = 150, HeightMm = 95;

    /// <summary>Cooling over the curves of the change; null without a known quenchant.</summary>
    public static Sheet? Cooling(HeatPlan p) => p.Hardens is { } h ? Of("cooling", "Cooling and change", CoolingSheet.Of(p, h)) : null;

    /// <summary>What the cooling picture shows, in a plain line; empty without one.</summary>
    public static string CoolingSays(HeatPlan p) => p.Hardens is { } h ? CoolingSheet.Plain(h) : "";

    /// <summary>Hardness by temper; null when nothing is known.</summary>
    public static Sheet? Temper(TemperPlan t) => TemperCard.Curve(t) is { } chart ? Of("temper", "Hardness by temper", chart) : null;

    private static Sheet Of(string key, string title, Chart chart)
    {
        var canvas = new Canvas(key, title, new SheetFrame(WidthMm, HeightMm, new Box(0, 0, WidthMm, HeightMm)));
        chart.Draw(canvas, new Box(1, 1, WidthMm - 1, HeightMm - 1));
        return canvas.Done();
    }
}
