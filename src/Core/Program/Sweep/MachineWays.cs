using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Words that this machine does not know, and modes left as the last program left them.</summary>
internal static class MachineWays
{
    public static IEnumerable<ProgramTrouble> Of(ProgramReading reading, ProgramWays ways, double toleranceMm)
    {
        if (!reading.Unsaid.IsEmpty) yield return new("start", reading.Motions.Select(m => m.Line).FirstOrDefault(), $"it moves before it says {string.Join(", ", reading.Unsaid)}: the machine keeps what the last program left", $"write {string.Join(' ', reading.Unsaid.Select(u => u.Split(' ')[0]))} at the top");
        if (reading.BlendMm is not { } blend) yield return new("rounded corners", 0, "the machine may round corners at will", "write G61, or G64 P with a small distance, at the top");
        else if (blend > toleranceMm / 2) yield return new("rounded corners", 0, $"the machine may round corners by {Shown.Mm(Length.OfMm(blend), 3)}; half of {Shown.Mm(Length.OfMm(toleranceMm), 3)} is allowed", "write G61, or a smaller distance after G64 P");
        foreach (var use in reading.Uses)
        {
            var (isKnown, what, remedy) = use.Word switch
            {
                ProgramWord.DrillCycle => (ways.HasDrillCycles, "drill cycles", "write each hole as single moves"),
                ProgramWord.Arc => (ways.HasArcs, "arcs", "write arcs as short straight moves"),
                ProgramWord.Helix => (ways.HasHelix, "helices", "write helices as short straight moves"),
                ProgramWord.ToolChange => (ways.HasToolChange, "tool changes M6", "stop with M0 and put the tool in by hand"),
                ProgramWord.Inches => (ways.Units == LengthUnit.Inch, "inches", "write G21 and millimetres"),
                ProgramWord.Millimetres => (ways.Units == LengthUnit.Mm, "millimetres", "write G20 and inches"),
                _ => (true, "", ""),
            };
            if (!isKnown) yield return new("not on this machine", use.Line, $"this machine's program has no {what}", remedy);
        }
    }
}
