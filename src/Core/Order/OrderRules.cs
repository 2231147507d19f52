namespace Tangwright.Core;

/// <summary>Why the steps stand in this order: the trade's rules, one sentence each.</summary>
internal static class OrderRules
{
    public const string Scale = "A viewer that fits the page shrinks it by a few per cent, and then everything still fits everything else except the bar.";
    public const string OneDatum = "All sizes run from the same two edges, so that errors do not add up from hole to hole.";
    public const string HolesWhileSquare = "The bar's straight edges are still there to measure from, and every hole must be in before hardening: hard steel eats the drill.";
    public const string HolesOnProfile = "The plan measures from the profiled piece, so the profile comes first; every hole must be in before hardening: hard steel eats the drill.";
    public const string Chamfer = "A sharp rim is where a crack starts in the quench, and a burr lifts a scale off the tang.";
    public const string NumberEarly = "From here on pieces can be mixed up, and scales, holes and measured values go with one piece.";
    public const string SawOut = "The saw takes the waste faster and cooler than the belt.";
    public const string MillOut = "The holes are true already and hold every piece in the same place.";
    public const string ProfileBeforeBevel = "The line for the bevel is scribed from the finished edge: scribed from a rough one it lies off the middle.";
    public const string BevelSoft = "Soft steel grinds fast and cool, and a thicker edge stands the quench without waving.";
    public const string BevelHard = "Thin stock stays straighter as a plain plate in the quench; the bevel is ground afterwards, cool and with wet hands.";
    public const string FinishSoft = "Coarse scratches across the blade start cracks in the quench and take far longer to remove in hard steel.";
    public const string Gate = "What is forgotten here costs an hour or the piece: hard steel does not drill.";
    public const string Harden = "The soft work is done; from here on the piece can only be ground.";
    public const string StraightenWarm = "For a short while after the quench the steel still gives; cold and untempered it snaps.";
    public const string TemperSoon = "As quenched it is like glass and can crack by itself: within the hour, not tomorrow.";
    public const string Cold = "Austenite that stays turns on cooling only, and less of it the longer the piece waits.";

    public const string Check = "A soft piece found now is hardened again; found after the finish it is scrap.";
    public const string FinishHard = "The edge comes to its thickness now that the quench cannot wave it any more.";
    public const string Etch = "Marks are made on the finished surface, neutralised and oiled, and before the handle covers the tang.";
    public const string HandleLate = "Blade and front ends cannot be reached once the scales are on.";
    public const string SheathFirst = "Fitting takes many tries: the edge is still dull and taped.";
    public const string SharpenLast = "A sharp edge cuts the one who still has to work on it.";
    public const string Findings = "An error found on paper costs nothing.";
}
