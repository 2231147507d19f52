using System.Collections.Immutable;
using System.Text;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>What was said about a drawing to import.</summary>
/// <param name="File">The drawing.</param>
/// <param name="Plan">Plan file to write; null: the drawing's name beside it.</param>
/// <param name="Units">mm or in; null: as the drawing says.</param>
/// <param name="Thickness">Stock thickness as a maker writes it.</param>
/// <param name="Steel">Steel; null: left open in the plan.</param>
/// <param name="Width">Width of the bar as a maker writes it; null: left out.</param>
/// <param name="Layers">Layers to take; empty: all.</param>
/// <param name="Loop">Which loop is the outline; null: the largest.</param>
/// <param name="Join">Loose ends this near are joined, as a maker writes it; null: 0.05 mm.</param>
/// <param name="Overwrite">Whether an existing plan may be replaced.</param>
public sealed record ImportRequest(
    string File,
    string? Plan,
    string? Units,
    string? Thickness,
    string? Steel,
    string? Width,
    ImmutableArray<string> Layers,
    int? Loop,
    string? Join,
    bool Overwrite);

/// <summary>A plan made from a drawing.</summary>
/// <param name="PlanPath">Where it was written.</param>
/// <param name="Taken">What was taken from the drawing, a line each.</param>
/// <param name="LeftOut">What was left out and why, a line each.</param>
public sealed record ImportedPlan(string PlanPath, ImmutableArray<string> Taken, ImmutableArray<string> LeftOut);

/// <summary>Makes a plan from an outline and holes drawn elsewhere.</summary>
public static class ImportDrawing
{
    /// <summary>Imports it.</summary>
    public static Checked<ImportedPlan> Of(ImportRequest request) => Of(request, () => TextFile.ReadDrawing(request.File));

    /// <summary>Imports a drawing whose bytes are at hand.</summary>
    public static Checked<ImportedPlan> Of(ImportRequest request, byte[] bytes) => Of(request, () => Checked<byte[]>.Good(bytes));

    private static Checked<ImportedPlan> Of(ImportRequest request, Func<Checked<byte[]>> drawing)
    {
        var units = request.Units switch { null => (LengthUnit?)null, "mm" => LengthUnit.Mm, _ => LengthUnit.Inch };
        var join = Read("--join", request.Join);
        var width = Read("--width", request.Width);
        var thickness = Read("--thickness", request.Thickness);
        ImmutableArray<Fault> faults = [.. join.Faults, .. width.Faults, .. thickness.Faults];
        if (faults.Length > 0) return Checked<ImportedPlan>.Bad(faults);
        var choice = new ImportChoice(units, request.Layers, request.Loop, join.Value.Length?.Mm ?? ImportChoice.UsualJoinMm);
        return drawing().Then(bytes => DrawingReader.Read(bytes, request.File, choice)).Then(piece =>
        {
            if (thickness.Value.Length is not { } thick)
            {
                var box = piece.Outline.Bounds;
                return Checked<ImportedPlan>.Bad(Fault.OfFile(
                    request.File,
                    $"a plan needs the thickness of the stock, which a drawing does not tell (the piece found is {Shown.Both(Length.OfMm(box.Width))} by {Shown.Both(Length.OfMm(box.Height))}, with {piece.Holes.Length} holes)",
                    "add --thickness \"3 mm\" or --thickness \"1/8 in\"; --steel and --width can be given too or filled in later"));
            }

            var path = request.Plan ?? System.IO.Path.ChangeExtension(request.File, null) + OpenWork.PlanEnding;
            var text = ImportedPlanText.For(piece, OpenWork.Stem(path), units ?? piece.Units, request.Steel ?? "not said", thick, width.Value.Length);
            var read = PlanReader.Read(text, path);
            if (!read.IsGood) return Checked<ImportedPlan>.Bad(read.Faults);
            var written = OutputFolder.Write([new OutputFile(path, Encoding.UTF8.GetBytes(text))], request.Overwrite);
            return written.Length > 0 ? Checked<ImportedPlan>.Bad(written) : Checked<ImportedPlan>.Good(new ImportedPlan(path, piece.Taken, piece.LeftOut));
        });
    }

    private static Checked<MaybeLength> Read(string option, string? text)
    {
        if (text is null) return Checked<MaybeLength>.Good(new MaybeLength(null));
        var read = LengthText.Read(text, unitMm: 1);
        if (!read.IsGood) return Checked<MaybeLength>.Bad(Fault.OfFile(option, read.Message, read.Remedy));
        return read.Value.Length > Length.Zero
            ? Checked<MaybeLength>.Good(new MaybeLength(read.Value.Length))
            : Checked<MaybeLength>.Bad(Fault.OfFile(option, $"\"{text}\" is not a size above 0", "write it as \"3 mm\" or \"1/8 in\""));
    }

    private sealed record MaybeLength(Length? Length);
}
