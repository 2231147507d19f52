using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A drill beside a size, in words.</summary>
/// <param name="Name">Its trade name; empty when there is none.</param>
/// <param name="Off">What it is off by, with sign and both units.</param>
/// <param name="IsOwned">Whether the shop has it.</param>
public sealed record DrillBeside(string Name, string Off, bool IsOwned);

/// <summary>One series of drills beside a size.</summary>
/// <param name="Series">What it is called.</param>
/// <param name="Below">Not larger.</param>
/// <param name="Above">Not smaller.</param>
/// <param name="ToReam">Before the reamer.</param>
public sealed record SeriesBeside(string Series, DrillBeside Below, DrillBeside Above, DrillBeside ToReam);

/// <summary>A size on the page of fits.</summary>
/// <param name="Size">The size.</param>
/// <param name="Hole">Limits of the hole.</param>
/// <param name="Pin">Limits of the pin.</param>
/// <param name="Clearance">What they make together.</param>
/// <param name="Lines">Drilled only, to ream, general tolerance, a line each.</param>
/// <param name="Series">Drills beside it.</param>
public sealed record FitShown(string Size, string Hole, string Pin, string Clearance, ImmutableArray<string> Lines, ImmutableArray<SeriesBeside> Series);

/// <summary>A pin of the plan on the page of fits.</summary>
/// <param name="Hole">The hole with its size.</param>
/// <param name="Tools">Drill and reamer.</param>
/// <param name="Made">What it comes out at.</param>
/// <param name="Rod">The rod.</param>
/// <param name="Clearance">What they make together; empty when it cannot be told.</param>
/// <param name="Room">What the room is good for.</param>
/// <param name="IsTight">Whether the rod may not go in by hand.</param>
public sealed record PinShown(string Hole, string Tools, string Made, string Rod, string Clearance, string Room, bool IsTight);

/// <summary>Pins and fits, as their page shows them.</summary>
public static class FitsOnDesk
{
    /// <summary>Classes of holes to choose from.</summary>
    public static ImmutableArray<string> Holes { get; } = ["H7", "H8", "H9", "H11", "F7", "G7", "JS7", "K7", "M7", "N7", "P7"];

    /// <summary>Classes of pins to choose from.</summary>
    public static ImmutableArray<string> Pins { get; } = ["h6", "h7", "h8", "h9", "h11", "f7", "g6", "js6", "k6", "m6", "n6", "p6", "r6", "s6"];

    /// <summary>What comes first.</summary>
    public const string Caution = "Clamp the work, cover your eyes, and your ears when pins are driven. Never turn a reamer backward; brush chips away, never with fingers. Local rules and the machine's manual come first.";

    /// <summary>The size to begin with: that of the plan's first pin, else 6 mm.</summary>
    public static string FirstSize(Results r) => PinFits.Of(r) is [{ } pin, ..] ? pin.Hole.DiameterAsWritten is { Length: > 0 } written && Fits.Of(written, null, null, r.Shop).IsGood ? written : Shown.Trimmed(pin.Hole.Diameter.Mm, 4) + " mm" : "6 mm";

    /// <summary>A size worked up.</summary>
    public static Checked<FitShown> Size(Results r, string size, string hole, string pin) => Fits.Of(size, hole, pin, r.Shop).Then(a => Checked<FitShown>.Good(Of(a)));

    /// <summary>The pins of the plan.</summary>
    public static ImmutableArray<PinShown> PinsOf(Results r) => [.. PinFits.Of(r).Select(p => new PinShown(
        $"{p.Hole.Name}, {FitText.Size(p.Hole.Diameter)}",
        PinFitText.Tools(p),
        p.Made is { } made ? $"{FitText.Band(made.Least, made.Most)}, {p.MadeBy}" : p.MadeBy,
        PinFitText.Rod(p),
        p.Fit is { } fit ? FitText.Clearance(fit) : "",
        PinFitText.Room(p),
        p.Fit is { Kind: not FitKind.Slides }))];

    private static FitShown Of(FitAnswer a)
    {
        var f = a.Fit;
        var lines = ImmutableArray.CreateBuilder<string>();
        if (f.Drilled is { } drilled) lines.Add($"Drilled only, a hole of this size comes out {FitText.Band(drilled.Least, drilled.Most)} (AND10387).");
        lines.Add($"To ream, leave {FitText.Band(f.LeftToReam.Least, f.LeftToReam.Most)} on the diameter. The shop has {(a.OwnsReamer ? "a" : "no")} reamer of this size; {(a.OwnedToReam is { } drill ? $"drill {drill.Name} before it" : "no drill it has suits before it")}.");
        if (GeneralTolerance.Of(f.Size, 'm') is { } general) lines.Add($"Without limits of its own it may be off by {FitText.Size(general)} either way (ISO 2768-1, medium).");
        return new(
            $"{FitText.Size(f.Size)}, {FitText.SixtyFourth(f.Size)}",
            FitText.Band(f.Hole.Least, f.Hole.Most),
            FitText.Band(f.Pin.Least, f.Pin.Most),
            FitText.Clearance(f.Fit),
            lines.ToImmutable(),
            [.. f.Drills.Select(s => new SeriesBeside(s.Series, Beside(a, s.Below), Beside(a, s.Above), Beside(a, s.ToReam)))]);
    }

    private static DrillBeside Beside(FitAnswer a, DrillSize? drill) => drill is null ? new("", "", false) : new(drill.Name, FitText.Signed(drill.Diameter - a.Fit.Size), a.Owns(drill));
}
