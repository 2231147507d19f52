using System.Text.RegularExpressions;

namespace Tangwright.Tests;

/// <summary>What the README and the pages say can be typed, typed.</summary>
public sealed partial class DocumentedCommands : IDisposable
{
    private readonly Scratch _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void The_readme_starts_with_two_commands_that_exist()
    {
        var block = ShellBlock().Match(Repository.Text("README.md")).Groups["text"].Value;
        string[] commands = [.. block.Split('\n').Select(l => l.Split('#')[0].Trim()).Where(l => l.Length > 0)];
        Assert.Equal(["./tangwright packet examples/skeleton-hatchet.plan.toml", "./check"], commands);
        Assert.Contains("\n./check\n", Repository.Text(".ci", "run"), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_command_of_the_readme_runs()
    {
        System.IO.File.Copy(Repository.Path("tests", "fixtures", "drawings", "ezdxf-r2010-sheet.dxf"), _scratch.Path("drawing.dxf"));
        System.IO.File.Copy(Repository.Path("examples", "skeleton-hatchet.plan.toml"), _scratch.Path("old-hatchet.plan.toml"));
        _scratch.PutExample("skeleton-knife");
        var lines = Command().Matches(Repository.Text("README.md")).Select(m => m.Groups["words"].Value)
            .Where(l => !l.StartsWith("desk", StringComparison.Ordinal)) // it runs until it is ended: tests/Desk starts it
            .ToArray();
        Assert.True(lines.Length >= 7);
        foreach (var line in lines)
        {
            var words = Word().Matches(line).Select(m => m.Value.Trim('"')).ToArray();
            var run = ProgramRun.Of(_scratch.Folder, words);
            Assert.True(run.Exit is 0 or 1, $"tangwright {line}: {run.Exit} {run.Error}");
        }
    }

    [Fact]
    public void The_page_on_json_shows_what_comes()
    {
        var plan = _scratch.PutExample("skeleton-hatchet");
        var figures = ProgramRun.Of(_scratch.Folder, "figures", plan, "--json").Out;
        var check = ProgramRun.Of(_scratch.Folder, "check", plan, "--json").Out;
        var holes = ProgramRun.Of(_scratch.Folder, "holes", _scratch.PutExample("paring-knife"), "--json").Out;
        var fits = ProgramRun.Of(_scratch.Folder, "fits", "1/4 in", "--pin", "m6", "--shop", _scratch.Put("none.shop.toml", System.IO.File.ReadAllText(Repository.Path("examples", "paring-knife.shop.toml"))), "--json").Out;
        var pins = ProgramRun.Of(_scratch.Folder, "fits", _scratch.PutExample("kitchen-knife"), "--json").Out;
        var assembly = ProgramRun.Of(_scratch.Folder, "assembly", "kitchen-knife.plan.toml", "--trials", "1000", "--json").Out;
        var stock = ProgramRun.Of(_scratch.Folder, "stock", "kitchen-knife.plan.toml", "--good", "3", "--yield", "88%", "--json").Out;
        var roughcut = ProgramRun.Of(_scratch.Folder, "roughcut", _scratch.PutExample("skeleton-knife"), "--cuts", "2", "--json").Out;
        var bevels = ProgramRun.Of(_scratch.Folder, "bevels", "paring-knife.plan.toml", "--stations", "2", "--measured-thickness", "1.57 mm", "--wheel", "8 in", "--json").Out;
        var heat = ProgramRun.Of(_scratch.Folder, "heat", "--steel", "8670", "--thickness", "1/4 in", "--quenchant", "fast oil", "--harden", "1500 F", "--temper", "450 F", "--json").Out;
        var handle = ProgramRun.Of(_scratch.Folder, "handle", "kitchen-knife.plan.toml", "--pieces", "8", "--board", "400 x 120 x 27 mm", "--json").Out;
        var finish = ProgramRun.Of(_scratch.Folder, "finish", "kitchen-knife.plan.toml", "--last", "P400", "--tempered", "190 C", "--json").Out;
        var balance = ProgramRun.Of(_scratch.Folder, "balance", "kitchen-knife.plan.toml", "--to", "10", "--weight", "160 g", "--levers", "tang-taper,scales", "--json").Out;
        var program = ProgramRun.Of(_scratch.Folder, "program", "skeleton-knife.plan.toml", "--out", "knife.ngc", "--json").Out;
        var packet = ProgramRun.Of(_scratch.Folder, "packet", "skeleton-hatchet.plan.toml", "--out", "packet", "--json").Out;
        System.IO.File.Copy(Repository.Path("tests", "fixtures", "drawings", "cairo-piece.svg"), _scratch.Path("drawing.svg"));
        var import = ProgramRun.Of(_scratch.Folder, "import", "drawing.svg", "--thickness", "1/8 in", "--json").Out;
        _scratch.Put("old.plan.toml", System.IO.File.ReadAllText(plan).Replace("diameter = 16", "diameter = 15", StringComparison.Ordinal));
        var compare = ProgramRun.Of(_scratch.Folder, "compare", "old.plan.toml", plan, "--json").Out;
        foreach (var (hole, at) in new[] { ("L3", "147.22,17.55"), ("L1", "100.04,18.15"), ("lanyard", "257.9,18.02") }) ProgramRun.Of(_scratch.Folder, "measure", plan, "--hole", hole, "--at", at, "--from", "plan", "--date", "2026-03-31");
        var measure = ProgramRun.Of(_scratch.Folder, "measure", plan, "--json").Out;
        var page = $"""
            # Numbers for other programs

            `tangwright figures PLAN --json` and `tangwright check PLAN --json` put JSON alone on standard output; messages go to standard error. Names carry their unit and are stable: they may be added to, never renamed. Lengths are in mm in the plan's own axes unless the name says otherwise; `null` stands where something is not known, never 0. `packet` writes the first as `figures.json`.

            `stage` is one of `blank` (as sawn), `profiled`, `drilled`, `before_hardening`, `finished`. `balance_from_datum_mm` counts from the plan's datum into the piece. `striking` is `null` without a grip. `severity` is `error`, `warning` or `note`, as in SARIF 2.1.0; what each `code` means stands in [findings.md](findings.md).

            ## `figures` of the skeleton hatchet

            ```json
            {figures}```

            ## `check` of the skeleton hatchet

            ```json
            {check}```

            ## `holes` of the paring knife

            How each hole is made. `machine` is `null` when no machine of the shop can make it; `pilot_machine` then names the one that can drill its pilot, and `operations` holds that pilot alone. `low_rpm` to `high_rpm` is the band, `target_rpm` its middle, `set_rpm` a speed the machine has; `null` means by hand. `thrust`, `torque` and `power` are bands from two published models. `refusals` tell for each machine that cannot make the hole why not.

            ```json
            {holes}```

            ## `fits` of a size

            Limits of hole and pin and what they make together; a clearance under 0 is overlap. `fit` is one of `slides`, `may slide or press`, `press`. `left_to_ream_least_mm` to `left_to_ream_most_mm` is the steel to leave on the diameter, `drilled_least_mm` to `drilled_most_mm` what a drill of the size makes. `off_mm` is drill less size; `null` stands where a series has no such drill.

            ```json
            {fits}```

            ## `fits` of the kitchen knife

            Each hole that takes a rod or is reamed. `rod_said` is `false` where the plan does not name the rod and one as sold was taken; the clearances are left out where they cannot be told.

            ```json
            {pins}```

            ## `assembly` of the kitchen knife, 1000 trials for each way

            `chance` is the share of trials in which all pins go through, with its interval of 95 in 100 in `chance_low` and `chance_high`; `undecided` trials were proven neither way and count as not through, at the upper end of the interval as through. `chance_widest_scatter` and `chance_least_scatter` take the way at the ends of what is commonly found; where it was `measured` they are the chance itself. `tang_hole_for_wanted_mm` is `null` when the scales' own holes do not allow the chance asked; `floating_hole_mm` and `fixed_tang_hole_mm` are the drawing standard's. `rows` are told for every way the shop has.

            ```json
            {assembly}```

            ## `stock` of three kitchen knives

            Starts, bars and cuts. `chance_low` and `chance_high` are the chances at the ends of the yield's band; both equal `chance` when the yield was said. `along_mm` and `up_mm` are the box around a piece, from the bar's left end and its lower long edge. `least_gap_mm` is the gap found on the true outline, looked for up to twice the clearance; `null` with one piece. `rack` is `null` for a new bar.

            ```json
            {stock}```

            ## `roughcut` of the skeleton knife, two cuts

            Saw cuts in order. `from` and `to` are where a cut begins and ends on the piece as it then is, in the plan's axes; `marks` lie on the rim of the uncut blank, so that the line can be laid off with a rule, one for a cut that stops in a `pocket` (else `null`). `least_gap_mm` is the least distance of a cut from the true outline, `null` without cuts. `offcuts_mm2`, `kerf_mm2` and `left_mm2` add up to `blank_mm2`. `share_by_cuts` tells what the best straight cuts take of the waste, whatever the saw holds; `hull_share` bounds it. Times are planning values between `_low` and `_high`. `hollows` stay for the grinder; a chain of holes is `null` where none fits. Heights and stations of `profiled` count from `along_from` and `across_from`.

            ```json
            {roughcut}```

            ## `bevels` of the paring knife, two stations

            Stations along the edge, square to it. Angles are of the straight line from edge to shoulder; `soft_…` is `null` for a bevel ground after hardening. `thickness` is before sharpening. `scribe_measured` is `null` throughout when no bar was measured. `answer` of a wheel is `good`, `good with note`, `thin`, `refused` or `cuts through`; `thinnest_mm` is `null` when it cuts through. `leave_mm` is `null` when the bevel is ground hard.

            ```json
            {bevels}```

            ## `finish` of the kitchen knife to P400, tempered at 190 °C

            Belts and papers in order. `stage` is `soft` or `hard`; the first step of a stage grinds the bevels down and has no `ratio` and no `per_face_um`. `per_face_um` is what comes off each face, `grams` what comes off the piece; `edge_mm` is the thickness of the edge when the step is done. Minutes are `null` by hand until they are logged. `heat` tells what may come off one face between two dips, for one belt; `seconds` is the time on one spot of the belt's width.

            ```json
            {finish}```
            ## `heat` of a quarter inch of 8670 in fast oil

            `verdict` is `hardens through`, `marginal`, `will not harden` or `not known`; two methods, marginal where they disagree. `stations` are the thicknesses in the quench, edge first; `soft_share` is pearlite, bainite and ferrite, `austenite_share` what is left at 25 °C. `set_c` is what the oven is set to, its error counted in; `heat_up_…` is before the soak begins. `end_quench` is hardness along an end-quenched bar (ASTM A255), `martensite_rate_c_per_s` a second opinion for steel up to 0.5 % carbon; both are left out where they do not hold. `bath` is there when the volume is known and the weight of a piece. `temper` is for the hardness wanted, `at_temper` for the temperature asked for.

            ```json
            {heat}```
            ## `handle` of the kitchen knife, eight pieces and a board

            `kind` is `scales`, `cord` or `bare`. `parts` are what the handle puts on the steel. `flush_mm` is a rod flush with both scales, `cut_mm` what it is sawn to. `holes` are those of the tang under the scales; `loose_mm` is how much larger than the thinnest rod a hole is that takes no pin. `wood` is there when a scale is wood whose movement is known; below 0 it shrinks. `cuts` are across the handle, front to rear; `grip` is guidance, `survey` says that the hands are those of the survey.

            ```json
            {handle}```

            ## `balance` of the kitchen knife to 10 mm and 160 g, by the tang and the scales

            Each lever by itself: `value` alone brings the balance there when `reaches` is true, else it comes nearest within `least` and `most`. `mass_g_per_unit` and `balance_mm_per_unit` are for one more mm, or gram, of it; the ones per 1/64 in are `null` for a weight. `together` is the least change of all of them that meets what is wanted; both `then` are the true figures.

            ```json
            {balance}```

            ## `program` of the skeleton knife

            What was written, after it passed the check. Places are from the program's zero; `left_out` tells what the program does not make and why. Times are those at the programmed feeds: speeding up and slowing down are not counted.

            ```json
            {program}```

            ## `compare` of the skeleton hatchet with L1 drilled 15 mm, and as it is

            What changed from the first plan to the second. `outline` is `null` when it is the same; `apart_mm` is the greatest distance between the two outlines. `was` or `now` of a hole is `null` when it was added or is gone. `figures` are those that changed, each `key` with its unit; `values` are told in words.

            ```json
            {compare}```

            ## `measure` of the skeleton hatchet, three holes of its guide piece measured

            Places are in the plan's axes. `position_mm` is the position error as a diameter, from the edges; `position_fitted_mm` what is left of it after the fit of least squares, `position_passing_mm` after the fit that lets the worst hole come off best. `allowed_mm` is `null` where no rod is named, `scatter` where too little was measured; `bound_95_mm` is what the scatter stays under with 95 in 100. `action` is one of `accept`, `open up`, `thicker rod`, `scrap`, `measure again`; `to_mm` the size to open to or the rod to use.

            ```json
            {measure}```

            ## `packet` of the skeleton hatchet (`template` gives the same)

            ```json
            {packet}```

            ## `import` of a drawing

            ```json
            {import}```

            """;
        GeneratedPage.Check(page.ReplaceLineEndings("\n"), "docs", "json.md");
    }

    [GeneratedRegex("```sh\n(?<text>.*?)```", RegexOptions.Singleline)]
    private static partial Regex ShellBlock();

    [GeneratedRegex(@"`\./tangwright (?<words>[^`]+)`")]
    private static partial Regex Command();

    [GeneratedRegex("\"[^\"]*\"|[^ ]+")]
    private static partial Regex Word();
}
