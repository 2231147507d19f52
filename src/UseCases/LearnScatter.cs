using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Writes what measured holes tell of a way of placing holes back into the maker's shop file.</summary>
public static class LearnScatter
{
    /// <summary>The words for the ways.</summary>
    public static ImmutableArray<string> Ways => ShopKeys.PlacingWays;

    /// <summary>What the measured pieces tell; null when they are too few.</summary>
    /// <param name="results">The plan with its measured pieces.</param>
    /// <param name="piece">Only this piece; null: all of them.</param>
    public static LearntScatter? Of(Results results, string? piece)
        => MachineScatter.Of([.. results.Measured.Where(p => piece is null || p.Piece == piece).Select(p => p.Fit)]);

    /// <summary>Writes it into the shop file that the plan uses: under the entry for that way and machine, or under a new one.</summary>
    /// <param name="planPath">The plan.</param>
    /// <param name="shopPath">The shop; null: looked for.</param>
    /// <param name="piece">Only this piece; null: all of them.</param>
    /// <param name="way">How the holes were placed.</param>
    /// <param name="machine">On which machine; empty: any.</param>
    /// <returns>Name of the file it was written to.</returns>
    public static Checked<string> Write(string planPath, string? shopPath, string? piece, string way, string machine)
        => OpenWork.Of(planPath, shopPath).Then(work =>
        {
            if (Of(work.WorkUp(), piece) is not { } learnt) return Bad(planPath, "too few measured holes to learn from", "measure at least two holes of a piece");
            var path = shopPath ?? OpenWork.ShopPlaces(planPath).Select(p => p.Path).FirstOrDefault(System.IO.File.Exists);
            if (path is null) return Bad(planPath, "there is no shop file of your own to write to", "copy one of the examples beside the plan as shop.toml");
            if (machine.Length > 0 && work.Shop.Machines.All(m => m.Name != machine)) return Bad(path, $"the shop has no machine \"{machine}\"", "choose from: " + string.Join(", ", work.Shop.Machines.Select(m => m.Name)));
            return TextFile.Read(path)
                .Then(text => ShopReader.ReadFile(text, path))
                .Then(file => Into(file, work.Shop, learnt, way, machine))
                .Then(file =>
                {
                    var faults = OutputFolder.Write([new OutputFile(path, Encoding.UTF8.GetBytes(file.Text))], overwrite: true);
                    return faults.IsEmpty ? Checked<string>.Good(path) : Checked<string>.Bad(faults);
                });
        });

    /// <summary>The shop file with what was learnt.</summary>
    internal static Checked<ShopFile> Into(ShopFile file, Shop shop, LearntScatter learnt, string way, string machine)
    {
        var sigma = Shown.Trimmed(learnt.Bound.Mm, 4) + " mm";
        var holes = learnt.Holes.ToString(CultureInfo.InvariantCulture);
        var which = (PlacingWay)Ways.IndexOf(way);
        if (!Ways.Contains(way)) return Checked<ShopFile>.Bad(Fault.OfFile("way", $"\"{way}\" is no way of placing holes", "choose from: " + string.Join(", ", Ways)));
        var own = file.Shop.Placings.Where(p => p.IsOwn).ToImmutableArray();
        var index = own.IndexOf(own.FirstOrDefault(p => p.Way == which && p.Machine == machine)!);
        if (index >= 0) return ShopEdit.Set(file, "placing", index, "measured_sigma", sigma).Then(f => ShopEdit.Set(f, "placing", index, "measured_holes", holes));
        var zone = shop.Placings.FirstOrDefault(p => p.Way == which && p.Machine.Length == 0)?.Zone ?? learnt.Zone;
        return ShopEdit.Add(file, "placing", [("way", way), ("machine", machine), ("zone", Shown.Trimmed(zone.Mm, 4) + " mm"), ("measured_sigma", sigma), ("measured_holes", holes)]);
    }

    private static Checked<string> Bad(string file, string message, string remedy) => Checked<string>.Bad(Fault.OfFile(file, message, remedy));
}
