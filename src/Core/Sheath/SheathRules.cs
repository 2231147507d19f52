using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What common practice takes where the plan says nothing of its sheath.</summary>
public static class SheathRules
{
    /// <summary>Leather of 8 to 9 oz, mm.</summary>
    public const double LeatherMm = 3.4;

    /// <summary>Plastic sheet, mm.</summary>
    public const double SheetMm = 2;

    /// <summary>Cut edge of leather beyond the blade, mm: a welt of 14 to 16 mm.</summary>
    public const double LeatherSeamMm = 15;

    /// <summary>Edge of the raw sheet beyond the blade, mm; trimmed after pressing to <see cref="TrimmedMm"/>.</summary>
    public const double SheetSeamMm = 25;

    /// <summary>Edge of the trimmed sheet beyond the blade, mm.</summary>
    public const double TrimmedMm = 15;

    /// <summary>Stitches from the edge, mm.</summary>
    public const double StitchFromEdgeMm = 5;

    /// <summary>Rivets from the trimmed edge, mm.</summary>
    public const double RivetFromEdgeMm = 8;

    /// <summary>Stitch to stitch, mm.</summary>
    public const double StitchPitchMm = 4;

    /// <summary>Rivet to rivet, mm.</summary>
    public const double RivetPitchMm = 25;

    /// <summary>Least way from stitches to the blade, mm: the edge must not reach the thread.</summary>
    public const double StitchToBladeMm = 6;

    /// <summary>Least way from the middle of a rivet to the blade, mm: half its flange and the bend of the sheet.</summary>
    public const double RivetToBladeMm = 7;

    /// <summary>Room between the edge and the welt, mm.</summary>
    public const double WeltPlayMm = 1;

    /// <summary>How much of what lies before the grip goes in, at most, mm.</summary>
    public const double PastEdgeMm = 10;

    /// <summary>How much wider than the mouth the blade may be inside, mm; leather and sheet give that much.</summary>
    public const double GivesMm = 0.5;

    /// <summary>Thread for needle tails and back stitches, mm.</summary>
    public const double ThreadSpareMm = 500;

    /// <summary>Thread of a seam sewn by hand with two needles: each passes through all layers and lies along the face at every stitch, 2 (p + t) a stitch.</summary>
    /// <param name="seam">Length of the seam.</param>
    /// <param name="pitch">Stitch to stitch.</param>
    /// <param name="through">Thickness of all layers together.</param>
    public static Length Thread(Length seam, Length pitch, Length through)
        => Length.OfMm((2 * seam.Mm * (pitch.Mm + through.Mm) / pitch.Mm) + ThreadSpareMm);

    /// <summary>Width of the strip of a belt loop, mm.</summary>
    public const double LoopWidthMm = 30;

    /// <summary>Room of the loop beside the belt, mm.</summary>
    public const double LoopPlayMm = 5;

    /// <summary>Each of the two ends of the loop that are sewn down, mm.</summary>
    public const double LoopEndMm = 20;

    /// <summary>Edge guard beyond each end of the edge, mm.</summary>
    public const double GuardPastEdgeMm = 10;

    /// <summary>Edge guard up the faces from the highest place of the edge, mm.</summary>
    public const double GuardUpMm = 15;

    /// <summary>Line where the guard is clipped or riveted, from its open side, mm.</summary>
    public const double GuardClipMm = 5;

    /// <summary>Thickness of the material.</summary>
    public static Length Thickness(SheathPlan s) => s.MaterialThickness ?? Length.OfMm(s.Kind == SheathKind.Leather ? LeatherMm : SheetMm);

    /// <summary>From the blade to the cut edge.</summary>
    public static Length Seam(SheathPlan s) => s.Seam ?? Length.OfMm(s.Kind == SheathKind.Leather ? LeatherSeamMm : SheetSeamMm);

    /// <summary>From the blade to the edge of the finished sheath.</summary>
    public static Length Finished(SheathPlan s) => s.Kind == SheathKind.Leather ? Seam(s) : Length.Min(Seam(s), Length.OfMm(TrimmedMm));

    /// <summary>From the edge of the finished sheath to stitches or rivets.</summary>
    public static Length FromEdge(SheathPlan s) => s.StitchFromEdge ?? Length.OfMm(s.Kind == SheathKind.Leather ? StitchFromEdgeMm : RivetFromEdgeMm);

    /// <summary>Stitch to stitch, or rivet to rivet, as asked.</summary>
    public static Length Pitch(SheathPlan s) => s.Pitch ?? Length.OfMm(s.Kind == SheathKind.Leather ? StitchPitchMm : RivetPitchMm);

    /// <summary>Least way from stitches or rivets to the blade.</summary>
    public static Length ToBlade(SheathPlan s) => Length.OfMm(s.Kind == SheathKind.Leather ? StitchToBladeMm : RivetToBladeMm);
}
