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
    /// <summary>A hole or an outline may be this far off, mm; common practice for a small mill.</summary>
    public const double ToleranceMm = 0.05;

    /// <summary>How deep a tool may go into the spoil board, mm; common practice.</summary>
    public const double SpoilMm = 8;

    /// <summary>The program of a plan for a mill: spot all, drill all, ream, bore, profile last.</summary>
    /// <param name="results">What was computed.</param>
    /// <param name="mill">The mill.</param>
    public static Checked<MachineProgram> Of(Results results, Machine mill)
    {
        var left = new List<string>();
        var (plan, shop, bench) = (results.Plan, results.Shop, results.Bench);
        if (shop.Clamps.IsDefaultOrEmpty) return No("there is no clamp in the shop file, so nothing says where the tool must not go", "write a [[clamp]] with its size and height");
        var drilling = DrillPlan.Of(plan, shop with { Machines = [mill] }, results.Steel, results.Holes, bench);
        var made = drilling.Holes.Where(h => h.Machine is not null && !h.Hole.IsDrilledHard).ToImmutableArray();
        left.AddRange(drilling.Holes.Where(h => h.Machine is null).Select(h => $"hole {h.Hole.Name}: {h.Refusals.Select(r => r.Reason).FirstOrDefault("it cannot be made on this mill")}"));
        left.AddRange(drilling.Holes.Where(h => h.Machine is not null && h.Hole.IsDrilledHard).Select(h => $"hole {h.Hole.Name}: it is drilled after hardening"));

        var stock = StockOnTable.Of(results);
        var shift = Transform.Shift(-bench.Corner);
        var outline = plan.Outline.Transformed(shift);
        var profile = ProfileCut.Of(results, outline, mill);
        var clamps = ClampPlaces.Of(shop, stock, outline, made, bench.Corner, profile.Cut?.Mill);
        if (profile.Cut is not null && clamps.IsEmpty)
        {
            profile = new(null, "there is no room for two clamps outside the profile");
            clamps = ClampPlaces.Of(shop, stock, outline, made, bench.Corner, null);
        }

        if (clamps.IsEmpty) return No("there is no place for two clamps clear of the holes", "leave more steel at the ends (end_allowance), or write down a smaller clamp");
        if (profile.Cut is null) left.Add("outline: " + profile.Why);
        if (made.IsEmpty && profile.Cut is null) return No("nothing is left for it to do: " + string.Join("; ", left), "give the shop a tool for it, or make the holes on another machine");

        var travel = mill is { TravelX: { } x, TravelY: { } y } ? new Box(stock.Centre.X - (x.Mm / 2), stock.Centre.Y - (y.Mm / 2), stock.Centre.X + (x.Mm / 2), stock.Centre.Y + (y.Mm / 2)) : (Box?)null;
        var setUp = new ProgramSetUp(mill, bench.Corner, $"{bench.AlongFrom}; {bench.AcrossFrom}; upper face of the stock", stock, plan.Stock.Thickness.Mm, SpoilMm, travel, mill.TravelZ?.Mm, clamps);
        ImmutableArray<WantedHole> holes = [.. made.Select(h => new WantedHole(h.Hole.Name, shift.Map(h.Hole.MadeAt), h.Hole.MadeDiameter.Mm))];
        var path = ToolpathOf.The(plan, setUp, made, profile.Cut);
        return Checked<MachineProgram>.Good(new(path, setUp, new WantedPart(holes, profile.Cut is null ? null : outline, ToleranceMm), [.. left]));

        Checked<MachineProgram> No(string why, string remedy) => Checked<MachineProgram>.Bad([Fault.OfFile(mill.Name, why, remedy)]);
    }
}
