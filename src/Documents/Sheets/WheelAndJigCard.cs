using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The wheel and jig card: rest angle by station in both conventions, wheels judged, sections to scale.</summary>
public static class WheelAndJigCard
{
    /// <summary>Its key.</summary>
    public const string Key = "wheels";

    private const string Title = "Wheels, jig and sections";
    private const double SectionMm = 62;

    /// <summary>Draws its sheets; none without a bevel.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        if (BevelCards.Numbers(request) is not { } n) return [];
        var first = SheetTop.New(request, Key, Title, Title, "The face of the blade leans by the angle per side against the platen. A jig holds one angle: where the stations differ, tilt it or grind free.");
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued."), head: null, Rows(request, n, first.Room.Width), after: Notes.Draw);
    }

    private static IEnumerable<FlowRow> Rows(SheetRequest request, BevelNumbers n, double width)
    {
        var (r, units) = (request.Results, request.Units);
        var bevel = r.Plan.Bevel!;
        var soft = bevel.Ground == GroundWhen.BeforeHardening;
        string Both(Angle a) => bevel.OneSided ? BevelWords.Degrees(a) : $"{BevelWords.Degrees(a)} / {BevelWords.Degrees(Angle.OfDegrees(2 * a.Degrees))}";
        yield return CardRows.Table(
            bevel.OneSided ? "Angle of the one face" : "Angle per side / inclusive, and how far 100 mm of the blade is lifted at that tilt",
            [new("", 0.08), new("from datum", 0.24), new(soft ? "before hardening" : "", soft ? 0.22 : 0.02), new("finished", 0.22), new("lift over 100 mm", 0.24)],
            [.. n.Table.Stations.Select(s => ImmutableArray.Create(s.Name, FigureText.Size(s.FromDatum, units, brief: true), s.SoftAngle is { } a ? Both(a) : "", Both(s.FinishedAngle), BevelWords.Fine(Length.OfMm(BevelAngle.LiftMm(100, s.SoftAngle ?? s.FinishedAngle)), units)))],
            width);
        if (!n.Wheels.IsEmpty)
        {
            yield return CardRows.Said("Wheels");
            foreach (var v in n.Wheels)
            {
                var word = v.Answer switch { WheelAnswer.Good or WheelAnswer.GoodWithNote => "good", WheelAnswer.Thin => "thin", _ => "refused" };
                yield return CardRows.Big($"{v.Name}, {BevelWords.Fine(v.Diameter, units)}", word, BevelWords.Verdict(v, bevel.EdgeFinished, units), width);
            }

            if (BevelWords.Change(n, units) is { Length: > 0 } change) yield return CardRows.Line(change, width);
        }

        foreach (var note in n.Notes) yield return CardRows.Line(note, width, CardRows.NoteMm);
        yield return Sections(request, n, width);
        yield return CardRows.Boxed(BevelWords.Caution, width);
    }

    /// <summary>Sections at three stations, height and thickness each to its own scale where thin.</summary>
    private static FlowRow Sections(SheetRequest request, BevelNumbers n, double width)
    {
        var all = n.Table.Stations;
        BevelStation[] some = [.. new[] { all[0], all[all.Length / 2], all[^1] }.DistinctBy(s => s.Name)];
        return new FlowRow(SectionMm + 14, (canvas, box) =>
        {
            var tall = some.Max(s => Math.Min(s.Spine.Mm, s.Height.Mm + 8));
            var up = Scale(SectionMm / tall);
            var across = Math.Min(Scale(26 / request.Results.Plan.Stock.Thickness.Mm), 8 * up);
            canvas.Text($"Sections square to the edge, finished: heights {Shown.Trimmed(up, 2)} times, thicknesses {Shown.Trimmed(across, 2)} times true size", new Point(box.MinX, box.MaxY - 5), CardRows.NoteMm, bold: true);
            for (var i = 0; i < some.Length; i++)
            {
                var s = some[i];
                var middle = box.MinX + ((i + 0.5) * width / 3);
                var bottom = box.MinY + 6;
                var shape = BevelSection.Of(request.Results.Plan, s, Math.Min(s.Spine.Mm, s.Height.Mm + 8)).Select(p => new Point(middle + (p.X * across), bottom + (p.Y * up))).ToArray();
                canvas.Hatch(shape);
                for (var k = 0; k < shape.Length; k++) canvas.Line(shape[k], shape[(k + 1) % shape.Length], Pen.Wide);
                var shoulder = bottom + (s.Height.Mm * up);
                canvas.Line(new Point(middle - 17, shoulder), new Point(middle + 17, shoulder), Pen.Centre);
                canvas.Text($"{s.Name}: {BevelWords.Fine(s.Height, request.Units)} high", new Point(middle, box.MinY + 1), Canvas.SmallMm, anchor: TextAnchor.Middle);
            }
        });
    }

    private static double Scale(double most)
    {
        double[] steps = [0.5, 1, 2, 5, 10, 20];
        return steps.LastOrDefault(s => s <= most, 0.5);
    }
}

/// <summary>The sharpening card: angle, block height, facet, what to look for.</summary>
public static class SharpeningCard
{
    /// <summary>Its key.</summary>
    public const string Key = "sharpening";

    private const string Title = "Sharpening card";

    /// <summary>Draws its sheets; none without a sharpening angle.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        if (BevelCards.Numbers(request) is not { } n || request.Results.Plan.Bevel!.SharpenPerSide is null) return [];
        var first = SheetTop.New(request, Key, Title, Title, "After the handle is on and the last grit is done. Mark the edge with a felt pen: the stone must take the ink from edge to shoulder of the facet.");
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued."), head: null, Rows(request, n, first.Room.Width), after: Notes.Draw);
    }

    private static IEnumerable<FlowRow> Rows(SheetRequest request, BevelNumbers n, double width)
    {
        var (r, units) = (request.Results, request.Units);
        var bevel = r.Plan.Bevel!;
        var at = bevel.SharpenPerSide!.Value;
        yield return CardRows.Big("angle", bevel.OneSided ? BevelWords.Degrees(at) : $"{Shown.Trimmed(at.Degrees, 1)}° per side, {Shown.Trimmed(2 * at.Degrees, 1)}° inclusive", bevel.OneSided ? "on the one face" : "one face against the middle plane, and both together", width);
        if (n.BlockHeight is { } block) yield return CardRows.Big("spine over the stone", BevelWords.Fine(block, units), $"a block so high under the spine where the blade is {BevelWords.Fine(n.Table.BladeHeight, units)} from edge to spine; elsewhere height times {Shown.Number(Math.Sin(at.Radians), 3)}, the same for a rod", width);
        if (n.Facet is { } f) yield return CardRows.Big("facet", BevelWords.Fine(Length.OfMm(f.HeightMm), units) + " high", $"{BevelWords.Fine(Length.OfMm(f.FaceMm), units)} along its face; {BevelWords.Fine(Length.OfMm(f.ShoulderMm), units)} thick at its shoulder. Higher: the edge was left thicker than {BevelWords.Fine(bevel.EdgeFinished, units)}. Uneven: the bevel was.", width);
        else yield return CardRows.Line("The sharpening is flatter than the bevel: no facet forms.", width);
        yield return CardRows.Table(
            "Block height by height of the blade",
            [new("edge to spine", 0.5), new("spine over the stone", 0.5)],
            [.. Heights(n).Select(h => ImmutableArray.Create(BevelWords.Fine(Length.OfMm(h), units), BevelWords.Fine(Length.OfMm(BevelAngle.LiftMm(h, at)), units)))],
            width);
        if (n.Facet is not null && !bevel.OneSided) yield return CardRows.Line($"Each millimetre sharpened away makes the edge {BevelWords.Fine(Length.OfMm(EdgeBevel.AfterMm(0, 1, n.Table.Range!.Value.Flattest)), units)} thicker: thin it again in time.", width);
        yield return CardRows.Line($"Usual per side ({SourceTag.CommonPractice}): kitchen 10 to 15°, general 15 to 20°, camp 18 to 22°, chopper and hatchet 15 to 25°. A belt of P120 only for hatchets and broken tips; thin blades P800 and finer, dipped at every pass.", width, CardRows.NoteMm);
        yield return CardRows.Line("Done when a burr has been raised along the whole edge on both sides and taken off again, and the edge cuts hanging paper without a snag.", width, CardRows.NoteMm);
        yield return CardRows.Boxed(BevelWords.SharpCaution, width);
    }

    private static IEnumerable<double> Heights(BevelNumbers n)
    {
        var (low, high) = (n.Table.Stations.Min(s => s.Spine.Mm), n.Table.BladeHeight.Mm);
        return Enumerable.Range(0, 6).Select(i => Math.Round(low + ((high - low) * i / 5), 1)).Distinct();
    }
}
