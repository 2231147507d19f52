namespace Tangwright.Inputs;

/// <summary>What may stand together in one line, and which words this reading knows (NIST IR 6556, 3.4 and table 4).</summary>
internal static class BlockRules
{
    private static readonly double[][] Groups =
    [
        [0, 1, 2, 3, 80, 81, 82, 83, 85, 89], [4], [17], [20, 21], [40, 41, 42], [43, 49], [54], [61, 61.1, 64], [90, 91], [91.1], [94], [98, 99],
    ];

    private static readonly double[][] MachineGroups = [[0, 1, 2, 30], [3, 4, 5], [6], [7, 9], [8], [48, 49]];

    private static readonly (double Code, string What, string Remedy)[] Refused =
    [
        (10, "sets an offset or a tool of the machine's own table", "set it at the machine"),
        (18, "works in another plane", "write the path for G17"),
        (19, "works in another plane", "write the path for G17"),
        (28, "goes to a place stored in the machine", "write the place"),
        (30, "goes to a place stored in the machine", "write the place"),
        (53, "moves from the machine's own zero, which is not known here", "write the place from the program's zero"),
        (84, "taps threads, which is not checked here", "tap by hand"),
        (90.1, "measures arc centres from zero", "write I and J from the start of the arc (G91.1)"),
        (92, "shifts the zero", "leave it out and touch off G54"),
        (93, "gives feed as time", "write feed with G94"),
        (95, "gives feed a turn", "write feed with G94"),
    ];

    /// <summary>What is wrong with the G and M words of a line and what to do; null when nothing.</summary>
    public static (string What, string Remedy)? Broken(ProgramBlock block)
    {
        foreach (var (letter, groups) in new[] { ('G', Groups), ('M', MachineGroups) })
        {
            var codes = block.Words.Where(w => w.Letter == letter).Select(w => w.Value).ToArray();
            foreach (var code in codes)
            {
                if (groups.Any(g => g.Contains(code))) continue;
                if (letter == 'G' && Array.Find(Refused, r => r.Code == code) is { What: not null } no) return ($"G{code} {no.What}", no.Remedy);
                return code is >= 55 and < 60 && letter == 'G'
                    ? ($"G{code} is another zero than G54", "write G54 and touch off there")
                    : ($"{letter}{code} is not known here", "leave it out or write it with the words of RS-274/NGC");
            }

            foreach (var g in groups)
            {
                var both = codes.Where(g.Contains).ToArray();
                if (both.Length > 1) return ($"{letter}{both[0]} and {letter}{both[1]} in one line: only one of them can hold", "keep one of the two");
            }
        }

        return block.Words.Any(w => w is { Letter: 'G', Value: 4 }) && block.Words.Any(w => w.Letter is 'X' or 'Y' or 'Z')
            ? ("G4 waits; it cannot move in the same line", "write the move in its own line")
            : null;
    }
}
