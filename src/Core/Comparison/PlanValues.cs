using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The values of a plan besides outline and holes, by name and in words.</summary>
public static class PlanValues
{
    /// <summary>Those that are not the same, both told in the unit of the second plan.</summary>
    public static ImmutableArray<ValueDifference> Differences(Plan was, Plan now)
        => [.. Of(was, now.Units).Zip(Of(now, now.Units), (a, b) => new ValueDifference(b.Name, a.Value, b.Value)).Where(d => d.Was != d.Now)];

    /// <summary>All of them, always as many and in the same order; an absent one is empty.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="units">Unit to tell lengths in.</param>
    public static IEnumerable<(string Name, string Value)> Of(Plan plan, LengthUnit units)
    {
        var (stock, bevel, target, layout) = (plan.Stock, plan.Bevel, plan.Target, plan.Layout);
        yield return ("name", plan.Name);
        yield return ("revision", plan.Revision);
        yield return ("unit of bare numbers", plan.Units == LengthUnit.Inch ? "in" : "mm");
        yield return ("weight wanted", target.Weight is { } w ? Weight(w) + (target.WeightTolerance is { } wt ? " +/- " + Weight(wt) : "") : "");
        yield return ("balance wanted, from datum", Size(target.BalanceFromDatum) + (target.BalanceTolerance is { } bt ? " +/- " + Size(bt) : ""));
        yield return ("hardness wanted", target.Hardness is { } hardness ? $"{Shown.Trimmed(hardness.LowHrc, 1)} to {Shown.Trimmed(hardness.HighHrc, 1)} HRC" : "");
        yield return ("steel", stock.Steel);
        yield return ("thickness of the stock", Size(stock.Thickness));
        yield return ("width of the bar", Size(stock.Width));
        yield return ("length of the bar", Size(stock.Length));
        yield return ("condition of the stock", stock.Condition);
        yield return ("datum along the piece", Mark(plan.Datum.X));
        yield return ("datum across the piece", Mark(plan.Datum.Y));
        yield return ("name of the datum", plan.Datum.Name);
        yield return ("edge begins", Place(plan.Edge?.From));
        yield return ("edge ends", Place(plan.Edge?.To));
        yield return ("bevel", bevel is null ? "" : Word(bevel.Grind) + (bevel.OneSided ? ", one face" : ", both faces"));
        yield return ("bevel height", bevel is null ? "" : bevel.Height is { } h ? Size(h) : bevel.AnglePerSide is { } a ? $"at {Shown.PerSide(a)} everywhere" : "full");
        yield return ("wheel of the hollow", Size(bevel?.Wheel));
        yield return ("radius of the bulge", Size(bevel?.Radius));
        yield return ("bevel ground", bevel is null ? "" : bevel.Ground == GroundWhen.AfterHardening ? "after hardening" : "before hardening");
        yield return ("edge before hardening", Size(bevel?.EdgeBeforeHardening));
        yield return ("edge finished", Size(bevel?.EdgeFinished));
        yield return ("sharpening angle", bevel?.SharpenPerSide is { } s ? Shown.PerSide(s) : "");
        yield return ("plunge line", bevel?.Plunge is { } p ? $"{Place(p.A)} to {Place(p.B)}" : "");
        yield return ("distal taper", Tapered(plan.DistalTaper));
        yield return ("tang taper", Tapered(plan.TangTaper));
        yield return ("added masses", string.Join("; ", plan.AddedMasses.Select(Added)));
        foreach (var value in OfHandle(plan, Size, Place)) yield return value;
        yield return ("grip, front end", Place(plan.Grip?.From));
        yield return ("grip, rear end", Place(plan.Grip?.To));
        yield return ("last temper", plan.Heat?.Temper is { } t ? Shown.Both(t) : "");
        yield return ("hold of a temper", plan.Heat?.HoldMinutes is { } hold ? $"{Shown.Trimmed(hold, 2)} min" : "");
        yield return ("tempers", plan.Heat?.Tempers is { } n ? Shown.Number(n, 0) : "");
        yield return ("hardening temperature", plan.Heat?.Harden is { } harden ? Shown.Both(harden) : "");
        yield return ("soak", plan.Heat?.SoakMinutes is { } soak ? $"{Shown.Trimmed(soak, 2)} min" : "");
        yield return ("quenched in", plan.Heat?.Quenchant?.Name ?? "");
        yield return ("cooled on to", plan.Heat?.SubZero is { } z ? Shown.Both(z) : "");
        yield return ("last grit", plan.Finish?.Last?.Words ?? "");
        yield return ("broken edges, rims of holes", Size(plan.BrokenEdges?.Rims));
        yield return ("broken edges, outline", Size(plan.BrokenEdges?.Outline));
        yield return ("broken edges, form", plan.BrokenEdges is { } e ? e.Rounded ? "round" : "chamfer" : "");
        yield return ("drilled in", Word(layout.DrilledIn));
        yield return ("end allowance", Size(layout.EndAllowance));
        yield return ("edge margin", Size(layout.EdgeMargin));

        string Size(Length? length) => length is { } l ? units == LengthUnit.Inch ? $"{Shown.Trimmed(l.Inches, 5)} in" : $"{Shown.Trimmed(l.Mm, 4)} mm" : "";
        string Tapered(Taper? t) => t is null ? "" : $"{Size(t.Thickness)} at x {Size(t.Ends)}, from x {Size(t.Starts)} on";
        string Added(AddedMass m) => $"{m.Name}, {(m.Weight is { } all ? Weight(all) : $"{Shown.Trimmed(m.Density!.Value.GramsPerCm3, 3)} g/cm3")}{(m.Thickness is { } thick ? $", {Size(thick)} on {(m.Sides == 1 ? "one side" : "each side")}" : "")}, {(m.Over is { } over ? $"x {Size(over.From)} to {Size(over.To)}" : Place(m.At))}";
        string Weight(Mass m) => units == LengthUnit.Inch ? $"{Shown.Trimmed(m.Ounces, 3)} oz" : $"{Shown.Trimmed(m.Grams, 2)} g";
        string Place(Point? point) => point is { } at ? $"x {Size(Length.OfMm(at.X))}, y {Size(Length.OfMm(at.Y))}" : "";
        string Mark(DatumMark m) => m.Side == DatumSide.At ? Size(m.At) : Word(m.Side);
    }

    private static IEnumerable<(string Name, string Value)> OfHandle(Plan plan, Func<Length?, string> size, Func<Point?, string> place)
    {
        var (s, cord, hand, air) = (plan.Scales, plan.Cord, plan.Hand, plan.UserAir);
        yield return ("scales", s?.Material ?? "");
        yield return ("scale of the back", s?.BackMaterial ?? "");
        yield return ("thickness of each scale", string.Join("; ", s is null ? [] : s.Stations.IsEmpty ? [size(s.Thickness)] : s.Stations.Select(t => $"{size(t.Thickness)} at x {size(t.X)}")));
        yield return ("board for the scales", size(s?.Board));
        yield return ("front end of the scales", Ends(s?.Front));
        yield return ("bulge of the front end", s is { FrontBulge.Mm: not 0 } ? size(s.FrontBulge) : "");
        yield return ("rear end of the scales", Ends(s?.Rear));
        yield return ("shape of the handle across", s is { IsShaped: true } ? Word(s.Section) : "");
        yield return ("round of the scales", size(s?.Round));
        yield return ("side of the scales", size(s?.Side));
        yield return ("liner", s is { Liner.Length: > 0 } ? $"{s.Liner}, {size(s.LinerThickness)}" : "");
        yield return ("rod", s?.Rod ?? "");
        yield return ("grain of the scales", s is null or { Grain: WoodGrain.Unknown } ? "" : Word(s.Grain));
        yield return ("moisture of the scales", s?.MoisturePercent is { } m ? $"{Shown.Trimmed(m, 1)} %" : "");
        yield return ("holes of the scales", s is null ? "" : $"{(s.HolesBy is { } by ? Word(by) : "")} {size(s.HoleDiameter)} {Shown.Trimmed(s.WantedChanceShare, 4)}".Trim());
        yield return ("cord", cord is null ? "" : string.Join(", ", new[] { cord.Material, size(cord.Diameter), place(cord.From), place(cord.To), $"gap {size(cord.Gap)}", size(cord.Tails) }.Where(t => t.Length > 0)));
        yield return ("hand", hand is null ? "" : string.Join(", ", new[] { size(hand.Length), size(hand.Breadth), hand.IsGloved ? "gloved" : "" }.Where(t => t.Length > 0)));
        yield return ("air it will live in", air is null ? "" : string.Join(", ", new[] { air.Temperature is { } t ? Shown.Both(t) : "", air.HumidityPercent is { } h ? $"{Shown.Trimmed(h, 1)} % humidity" : "", air.MoisturePercent is { } w ? $"wood at {Shown.Trimmed(w, 1)} %" : "" }.Where(x => x.Length > 0)));

        string Ends(PlungeLine? p) => p is null ? "" : $"{place(p.A)} to {place(p.B)}";
    }

    private static string Word<T>(T word)
        where T : struct, Enum
        => word.ToString().ToLowerInvariant();
}
