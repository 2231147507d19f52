using System.Collections.Immutable;
using System.Text.Json;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Formats;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>What is asked of the heat treatment, as a person writes it; what is left out is the plan's or the steel's.</summary>
/// <param name="Harden">Hardening temperature, "815 C".</param>
/// <param name="Soak">Time at heat, "10 min".</param>
/// <param name="Quenchant">What it is quenched in.</param>
/// <param name="Hardness">Hardness wanted, "57 to 59 HRC".</param>
/// <param name="Temper">Temperature of the temper.</param>
/// <param name="Hold">Time at heat of one temper.</param>
/// <param name="Tempers">How often it is tempered.</param>
/// <param name="SubZero">Cooled on to this.</param>
/// <param name="Pieces">How many pieces.</param>
public sealed record HeatRequest(string? Harden = null, string? Soak = null, string? Quenchant = null, string? Hardness = null, string? Temper = null, string? Hold = null, int? Tempers = null, string? SubZero = null, int? Pieces = null);

/// <summary>The heat treatment of a plan or of a bare thickness.</summary>
/// <param name="Name">The plan's name, or the steel's.</param>
/// <param name="Heat">Hardening.</param>
/// <param name="Temper">Tempering; null when nothing is known of it.</param>
/// <param name="AtWish">Hardness at the temper asked for; null when none is.</param>
/// <param name="Ways">What would harden through; null when it does.</param>
/// <param name="OtherSteels">Steels that would, in the same quenchant; empty when it does.</param>
public sealed record HeatAnswer(string Name, HeatPlan Heat, TemperPlan? Temper, (Temperature At, Tempered Gives)? AtWish, HeatWays? Ways, ImmutableArray<string> OtherSteels);

/// <summary>Will it harden, how hard will it be, and what to set.</summary>
public static class PlanHeat
{
    private const int MostPieces = 10_000;

    /// <summary>For a plan.</summary>
    /// <param name="planPath">The plan file.</param>
    /// <param name="shopPath">The shop file; null: looked for.</param>
    /// <param name="request">What is asked.</param>
    public static Checked<HeatAnswer> Of(string planPath, string? shopPath, HeatRequest request) => OpenWork.Of(planPath, shopPath).Then(w => Of(w.WorkUp(), request));

    /// <summary>The same for a plan that is worked up already.</summary>
    internal static Checked<HeatAnswer> Of(Results r, HeatRequest request)
        => Read(request, r.Plan.Heat, r.Plan.Target.Hardness, r.Shop).Then(asked => HeatSubject.Of(r with { Plan = r.Plan with { Heat = asked.Wish } }, request.Pieces ?? 1) is { } subject
            ? Of(r.Plan.Name, subject, asked.Wanted)
            : Checked<HeatAnswer>.Bad(Fault.OfFile("stock.steel", $"there is no file for steel {r.Plan.Stock.Steel}", "name the steel as its file does, or write a file for it")));

    /// <summary>For a bare thickness of a steel.</summary>
    /// <param name="steelName">The steel.</param>
    /// <param name="thickness">Its thickness with the unit.</param>
    /// <param name="shopPath">The shop file; null: looked for.</param>
    /// <param name="request">What is asked.</param>
    public static Checked<HeatAnswer> Of(string steelName, string thickness, string? shopPath, HeatRequest request)
        => OpenWork.ShopAndSteel(steelName, shopPath).Then(found =>
        {
            if (found.Steel is not { } steel) return Checked<HeatAnswer>.Bad(Fault.OfFile("--steel", $"there is no file for steel '{steelName.Trim()}'", found.Near is { } near ? $"did you mean {near}?" : "name it as its file does, or write a file for it"));
            var read = LengthText.Read(thickness, 1);
            if (!read.IsGood) return Checked<HeatAnswer>.Bad(Fault.OfFile("--thickness", read.Message, read.Remedy));
            if (read.Value.Writing == LengthWriting.Bare) return Checked<HeatAnswer>.Bad(Fault.OfFile("--thickness", $"'{thickness.Trim()}' has no unit", $"write {thickness.Trim()} mm or {thickness.Trim()} in"));
            if (read.Value.Length.Mm is not (>= 0.3 and <= 60)) return Checked<HeatAnswer>.Bad(Fault.OfFile("--thickness", $"{Shown.Both(read.Value.Length)} is outside 0.3 to 60 mm", "the models are for blades and small tools"));
            return Read(request, null, null, found.Shop).Then(asked => Of(steel.Name, HeatSubject.Of(steel, found.Shop, asked.Wish, read.Value.Length, request.Pieces ?? 1), asked.Wanted));
        });

    /// <summary>The furnace program as a table.</summary>
    public static byte[] Csv(HeatPlan p) => CsvWriter.Write(FurnaceCsv.Rows(p));

    private static Checked<HeatAnswer> Of(string name, HeatSubject subject, HardnessBand? wanted)
    {
        if (HeatPlan.Of(subject) is not { } heat) return Checked<HeatAnswer>.Bad(Fault.OfFile("steel", $"the file of steel {subject.Steel.Name} does not say how it is hardened", "add [hardening] and [composition] from its maker's sheet to the file; docs/steel-file.md says how"));
        var quenched = heat.AsQuenchedHrc?.Value;
        var temper = heat.IsSoft ? null : TemperPlan.Of(subject.Steel, subject.Shop, subject.Wish, wanted, quenched);
        var at = subject.Wish.Temper is { } t && temper is not null ? (t, Tempered.Of(subject.Steel, temper.AsQuenched?.Value, t, temper.Cycle.Hours)) : ((Temperature, Tempered)?)null;
        var isShort = heat.Hardens?.Verdict is HardensVerdict.Marginal or HardensVerdict.WillNot;
        return Checked<HeatAnswer>.Good(new HeatAnswer(name, heat, temper, at, isShort ? HeatWays.Of(subject, heat.At) : null, isShort ? [.. HeatWays.SteelsThat(subject, SteelList.BuiltIn.All).Select(s => s.Name)] : []));
    }

    private static Checked<Asked> Read(HeatRequest q, HeatWish? planned, HardnessBand? wanted, Shop shop)
    {
        var faults = new List<Fault>();
        var wish = planned ?? new HeatWish();
        var band = TypedText.Value(faults, "hardness", q.Hardness, QuantityText.Hardness);
        var asked = wish with
        {
            Harden = TypedText.Value(faults, "harden", q.Harden, QuantityText.Temperature) ?? wish.Harden,
            SoakMinutes = TypedText.Value(faults, "soak", q.Soak, QuantityText.Minutes) ?? wish.SoakMinutes,
            Temper = TypedText.Value(faults, "temper", q.Temper, QuantityText.Temperature) ?? wish.Temper,
            HoldMinutes = TypedText.Value(faults, "hold", q.Hold, QuantityText.Minutes) ?? wish.HoldMinutes,
            SubZero = TypedText.Value(faults, "sub-zero", q.SubZero, QuantityText.Temperature) ?? wish.SubZero,
            Tempers = q.Tempers ?? wish.Tempers,
            Quenchant = string.IsNullOrWhiteSpace(q.Quenchant) ? wish.Quenchant : new Quenchant(q.Quenchant.Trim(), null) { Medium = shop.KnownMedia.FirstOrDefault(m => m.IsCalled(q.Quenchant.Trim())) },
        };
        if (asked.Harden is { } h && h.Celsius is not (>= 680 and <= 1250)) faults.Add(Fault.OfFile("harden", $"{Shown.Both(h)} is no hardening temperature", "write it between 680 C and 1250 C"));
        if (asked.Temper is { } t && t.Celsius is not (>= 80 and <= 700)) faults.Add(Fault.OfFile("temper", $"{Shown.Both(t)} is no tempering temperature", "write it between 80 C and 700 C"));
        if (asked.SubZero is { } z && z.Celsius is not (>= -200 and <= 10)) faults.Add(Fault.OfFile("sub-zero", $"{Shown.Both(z)} is not below zero or near it", "write it between -200 C and 10 C"));
        if (asked.Tempers is not (null or (>= 1 and <= 4))) faults.Add(Fault.OfFile("tempers", $"{asked.Tempers} tempers", "write 1 to 4"));
        if (q.Pieces is not (null or (>= 1 and <= MostPieces))) faults.Add(Fault.OfFile("pieces", $"{q.Pieces} pieces", $"write 1 to {MostPieces}"));
        if (q.Quenchant is not null && asked.Quenchant is { Medium: null } unknown) faults.Add(Fault.OfFile("quenchant", $"'{unknown.Name}' is in no quenchant file", $"write one of {string.Join(", ", shop.KnownMedia.Select(m => m.Name))}"));
        return faults.Count > 0 ? Checked<Asked>.Bad(faults) : Checked<Asked>.Good(new Asked(asked, band ?? wanted));
    }

    private sealed record Asked(HeatWish Wish, HardnessBand? Wanted);

    /// <summary>The same as JSON; names are stable between versions.</summary>
    public static string Json(HeatAnswer a) => JsonText.Of(w =>
    {
        var p = a.Heat;
        w.WriteString("name", a.Name);
        w.WriteString("steel", p.Subject.Steel.Name);
        w.Number("thickness_mm", p.Subject.Stock.Mm);
        w.WriteString("verdict", (p.Hardens?.Verdict ?? HardensVerdict.NotKnown).Words());
        w.WriteString("why", p.Hardens?.Why ?? "");
        w.WriteString("quenchant", p.Hardens?.Medium.Name ?? "");
        w.Number("bath_c", p.Hardens?.Bath.Celsius);
        w.Number("harden_c", p.At.Celsius);
        w.Number("soak_low_min", p.SoakMinutes.LowMinutes);
        w.Number("soak_high_min", p.SoakMinutes.HighMinutes);
        w.Number("heat_up_alone_min", p.HeatUp.AloneMinutes);
        w.Number("heat_up_racked_min", p.HeatUp.RackedMinutes);
        w.Number("face_loss_mm", p.FaceLoss.Mm);
        w.List("steps", p.Oven, s =>
        {
            w.WriteString("what", s.What);
            w.Number("piece_c", s.Piece.Celsius);
            w.Number("set_c", s.Set.Celsius);
            w.Number("hold_low_min", s.HoldMinutes.LowMinutes);
            w.Number("hold_high_min", s.HoldMinutes.HighMinutes);
            w.WriteString("then", s.Then);
        });
        w.List("critical", p.Critical.Opinions, o =>
        {
            w.WriteString("by", o.By);
            w.Number("lower_c", o.Lower.Celsius);
            w.Number("upper_c", o.Upper?.Celsius);
        });
        w.Number("martensite_begins_c", p.Critical.MartensiteBegins?.Celsius);
        w.Number("ideal_diameter_mm", p.Hardens?.Ideal?.Mm);
        w.List("end_quench", EndQuench(p), e =>
        {
            w.Number("from_end_mm", e.Mm);
            w.Number("hrc", e.Hrc);
        });
        w.Number("martensite_rate_c_per_s", MartensiteRate(p));
        w.Number("needed_low_mm", p.Hardens?.Needed?.Least.Mm);
        w.Number("needed_high_mm", p.Hardens?.Needed?.Most.Mm);
        w.List("stations", p.Hardens?.At ?? [], s =>
        {
            w.WriteString("where", s.Station.Where);
            w.Number("thickness_mm", s.Station.ThicknessMm);
            w.WriteString("verdict", s.Verdict.Words());
            w.Number("to_540_c_s", s.Run.Seconds(540));
            w.Number("to_200_c_s", s.Run.Seconds(200));
            w.Number("rate_at_700_c_per_s", s.Run.CPerSecond(700));
            w.Number("soft_share", s.Structure?.SoftShare);
            w.Number("austenite_share", s.Structure?.AusteniteShare);
            w.Number("as_quenched_hrc", s.Hardness?.Value);
            w.Number("as_quenched_low_hrc", s.Hardness?.Low);
            w.Number("as_quenched_high_hrc", s.Hardness?.High);
        });
        w.Number("austenite_left_share", p.AusteniteLeft?.RoomShare);
        w.Number("austenite_after_cold_share", p.AusteniteLeft?.ColdShare);
        w.Object("loads", () =>
        {
            w.WriteNumber("at_once", p.Loads.AtOnce);
            w.WriteNumber("loads", p.Loads.Loads.Length);
            w.WriteBoolean("fits", p.Loads.Fits);
        });
        if (p.Bath is { } b)
        {
            w.Object("bath", () =>
            {
                w.Number("rise_by_rule_c", b.RiseRuleC);
                w.Number("rise_by_heat_c", b.RiseHeatC);
                w.Number("warmest_c", b.Warmest.Celsius);
                w.WriteNumber("in_a_row", b.InARow);
                w.Number("litres_for_a_load", b.LoadLitres);
            });
        }

        if (a.Temper is { } t)
        {
            w.Object("temper", () =>
            {
                w.WriteNumber("tempers", t.Cycle.Count);
                w.Number("hold_h", t.Cycle.HoldHours);
                w.WriteString("verdict", t.SetPoint?.Verdict.ToString().ToLowerInvariant() ?? "nothing wanted");
                w.Number("piece_c", t.SetPoint?.Steel?.Celsius);
                w.Number("set_c", t.SetPoint?.Set?.Celsius);
                Hrc(w, t.SetPoint?.Gives);
                w.List("aim_for_instead", t.SetPoint?.Instead ?? [], i =>
                {
                    w.Number("low_hrc", i.Band.LowHrc);
                    w.Number("high_hrc", i.Band.HighHrc);
                    w.Number("piece_c", i.At.Celsius);
                });
                w.WriteNumber("readings", t.Log.Bias.Readings);
                w.Number("learned_hrc", t.Log.Bias.MeanHrc);
                w.Number("learned_sd_hrc", t.Log.Bias.SdHrc);
            });
        }

        if (a.AtWish is { } wish)
        {
            w.Object("at_temper", () =>
            {
                w.Number("piece_c", wish.At.Celsius);
                Hrc(w, wish.Gives.Hrc);
            });
        }

        w.List("would_harden_in", a.Ways?.Media ?? [], m => w.WriteString("quenchant", m.Name));
        w.Number("hardens_up_to_mm", a.Ways?.Thickest?.Mm);
        w.List("steels_that_would", a.OtherSteels, s => w.WriteString("steel", s));
        w.List("remarks", p.Remarks, r => w.WriteString("remark", r));
    });

    // hardness along an end-quenched bar of the same steel; none where the formulas do not hold
    private static IEnumerable<(double Mm, double Hrc)> EndQuench(HeatPlan p)
        => p.Hardens?.Ideal is { } ideal && InSolution.Of(p.Subject.Steel) is { } x
            ? JominyHardness.DistancesMm.Zip(JominyHardness.Along(InitialHardness.Hrc(x.CarbonPercent), ideal.Mm))
            : [];

    // a second opinion on the slowest cooling that hardens, for steel up to half a per cent of carbon
    private static double? MartensiteRate(HeatPlan p)
        => p.Subject.Steel.Chemistry is { IsLowAlloy: true, CarbonPercent: <= 0.5 } bar ? MaynierRates.MartensiteCPerSecond(bar, MaynierRates.SoakCelsius(p.At.Celsius, Math.Max(1, p.SoakMinutes.LowMinutes) / 60)) : null;

    private static void Hrc(Utf8JsonWriter w, Estimate<double>? e)
    {
        w.Number("hrc", e?.Value);
        w.Number("low_hrc", e?.Low);
        w.Number("high_hrc", e?.High);
    }
}
