using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a program for a mill does, how the stock lies and what must be left behind.</summary>
/// <param name="Path">The toolpath.</param>
/// <param name="SetUp">How the stock lies.</param>
/// <param name="Wanted">What must be left behind.</param>
/// <param name="LeftOut">What the program does not do, and why; empty when it does all.</param>
public sealed record MachineProgram(Toolpath Path, ProgramSetUp SetUp, WantedPart Wanted, ImmutableArray<string> LeftOut)
{
    /// <summary>Where tabs hold the piece in the stock, on the way of the tool, from the program's zero, mm.</summary>
    public ImmutableArray<Point> Tabs { get; init; } = [];

    /// <summary>Inside corners left round, for the file.</summary>
    public ImmutableArray<RoundCorner> ToFile { get; init; } = [];

    /// <summary>A hole or an outline may be this far off, mm; common practice for a small mill.</summary>
    public const double ToleranceMm = 0.05;

    /// <summary>How deep a tool may go into the spoil board, mm; common practice.</summary>
    public const double SpoilMm = 8;

    /// <summary>The program of a plan for a mill: spot all, drill all, ream, bore, profile last.</summary>
    /// <param name="results">What was computed.</param>
    /// <param name="mill">The mill.</param>
    /// <param name="choice">What it is asked to do.</param>
    public static Checked<MachineProgram> Of(Results results, Machine mill, ProgramChoice choice)
    {
        var left = new List<string>();
        var (plan, shop, bench) = (results.Plan, results.Shop, results.Bench);
        if (shop.Clamps.IsDefaultOrEmpty) return No("there is no clamp in the shop file, so nothing says where the tool must not go", "write a [[clamp]] with its size and height");
        ImmutableArray<PlacedHole> pins = choice.Work == ProgramWork.Profile ? PinPlaces.Of(results.Holes, bench.Corner) : [];
        if (choice.Work == ProgramWork.Profile && pins.IsEmpty) return No("there are no two holes for pins to go through", "cut holes and profile in one clamping");
        var zeroHole = choice.ZeroHole is { } name ? results.Holes.FirstOrDefault(h => h.Name == name) : pins.FirstOrDefault();
        if (choice.ZeroHole is { } asked && zeroHole is null) return No($"the plan has no hole \"{asked}\" to take as zero", "choose from: " + string.Join(", ", results.Holes.Select(h => h.Name)));
        var zero = zeroHole?.MadeAt ?? bench.Corner;

        ImmutableArray<HolePlan> made = [];
        if (choice.Work == ProgramWork.Profile) left.Add("holes: they are made in the clamping before");
        else made = Makes(DrillPlan.Of(plan, shop with { Machines = [mill] }, results.Steel, results.Holes, bench), left);
        var stock = StockOnTable.Of(results, zero);
        var shift = Transform.Shift(-zero);
        var outline = plan.Outline.Transformed(shift);
        var profile = choice.Work == ProgramWork.Holes ? (Cut: null, Why: "it is cut in the clamping after") : ProfileCut.Of(results, outline, mill, zero);
        var clamps = ClampPlaces.Of(shop, stock, outline, made, zero, profile.Cut?.Mill);
        WantedHole Wanted(PlacedHole h) => new(h.Name, shift.Map(h.MadeAt), h.MadeDiameter.Mm);
        ImmutableArray<WantedHole> onPins = [.. pins.Select(Wanted)];
        if (clamps.IsEmpty && !onPins.IsEmpty) clamps = PinPlaces.Nuts(onPins, outline);
        if (profile.Cut is not null && clamps.IsEmpty)
        {
            profile = new(null, "there is no room for two clamps outside the profile");
            clamps = ClampPlaces.Of(shop, stock, outline, made, zero, null);
        }

        if (clamps.IsEmpty) return No("there is no place for two clamps clear of the holes", "leave more steel at the ends (end_allowance), or write down a smaller clamp");
        if (profile.Cut is null) left.Add("outline: " + profile.Why);
        else left.AddRange(profile.Cut.Corners.Select(c => $"inside corner at x {Shown.Mm(Length.OfMm(c.At.X + zero.X))}, y {Shown.Mm(Length.OfMm(c.At.Y + zero.Y))} of the plan: the {profile.Cut.Mill.Name} leaves {Shown.Mm(Length.OfMm(c.Mm))}; file it"));
        if (made.IsEmpty && profile.Cut is null) return No("nothing is left for it to do: " + string.Join("; ", left), "give the shop a tool for it, or make the holes on another machine");

        var travel = mill is { TravelX: { } x, TravelY: { } y } ? new Box(stock.Centre.X - (x.Mm / 2), stock.Centre.Y - (y.Mm / 2), stock.Centre.X + (x.Mm / 2), stock.Centre.Y + (y.Mm / 2)) : (Box?)null;
        var setUp = new ProgramSetUp(mill, zero, ZeroText.Of(bench, zeroHole, pins.Length > 0), stock, plan.Stock.Thickness.Mm, SpoilMm, travel, mill.TravelZ?.Mm, clamps) { Pins = onPins };
        var path = ToolpathOf.The(plan, setUp, made, profile.Cut);
        return Checked<MachineProgram>.Good(new(path, setUp, new WantedPart([.. made.Select(h => Wanted(h.Hole))], profile.Cut?.Shape, ToleranceMm), [.. left])
        {
            Tabs = [.. profile.Cut?.TabCentres ?? []],
            ToFile = profile.Cut?.Corners ?? [],
        });

        Checked<MachineProgram> No(string why, string remedy) => Checked<MachineProgram>.Bad([Fault.OfFile(mill.Name, why, remedy)]);
    }

    /// <summary>The holes it makes; the others go to <paramref name="left"/> with the reason.</summary>
    private static ImmutableArray<HolePlan> Makes(DrillPlan drilling, List<string> left)
    {
        left.AddRange(drilling.Holes.Where(h => h.Machine is null).Select(h => $"hole {h.Hole.Name}: {h.Refusals.Select(r => r.Reason).FirstOrDefault("it cannot be made on this mill")}"));
        left.AddRange(drilling.Holes.Where(h => h.Machine is not null && h.Hole.IsDrilledHard).Select(h => $"hole {h.Hole.Name}: it is drilled after hardening"));
        return [.. drilling.Holes.Where(h => h.Machine is not null && !h.Hole.IsDrilledHard)];
    }
}
