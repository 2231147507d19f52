using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Rs274;

/// <summary>Good programs pass; the same programs with one thing broken do not, and the trouble is named. The kinds are those of the bench: a crash, a spoilt part, a program that means something else on another day.</summary>
public class ProgramCheckTests
{
    private const string Over = "S900 M3\nG0 Z20\n";

    // what is broken, the trouble it must be told as, and what is written instead of what
    private static readonly (string Name, string Kind, (string Old, string New)[] Changes)[] All =
    [
        ("a rapid through a clamp", "clamp", [(Over, Over + "G0 Z5\nG0 X5 Y15\nG0 Z20\n")]),
        ("a rapid that just grazes a clamp", "clamp", [(Over, Over + "G0 X86.5 Y27\nG0 Z11.9\nG0 Z20\n")]),
        ("a slanted rapid into a clamp", "clamp", [(Over, Over + "G0 X-30 Y15\nG0 X50 Y15 Z5\nG0 Z20\n")]),
        ("a cut into a clamp", "clamp", [("G1 Y11\nG2 X76 Y4", "G1 X86\nG1 X83\nG1 Y11\nG2 X76 Y4")]),
        ("an arc into a clamp", "clamp", [("G1 Z-2.6 F60\n", "G1 Z-2.6 F60\nG2 X17 Y15 I-4 J0 F200\n")]),
        ("a rapid plunge into steel", "rapid through stock", [("G1 Z-2.6 F60\n", "G0 Z-2.6 F60\n")]),
        ("a rapid sideways at depth", "rapid through stock", [("G1 X50 Y15\nG0 Z20\nG0 X17 Y15\nG0 Z1\n", "G1 X50 Y15\nG0 X17 Y15\n")]),
        ("a rapid to a height to feed from that lies in steel", "rapid through stock", [("Z-2 R2 F100", "Z-2 R-1 F100")]),
        ("a rapid into the spoil board", "rapid through stock", [("G0 X17 Y15\n", "G0 X-2 Y35\nG0 Z-6\nG0 Z20\nG0 X17 Y15\n")]),
        ("a rapid into a hole smaller than the tool", "rapid through stock", [("G0 X52 Y15\nG0 Z1\n", "G0 X68 Y15\nG0 Z1\nG0 X68.3\nG0 Z-5.2\nG0 Z20\nG0 X52 Y15\nG0 Z1\n")]),
        ("a spindle never started", "spindle", [("S4000 M3", "S4000")]),
        ("a spindle stopped too early", "spindle", [("G1 Z-5.2\nG1 Y19", "M5\nG1 Z-5.2\nG1 Y19")]),
        ("a spindle turning backwards", "spindle", [("S900 M3", "S900 M4")]),
        ("a speed of nothing", "spindle", [("S1200 M3", "S0 M3")]),
        ("no tool in the spindle", "tool", [("T1 M6\nG43 H1\n", "")]),
        ("a tool that is not there", "tool", [("T3 M6", "T7 M6")]),
        ("a tool change without a tool", "tool", [("T1 M6\nG43 H1", "M6")]),
        ("the spot drill instead of the drill", "cuts the part", [("T3 M6\nG43 H3", "T1 M6\nG43 H1")]),
        ("a drill a size too large", "hole size", [("T4 M6\nG43 H4\nS300 M3\nG0 Z20\nG85 X68 Y15 Z-5.5 R2 F60\nG80\n", "")]),
        ("a reamer without a hole to follow", "reamer", [("G83 X68 Y15 Z-7.2 R2 Q3 F80\n", "")]),
        ("a drill moved sideways in the work", "sideways", [("G82 X30 Y15 Z-7.3", "G0 X30 Y15\nG1 Z-1 F80\nG1 X29.5\nG0 Z20\nG82 X30 Y15 Z-7.3")]),
        ("a hole not through", "hole depth", [("X30 Y15 Z-7.3", "X30 Y15 Z-6.5")]),
        ("a hole too deep", "spoil board", [("X30 Y15 Z-7.3", "X30 Y15 Z-8.1")]),
        ("a hole at a wrong place", "hole place", [("X30 Y15 Z-7.3", "X30.08 Y15 Z-7.3")]),
        ("a hole at a very wrong place", "cuts the part", [("X30 Y15 Z-7.3", "X36 Y15 Z-7.3")]),
        ("a hole forgotten", "hole missing", [("X68\nG80", "G80"), ("G83 X68 Y15 Z-7.2 R2 Q3 F80\n", ""), ("G85 X68 Y15 Z-5.5 R2 F60\n", "")]),
        ("a hole bored too large", "hole size", [("X52 Y15", "X52.1 Y15"), ("I-2 J0", "I-2.1 J0")]),
        ("a bore not finished with a circle", "hole shape", [("G3 X52 Y15 I-2 J0\n", "")]),
        ("a table sent too far", "travel", [(Over, Over + "G0 X131\n")]),
        ("an arc that bulges beyond the table", "travel", [(Over, Over + "G0 Y76\nG0 X50\nG2 X60 Y76 I5 J0 F100\n")]),
        ("a spindle sent too high", "travel", [(Over, Over + "G0 Z94\n")]),
        ("a profile not through", "outline", [("G1 Z-5.2\n", "G1 Z-4.9\n")]),
        ("a profile left proud at one end", "outline", [("G1 X76\nG2 X83 Y19 I0 J-7\nG1 Y11\nG2 X76 Y4", "G1 X76.1\nG2 X83.1 Y19 I0 J-7\nG1 Y11\nG2 X76.1 Y4")]),
        ("a profile that cuts into the part", "cuts the part", [("G1 X47\nG1 Z-4.2", "G1 X40 Y25.9\nG1 X47 Y26\nG1 Z-4.2")]),
        ("a corner cut straight", "cuts the part", [("G2 X24 Y26 I7 J0", "G1 X24 Y26")]),
        ("an arc the wrong way round", "cuts the part", [("G1 Y11\nG2 X76 Y4 I-7 J0", "G1 Y11\nG3 X76 Y4 I-7 J0")]),
        ("a part without tabs", "loose part", [("G1 Z-4.2", "G1 Z-5.2")]),
        ("a tab as long as a forgotten stretch", "outline", [("G1 X53\nG1 Z-5.2\nG1 X76", "G1 X70\nG1 Z-5.2\nG1 X76")]),
        ("a profile left out", "outline", [("G1 Z-2.6 F60\n", "G0 Z20\nM5\nM2\n")]),
        ("a cut without a feed", "feed", [("Z-2 R2 F100", "Z-2 R2")]),
        ("a feed meant in another unit", "feed", [("P0.2 F80", "P0.2 F2032")]),
        ("a core left in a bore", "hole core", [("X50 Y15\nG80\nT3", "G80\nT3"), ("X52 Y15", "X53.5 Y15"), ("I-2 J0", "I-3.5 J0"), ("G1 X50 Y15\nG0 Z20", "G0 Z20")]),
        ("an arc whose end does not fit its centre", "arc", [("G2 X24 Y26 I7 J0", "G2 X24 Y26 I7 J0.01")]),
        ("an arc without a centre", "arc", [("G2 X24 Y26 I7 J0", "G2 X24 Y26")]),
        ("a pecking cycle without a bite", "cycle", [("Q3 ", "")]),
        ("a cycle whose bottom lies above its start", "cycle", [("Z-7.3 R2", "Z-7.3 R-8")]),
        ("a cycle without a depth", "cycle", [("Z-7.2 ", "")]),
        ("a program without an end", "end", [("M2\n%", ""), ("%\n(plate", "(plate")]),
        ("a tool left in the work", "end", [("G1 Y15\nG0 Z20\nM5\nM2", "G1 Y15\nM5\nM2")]),
        ("no unit", "start", [("G17 G21 ", "G17 ")]),
        ("no word for absolute places", "start", [("G80 G90", "G80")]),
        ("no word for how far a cycle draws out", "start", [("G98\n", "")]),
        ("another height to draw out to within a cycle", "cycle", [("X50\nX68", "X50\nG99 X68")]),
        ("a first move sideways", "start", [("G0 Z20\nG0 X30 Y15\n", "G0 X30 Y15\nG0 Z20\n")]),
        ("a tool change between the clamps", "tool change", [("T5 M6", "G0 Z10\nT5 M6")]),
        ("the length of another tool", "tool length", [("G43 H3", "G43 H2")]),
        ("a length forgotten", "tool length", [("G43 H5\n", "G49\n")]),
        ("a parameter", "reading", [("Z-7.3", "Z#1")]),
        ("a value to be worked out", "reading", [("Z-7.3", "Z[0-7.3]")]),
        ("a subprogram", "reading", [("T5 M6", "O100 CALL\nT5 M6")]),
        ("a line that may be skipped", "reading", [("S4000 M3", "/S4000 M3")]),
        ("another zero", "reading", [("G49 G54", "G49 G55")]),
        ("a shifted zero", "reading", [("G61\n", "G61\nG92 X1\n")]),
        ("a stored place", "reading", [("T5 M6", "G28\nT5 M6")]),
        ("a unit changed half way", "reading", [("T5 M6", "G20\nT5 M6")]),
        ("a word twice", "reading", [("G0 X17 Y15", "G0 X17 X18 Y15")]),
        ("two motions in one line", "reading", [("G0 X17 Y15", "G0 G1 X17 Y15")]),
        ("a letter instead of a digit", "reading", [("X30 Y15 Z-7.3", "X3O Y15 Z-7.3")]),
        ("a remark that does not end", "reading", [("(plate, three holes)", "(plate, three holes")]),
        ("another plane", "reading", [("G17 ", "G18 ")]),
        ("steps taken for places", "travel", [("G0 X17 Y15\n", "G91\nG0 X17 Y15\n")]),
        ("corners rounded at will", "rounded corners", [("G61\n", "G64\n")]),
        ("corners rounded too much", "rounded corners", [("G61\n", "G64 P0.1\n")]),
    ];

    private static readonly (string Name, string Kind, string Old, string New)[] Compensated =
    [
        ("compensation to the wrong side", "cuts the part", "G41 D5", "G42 D5"),
        ("compensation for another tool", "compensation", "G41 D5", "G41 D2"),
        ("compensation never turned off", "compensation", "G40 G1 X16 Y20\n", ""),
        ("compensation begun on an arc", "compensation", "G41 D5 G1 X20 Y15 F240\nG1 Y19\n", "G1 X20 Y19 F240\nG41 D5\n"),
        ("a lead-in shorter than the tool's radius", "compensation", "G0 X16 Y8\n", "G0 X18 Y14\n"),
        ("a drill cycle under compensation", "compensation", "G40 G1 X16 Y20\n", "G81 X16 Y20 Z-1 R2\nG40 G1 X16 Y20\n"),
        ("a corner the tool does not fit into", "compensation", "G1 X47\n", "G1 X40\nG1 Y24\nG1 X42\nG1 Y23\nG1 X47\n"),
    ];

    public static TheoryData<string> Broken => [.. All.Select(b => b.Name)];

    public static TheoryData<string> BrokenCompensated => [.. Compensated.Select(b => b.Name)];

    [Fact]
    public void Good_programs_have_no_trouble()
    {
        Assert.Empty(HandMade.Troubles(HandMade.Whole));
        Assert.Empty(HandMade.ProfileTroubles(HandMade.Compensated));
    }

    [Theory]
    [MemberData(nameof(Broken))]
    public void A_broken_program_is_caught(string name)
    {
        var (_, kind, changes) = Array.Find(All, b => b.Name == name);
        var program = HandMade.Whole;
        foreach (var (old, instead) in changes)
        {
            Assert.Contains(old, program, StringComparison.Ordinal);
            program = program.Replace(old, instead, StringComparison.Ordinal);
        }

        var troubles = HandMade.Troubles(program);
        Assert.True(troubles.Any(t => t.Kind == kind), $"{name}: {string.Join(" | ", troubles)}");
        Assert.All(troubles, t => Assert.True(t.Message.Length > 10 && t.Remedy.Length > 5 && t.Line <= program.Split('\n').Length));
    }

    [Theory]
    [MemberData(nameof(BrokenCompensated))]
    public void A_broken_program_with_cutter_compensation_is_caught(string name)
    {
        var (_, kind, old, instead) = Array.Find(Compensated, b => b.Name == name);
        Assert.Contains(old, HandMade.Compensated, StringComparison.Ordinal);
        var troubles = HandMade.ProfileTroubles(HandMade.Compensated.Replace(old, instead, StringComparison.Ordinal));
        Assert.True(troubles.Any(t => t.Kind == kind), $"{name}: {string.Join(" | ", troubles)}");
    }

    [Fact]
    public void An_end_mill_too_short_or_of_another_size_is_caught()
    {
        Assert.Contains(WithMill(m => m with { CuttingLengthMm = 4 }), t => t.Kind == "tool too short");
        Assert.Contains(WithMill(m => m with { DiameterMm = 6.2 }), t => t.Kind == "cuts the part");
        Assert.Contains(WithMill(m => m with { DiameterMm = 5.8 }), t => t.Kind == "outline");
        static IEnumerable<ProgramTrouble> WithMill(Func<ProgramTool, ProgramTool> change)
            => Inputs.ProgramCheck.Of(HandMade.Whole, HandMade.Tools.SetItem(4, change(HandMade.Tools[4])), HandMade.SetUp, HandMade.Wanted);
    }

    [Fact]
    public void Words_a_machine_does_not_know_are_caught()
    {
        var nothing = new ProgramWays(LengthUnit.Inch, false, false, false, false);
        var told = Inputs.ProgramCheck.Of(HandMade.Whole, HandMade.Tools, HandMade.With(nothing), HandMade.Wanted).Where(t => t.Kind == "not on this machine").ToArray();
        foreach (var what in new[] { "drill cycles", "arcs", "helices", "tool changes", "millimetres" }) Assert.Contains(told, t => t.Message.Contains(what, StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_tool_change_the_tool_goes_in_at_the_stop()
    {
        var program = HandMade.Whole.Replace(" M6\n", "\nM5\nM0\n", StringComparison.Ordinal).Replace("G43 H", "(H", StringComparison.Ordinal);
        program = string.Join('\n', program.Split('\n').Select(l => l.StartsWith("(H", StringComparison.Ordinal) ? "" : l));
        var ways = HandMade.With(ProgramWays.Usual with { HasToolChange = false });
        Assert.Empty(Inputs.ProgramCheck.Of(program, HandMade.Tools, ways, HandMade.Wanted));
        Assert.Contains(Inputs.ProgramCheck.Of(program.Replace("T2\nM5\n", "T2\n", StringComparison.Ordinal), HandMade.Tools, ways, HandMade.Wanted), t => t.Kind == "tool change");
    }
}
