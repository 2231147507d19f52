using System.Collections.Immutable;
using System.Text.Json;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>Whether tang and scales will go together on their pins, and how straight rows of holes will look.</summary>
/// <param name="Results">The plan worked up.</param>
/// <param name="Ways">Every way of making the pinned parts; null when the plan puts on no scales or names no rods.</param>
/// <param name="Rows">Every row placed by every way the shop has.</param>
public sealed record GoingTogether(Results Results, GoTogether? Ways, ImmutableArray<RowStraightness> Rows)
{
    /// <summary>Fewest and most trials that can be asked for.</summary>
    public static (int Fewest, int Most) Trials => (100, 10_000_000);

    /// <summary>Works up the plan and runs the trials.</summary>
    /// <param name="planPath">The plan.</param>
    /// <param name="shopPath">The shop; null: looked for.</param>
    /// <param name="seed">Seed of the trials.</param>
    /// <param name="trials">How many for each way.</param>
    public static Checked<GoingTogether> Of(string planPath, string? shopPath, ulong seed, int trials)
        => OpenWork.Of(planPath, shopPath).Then(w =>
        {
            var r = w.WorkUp();
            return Checked<GoingTogether>.Good(new(r, GoTogether.Of(r, seed, trials), RowStraightness.Of(r)));
        });

    /// <summary>The same as JSON; names are stable between versions.</summary>
    public string Json() => JsonText.Of(w =>
    {
        w.WriteString("name", Results.Plan.Name);
        w.WriteString("revision", Results.Plan.Revision);
        w.WriteString("shop", Results.Shop.Name);
        w.WriteBoolean("assumed_shop", Results.Shop.IsAssumed);
        w.List("pins", Ways?.Pins ?? [], h =>
        {
            w.WriteString("hole", h.Name);
            w.Place("at", h.At);
            w.Number("rod_mm", h.Pin!.Value.Mm);
            w.Number("tang_hole_mm", h.Diameter.Mm);
            w.Number("scale_hole_mm", Ways!.ScaleHoles[Ways.Pins.IndexOf(h)].Mm);
        });
        w.Number("wanted_chance", Ways?.WantedShare);
        w.Number("seed", Ways?.Seed);
        w.List("ways", Ways?.Ways ?? [], x => WriteWay(w, x));
        w.List("rows", Rows, x =>
        {
            w.WriteString("row", x.Row);
            w.WriteString("way", x.Making.Word);
            w.Number("rms_mm", x.Rms.Mm);
            w.Number("worst_usual_mm", x.WorstUsual.Mm);
            w.Number("worst_in_95_mm", x.WorstSeldom.Mm);
            w.WriteString("looks", AssemblyText.Looks(x));
        });
    });

    private void WriteWay(Utf8JsonWriter w, WayChance x)
    {
        w.WriteString("way", x.Making.Word);
        w.WriteBoolean("as_the_plan_says", x.Making.Way == Ways!.Said);
        w.WriteBoolean("in_shop", x.IsInShop);
        w.Number("zone_mm", x.Zone.Mm);
        w.Number("sigma_mm", x.Sigma.Mm);
        w.WriteBoolean("measured", x.Capability.MeasuredSigma is not null);
        w.Number("chance", x.Chance.Share);
        w.Number("chance_low", x.Chance.Interval.LowShare);
        w.Number("chance_high", x.Chance.Interval.HighShare);
        w.WriteNumber("trials", x.Chance.Trials);
        w.WriteNumber("undecided", x.Chance.Undecided);
        w.Number("chance_widest_scatter", x.LowShare);
        w.Number("chance_least_scatter", x.HighShare);
        w.Number("tang_hole_for_wanted_mm", x.TangAlone?.Mm + Ways.Rod.Mm);
        w.Number("all_holes_for_wanted_mm", x.AllAlike?.Mm + Ways.Rod.Mm);
        w.Number("floating_hole_mm", x.Floating.Mm);
        w.Number("fixed_tang_hole_mm", x.Fixed.Mm);
    }
}
