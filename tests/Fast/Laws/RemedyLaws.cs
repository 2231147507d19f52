using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;
using Tangwright.Tests.Rules;

namespace Tangwright.Tests.Laws;

/// <summary>Every way out that is offered is one: made in the text of the plan, it takes its finding away.</summary>
public class RemedyLaws
{
    /// <summary>Codes that offer no way, each with the reason.</summary>
    private static readonly Dictionary<string, string> NoWay = new(StringComparer.Ordinal)
    {
        [FindingCodes.OutlineCrossesItself] = "which loop is meant, only the maker knows",
        [FindingCodes.OutlineTooSmall] = "the outline itself is wrong, most often its unit",
        [FindingCodes.StockWidthTolerance] = "the bar has to be measured",
        [FindingCodes.InsideRadius] = "the outline has to be drawn anew there",
        [FindingCodes.BevelTakenAsFlat] = "nothing is wrong with the plan",
        [FindingCodes.JigCannotFollow] = "nothing is wrong with the plan",
        [FindingCodes.TargetWeight] = "steel can come off in many places",
        [FindingCodes.TargetBalance] = "steel can come off in many places",
        [FindingCodes.ThrustTooGreat] = "the machine or the drill is the trouble, not a line of the plan",
        [FindingCodes.PowerTooGreat] = "the machine is the trouble, not a line of the plan",
        [FindingCodes.ThroatTooShort] = "the piece is sawn out first, or another machine taken",
        [FindingCodes.ViseTooNarrow] = "how the stock is held is no line of the plan",
        [FindingCodes.CannotBore] = "how true the hole must be, only the maker knows",
        [FindingCodes.DrilledHard] = "why it is drilled late, only the maker knows",
        [FindingCodes.TableTooSmall] = "a support goes under the far end",
        [FindingCodes.BeyondTravel] = "nothing is wrong with the plan: the piece is clamped anew",
        [FindingCodes.ClampInTheWay] = "clamps are moved at the bench",
        [FindingCodes.ThinStock] = "nothing is wrong with the plan: a board goes under it",
        [FindingCodes.DrillTooLong] = "another drill is taken",
        [FindingCodes.NoDrillBeforeReaming] = "a drill is missing, not a line of the plan",
        [FindingCodes.SawCannotCross] = "the saw is the trouble, not a line of the plan",
        [FindingCodes.SawTeeth] = "a blade is missing, not a line of the plan",
        [FindingCodes.SteelUnknown] = "a file for the steel is missing, not a line of the plan",
        [FindingCodes.MeasuredNotInPlan] = "the measured file has to be mended, not the plan",
        [FindingCodes.MeasuredFarOff] = "the hole has to be measured again",
        [FindingCodes.MeasuredRod] = "the piece is mended, not the plan",
        [FindingCodes.MeasuredScrap] = "the piece is lost, not the plan",
        [FindingCodes.MeasuredIncomplete] = "the other holes have to be measured",
        [FindingCodes.NearFlashPoint] = "the oil is the trouble, not a line of the plan",
        [FindingCodes.OilTooLittle] = "the tank is the trouble, not a line of the plan",
        [FindingCodes.WantsOven] = "the oven is the trouble, not a line of the plan",
        [FindingCodes.OvenTooSmall] = "the oven is the trouble, not a line of the plan",
        [FindingCodes.QuenchantUnknown] = "a file for the quenchant is missing, not a line of the plan",
        [FindingCodes.HandleMaterialUnknown] = "a file for the material is missing, not a line of the plan",
        [FindingCodes.ScalesNotDrawn] = "where the scales begin, only the maker knows",
        [FindingCodes.ScalesOverBevel] = "where the scales begin, only the maker knows",
        [FindingCodes.PinNearScaleEdge] = "whether the pin is moved or made thinner, only the maker knows",
        [FindingCodes.WoodMoves] = "the wood has to be dried or dampened, not the plan changed",
        [FindingCodes.GlueSetsFirst] = "the glue is the trouble, not a line of the plan",
        [FindingCodes.HandNearEdge] = "edge, handle or guard: only the maker knows",
        [FindingCodes.HotSpot] = "how the edges are broken, only the maker knows",
        [FindingCodes.CordUnknown] = "the cord has to be measured",
        [FindingCodes.SheathNone] = "an edge guard covers the edge instead",
        [FindingCodes.SteelNoDensity] = "a line of the steel's file is missing",
    };

    public static TheoryData<string, bool> Plans()
    {
        var data = new TheoryData<string, bool>();
        foreach (var folder in new[] { Repository.Path("examples"), Repository.Path("examples", "broken") })
        {
            foreach (var file in System.IO.Directory.EnumerateFiles(folder, "*.plan.toml").Order(StringComparer.Ordinal))
            {
                if (!PlanReader.Read(System.IO.File.ReadAllText(file), file).IsGood) continue;
                foreach (var own in new[] { true, false }) data.Add(System.IO.Path.GetRelativePath(Repository.Path("examples"), file), own);
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void A_way_out_takes_its_finding_away(string name, bool ownShop)
    {
        foreach (var (file, finding, way) in WaysOf(name, ownShop, out var shop))
        {
            var made = RemedyEdit.Make(file, way);
            Assert.True(made.IsGood, $"{name}, {finding.Code}, {way.Says}: " + string.Join("; ", made.Faults));
            Assert.NotEqual(file.Text, made.Value.Text);
            var before = WorkUp.Of(file.Plan, shop, FindingExamples.SteelOf(file.Plan)).Findings;
            var after = WorkUp.Of(made.Value.Plan, shop, FindingExamples.SteelOf(made.Value.Plan)).Findings;
            var still = after.Count(f => f.Code == finding.Code && f.Where == finding.Where);
            Assert.True(
                still < before.Count(f => f.Code == finding.Code && f.Where == finding.Where) && after.Count(f => f.Code == finding.Code) < before.Count(f => f.Code == finding.Code),
                $"{name}, {finding.Code}, {finding.Where}: {way.Says} leaves it:\n" + string.Join("\n", after.Where(f => f.Code == finding.Code).Select(f => f.Where + ": " + f.Message)));
        }
    }

    [Fact]
    public void Every_code_offers_a_way_or_has_a_reason_not_to()
    {
        var offered = Plans().Select(p => p.Data).SelectMany(p => WaysOf(p.Item1, p.Item2, out _)).Select(w => w.Finding.Code).ToHashSet(StringComparer.Ordinal);
        Assert.Equal(FindingCodes.All.Select(c => c.Code).Where(c => !NoWay.ContainsKey(c)).Order(StringComparer.Ordinal), offered.Order(StringComparer.Ordinal));
    }

    private static List<(PlanFile File, Finding Finding, RemedyWay Way)> WaysOf(string name, bool ownShop, out Shop shop)
    {
        var path = Repository.Path("examples", name);
        var file = PlanReader.Read(System.IO.File.ReadAllText(path), path).Value;
        shop = ownShop ? FindingExamples.ShopOf(path) : ShopReader.BuiltIn;
        return [.. WorkUp.Of(file.Plan, shop, FindingExamples.SteelOf(file.Plan)).Findings.SelectMany(f => f.Ways.Select(w => (file, f, w)))];
    }
}
