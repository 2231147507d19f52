using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Heat treatment as the page shows it.</summary>
/// <param name="Head">The verdict in one line.</param>
/// <param name="IsTrouble">Whether it does not harden for sure.</param>
/// <param name="Why">Why, and what would do.</param>
/// <param name="Stations">Each thickness out of the quench.</param>
/// <param name="CoolingSvg">Cooling over the curves of the change; empty without one.</param>
/// <param name="CoolingSays">What it shows, in a plain line.</param>
/// <param name="Oven">Oven.</param>
/// <param name="Bath">Bath.</param>
/// <param name="Temper">Temper.</param>
/// <param name="TemperSvg">Hardness by temper; empty without one.</param>
/// <param name="Flagged">Readings out of line.</param>
/// <param name="Remarks">What else to know.</param>
/// <param name="Cautions">Cautions.</param>
public sealed record HeatShown(
    string Head,
    bool IsTrouble,
    ImmutableArray<string> Why,
    ImmutableArray<string> Stations,
    string CoolingSvg,
    string CoolingSays,
    ImmutableArray<string> Oven,
    ImmutableArray<string> Bath,
    ImmutableArray<string> Temper,
    string TemperSvg,
    ImmutableArray<string> Flagged,
    ImmutableArray<string> Remarks,
    ImmutableArray<string> Cautions);

/// <summary>The page of heat treatment.</summary>
public static class DeskHeat
{
    /// <summary>Quenchants to choose from.</summary>
    public static ImmutableArray<string> Quenchants(PlanOnDesk desk) => [.. desk.Results.Shop.KnownMedia.Select(m => m.Name)];

    /// <summary>Name of the quenchant while nothing is asked; empty when there is none.</summary>
    public static string UsualQuenchant(PlanOnDesk desk) => (desk.Results.Plan.Heat?.Quenchant ?? desk.Results.Shop.Quenchant)?.Name ?? "";

    /// <summary>Works it out for the plan as it stands.</summary>
    public static Checked<HeatShown> Of(PlanOnDesk desk, HeatRequest request, string pieces)
    {
        if (pieces.Trim().Length == 0) return PlanHeat.Of(desk.Results, request).Then(a => Checked<HeatShown>.Good(Shown(a)));
        return int.TryParse(pieces.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var n)
            ? PlanHeat.Of(desk.Results, request with { Pieces = n }).Then(a => Checked<HeatShown>.Good(Shown(a)))
            : Checked<HeatShown>.Bad(Fault.OfFile("pieces", $"\"{pieces.Trim()}\" is no whole number", "write how many, as 12"));
    }

    /// <summary>Adds a reading to the shop's hardness log.</summary>
    /// <returns>Faults; none when it was written.</returns>
    public static ImmutableArray<Fault> Log(PlanOnDesk desk, HardnessRequest typed, DateOnly date)
    {
        var wrote = HardnessWriting.Add(desk.Path, null, typed, date);
        if (wrote.IsGood) desk.ShopChanged();
        return wrote.Faults;
    }

    private static HeatShown Shown(HeatAnswer a) => new(
        HeatText.Head(a),
        a.Heat.Hardens?.Verdict is not HardensVerdict.Through,
        HeatText.Why(a),
        HeatText.Stations(a),
        HeatPictures.Cooling(a.Heat) is { } cooling ? DrawnSheet.Of(cooling, "Temperature against time in the quench, over the curves where the steel turns soft").Svg : "",
        HeatPictures.CoolingSays(a.Heat),
        HeatText.Oven(a),
        HeatText.Bath(a),
        HeatText.Temper(a),
        a.Temper is { } t && HeatPictures.Temper(t) is { } temper ? DrawnSheet.Of(temper, "Hardness against the temperature of the temper, with the band wanted").Svg : "",
        HeatText.Flagged(a),
        HeatText.Remarks(a),
        HeatText.Cautions(a));
}
