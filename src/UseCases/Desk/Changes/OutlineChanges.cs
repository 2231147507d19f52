using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Adds a point to the outline at the nearest place of it; the shape stays.</summary>
/// <param name="Near">The place, plan's axes, mm.</param>
public sealed record AddPoint(Point Near) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => double.IsFinite(Near.X) && double.IsFinite(Near.Y) ? OutlineEdit.AddPoint(file, Near) : No(file, "that is off the sheet", "keep it on the drawing");
}

/// <summary>Takes a point of the outline away.</summary>
/// <param name="Segment">Number of the segment that starts at it.</param>
public sealed record RemovePoint(int Segment) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => OutlineEdit.RemovePoint(file, Segment);
}

/// <summary>Makes a segment of the outline straight, an arc or a curve.</summary>
/// <param name="Segment">Number of the segment, from 0.</param>
/// <param name="Kind">What it becomes.</param>
public sealed record SetSegmentKind(int Segment, SegmentKind Kind) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => OutlineEdit.SetKind(file, Segment, Kind);
}

/// <summary>Gives an arc of the outline a radius.</summary>
/// <param name="Segment">Number of the segment.</param>
/// <param name="Written">Radius as a maker writes it.</param>
public sealed record SetArcRadius(int Segment, string Written) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => WithLength(file, Written, "a radius", r => OutlineEdit.SetRadius(file, Segment, r));
}

/// <summary>Rounds the corner at a point of the outline.</summary>
/// <param name="Segment">Number of the segment that starts at the point.</param>
/// <param name="Written">Radius as a maker writes it.</param>
public sealed record RoundCorner(int Segment, string Written) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => WithLength(file, Written, "a radius", r => OutlineEdit.RoundCorner(file, Segment, r));
}

/// <summary>Mirrors the whole piece with all that belongs to it.</summary>
/// <param name="UpsideDown">Upside down; else end for end.</param>
public sealed record MirrorPiece(bool UpsideDown) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => WholePiece.Mirror(file, UpsideDown);
}

/// <summary>Scales the piece to a length over all; holes keep their diameters.</summary>
/// <param name="Written">The length as a maker writes it.</param>
public sealed record ScaleToLength(string Written) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => WithLength(file, Written, "a length", l => WholePiece.ScaleTo(file, l));
}

/// <summary>Lays the outline at a distance outside or inside itself.</summary>
/// <param name="Written">The distance as a maker writes it.</param>
/// <param name="Inward">To the inside.</param>
public sealed record OffsetOutline(string Written, bool Inward) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => WithLength(file, Written, "a distance", d => WholePiece.Offset(file, Inward ? Length.OfMm(-d.Mm) : d));
}
