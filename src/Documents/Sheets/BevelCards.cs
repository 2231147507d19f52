using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>What the cards of the bevel share.</summary>
internal static class BevelCards
{
    /// <summary>The numbers; null when there are none.</summary>
    public static BevelNumbers? Numbers(SheetRequest request) => BevelNumbers.Of(request.Results, request.Bevels) is { IsGood: true } n && !n.Value.Table.Stations.IsEmpty ? n.Value : null;
}

/// <summary>The scribe card: height gauge settings for the bar as sold and as measured, stations of plunge and shoulder.</summary>
public static class ScribeCard
{
    /// <summary>Its key.</summary>
    public const string Key = "scribe";

    private const string Title = "Scribe card";

    /// <summary>Draws its sheets; none without a bevel.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        if (BevelCards.Numbers(request) is not { } n) return [];
        var first = SheetTop.New(request, Key, Title, Title, "Profiled piece, faces flat and parallel, on a surface plate. Layout fluid on the rim and on both faces. Measure this very bar: the figures follow it.");
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued."), head: null, Rows(request, n, first.Room.Width), after: Notes.Draw);
    }

    private static IEnumerable<FlowRow> Rows(SheetRequest request, BevelNumbers n, double width)
    {
        var (r, units) = (request.Results, request.Units);
        var bevel = r.Plan.Bevel!;
        var soft = bevel.Ground == GroundWhen.BeforeHardening;
        yield return CardRows.Said("Height gauge, on the rim of the edge");
        foreach (var (s, what) in new[] { (n.Scribe, "bar as sold"), (n.ScribeMeasured ?? default, "bar as measured") }.Where(x => x.Item1.Stock.Mm > 0))
        {
            yield return CardRows.Big(what, BevelWords.Gauge(s.FromFace, units), bevel.OneSided
                ? $"from the face that stays flat, one line. The bar is {BevelWords.Fine(s.Stock, units)}."
                : $"from each face, turned over for the second line: {BevelWords.Fine(s.Edge, units)} stays between them{(soft ? " for hardening" : ", the finished edge")}. The bar is {BevelWords.Fine(s.Stock, units)}; the middle line is at {BevelWords.Gauge(s.Centre, units)}.", width);
        }

        if (!n.ScribeAt.IsEmpty) yield return AtStations(n, units, width);
        if (!bevel.OneSided) yield return Steps(n.Scribe, units, width);
        yield return CardRows.Said("On both faces, square to the edge");
        var bench = r.Bench;
        string At(Point p)
        {
            var b = bench.ToBench(p);
            return $"{FigureText.Size(Length.OfMm(b.X), units, brief: true)}; {FigureText.Size(Length.OfMm(b.Y), units, brief: true)}";
        }

        yield return CardRows.Line($"Along from the {bench.AlongFrom}, across from the {bench.AcrossFrom}; the back face is its mirror.", width, CardRows.NoteMm);
        yield return CardRows.Table(
            "Stations",
            [new("", 0.07), new("edge: along; across", 0.36), new("shoulder: along; across", 0.36), new("height", 0.21)],
            [.. n.Table.Stations.Select(s => ImmutableArray.Create(s.Name, At(s.Foot), At(s.Shoulder), BevelWords.Fine(s.Height, units)))],
            width);
        if (n.Table.Plunge is { } plunge) yield return CardRows.Line($"Plunge line on both faces, from {At(plunge.A)} to {At(plunge.B)}: square it over with a file guide; both faces within 0.5 mm (0.020 in) of one another.", width);
        yield return BothFaces(request, n, width);
        foreach (var note in n.Notes) yield return CardRows.Line(note, width, CardRows.NoteMm);
        yield return CardRows.Boxed("The scriber is sharp: cap it. Rims of a sawn or ground piece are sharp: break them first. " + BevelWords.Caution, width);
    }

    /// <summary>The piece from the front and turned over about its length: stations from edge to shoulder, the line where the bevel ends, the plunge line.</summary>
    private static FlowRow BothFaces(SheetRequest request, BevelNumbers n, double width)
    {
        var r = request.Results;
        var real = r.Piece.Outer.Bounds;
        var half = Math.Min(60, Math.Max(18, real.Height * width / real.Width)) + 20;
        return new FlowRow((2 * half) + 6, (canvas, box) =>
        {
            for (var i = 0; i < 2; i++)
            {
                var isBack = i == 1;
                var room = new Box(box.MinX, box.MaxY - ((i + 1) * half), box.MaxX, box.MaxY - (i * half));
                var view = PieceView.Fit(r, real, new Box(room.MinX, room.MinY + 7, room.MaxX, room.MaxY - 13), isBack);
                canvas.Text(isBack ? "back face, turned over about its length" : "front face", new Point(room.MinX, room.MaxY - 4.5), CardRows.NoteMm, bold: true);
                view.DrawPiece(canvas, Pen.Wide);
                foreach (var stretch in BladeMarks.GrindLine(r.Plan)) canvas.Polyline([.. stretch.Select(view.On)], Pen.Narrow);
                if (r.Plan.Bevel!.Height is null) canvas.Polyline([.. n.Table.Stations.Select(s => view.On(s.Shoulder))], Pen.Narrow);
                if (n.Table.Plunge is { } plunge) canvas.Line(view.On(plunge.A), view.On(plunge.B), new Pen(0.35));
                foreach (var s in n.Table.Stations)
                {
                    canvas.Line(view.On(s.Foot), view.On(s.Shoulder), Pen.Centre);
                    var name = view.On(s.Foot - (s.Inward * (3.2 / view.Factor)));
                    canvas.Text(s.Name, new Point(name.X, name.Y - 0.8), 2.5, anchor: TextAnchor.Middle);
                }
            }
        });
    }

    /// <summary>Each station's own setting once the taper is ground.</summary>
    private static FlowRow AtStations(BevelNumbers n, UnitsShown units, double width)
    {
        var isMeasured = n.ScribeMeasured is not null;
        var share = (isMeasured ? 0.93 : 0.88) / (isMeasured ? 4 : 2);
        string[] Cells(ScribeLines s) => [BevelWords.Fine(s.Stock, units), BevelWords.GaugeOf(s, units)];
        return CardRows.Table(
            "Taper ground first: the tapered face down on the plate, each station its own setting",
            [new("", isMeasured ? 0.07 : 0.12), new("thick there", share), new("gauge from each face", share), .. isMeasured ? [new Column("bar as measured: thick", share), new Column("gauge", share)] : Array.Empty<Column>()],
            [.. n.ScribeAt.Select(s => (ImmutableArray<string>)[s.Name, .. Cells(s.Sold), .. s.Measured is { } m ? Cells(m) : []])],
            width,
            5.6);
    }

    /// <summary>Settings for bars a little thicker and thinner.</summary>
    private static FlowRow Steps(ScribeLines s, UnitsShown units, double width)
    {
        ImmutableArray<double> steps = [-0.2, -0.15, -0.1, -0.05, 0, 0.05, 0.1, 0.15, 0.2];
        var bars = steps.Select(d => Length.OfMm(s.Stock.Mm + d)).Where(t => t > s.Edge).ToArray();
        return CardRows.Table(
            "Another bar",
            [new("bar measures", 0.34), new("gauge from each face", 0.36), new("middle line", 0.3)],
            [.. bars.Select(t => ScribeLines.Of(t, s.Edge, oneSided: false)).Select(x => ImmutableArray.Create(BevelWords.Fine(x.Stock, units), BevelWords.Gauge(x.FromFace, units), BevelWords.Gauge(x.Centre, units)))],
            width,
            5.6);
    }
}

/// <summary>The thickness table: go and no-go by station and height, gauges to cut out at true scale, grams per side with a tally.</summary>
public static class ThicknessTable
{
    /// <summary>Its key.</summary>
    public const string Key = "thickness";

    private const string Title = "Thickness and grams";

    /// <summary>How far a thickness may be off, either way; common practice.</summary>
    public const double ToleranceMm = 0.05;

    private const int TallyPieces = 12;

    /// <summary>Draws its sheets; none without a bevel.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        if (BevelCards.Numbers(request) is not { } n) return [];
        var first = SheetTop.New(request, Key, Title, Title, $"Callipers square to the edge at the heights given, belt stopped. Good within {BevelWords.Fine(Length.OfMm(ToleranceMm), request.Units)} either way ({SourceTag.CommonPractice}). Weigh after each face: equal grams, equal bevels.");
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued."), head: null, Rows(request, n, first.Room.Width), after: Notes.Draw);
    }

    private static IEnumerable<FlowRow> Rows(SheetRequest request, BevelNumbers n, double width)
    {
        var (r, units) = (request.Results, request.Units);
        var bevel = r.Plan.Bevel!;
        if (bevel.Ground == GroundWhen.BeforeHardening) yield return Thicknesses("Before hardening", n, units, width, soft: true);
        yield return Thicknesses("Finished, before sharpening", n, units, width, soft: false);
        foreach (var line in BevelWords.Grams(n, units, bevel.OneSided)) yield return CardRows.Big("take", line, "", width);
        if (n.Advice is { } a) yield return CardRows.Line(BevelWords.Advice(a, units), width, CardRows.NoteMm);
        yield return CardRows.Line(BevelWords.BehindTheEdge, width, CardRows.NoteMm);
        yield return Gauges(request, n, width);
        yield return Tally(n, width);
        yield return CardRows.Boxed(BevelWords.Caution, width);
    }

    private static FlowRow Thicknesses(string title, BevelNumbers n, UnitsShown units, double width, bool soft)
    {
        var heights = BevelStations.HeightsMm.Where(h => n.Table.Stations.Any(s => s.Thicknesses.Any(t => t.Up.Mm == h))).ToArray();
        string Of(BevelStation s, double h) => s.Thicknesses.FirstOrDefault(t => t.Up.Mm == h) is { Finished.Mm: > 0 } t ? BevelWords.Fine(soft ? t.Soft ?? t.Finished : t.Finished, units) : "";
        var share = 0.86 / (heights.Length + 1);
        return CardRows.Table(
            title + ": thickness at so much above the edge",
            [new("", 0.14), .. heights.Select(h => new Column(FigureText.Size(Length.OfMm(h), units, brief: true), share)), new("shoulder", share)],
            [.. n.Table.Stations.Select(s => (ImmutableArray<string>)[$"{s.Name}, {FigureText.Size(s.FromDatum, UnitsShown.Mm, brief: true)}", .. heights.Select(h => Of(s, h)), BevelWords.Fine(s.Stock, units)])],
            width);
    }

    /// <summary>Slots at true scale: one side goes on, the other does not.</summary>
    private static FlowRow Gauges(SheetRequest request, BevelNumbers n, double width)
    {
        var bevel = request.Results.Plan.Bevel!;
        var middle = n.Table.Stations[n.Table.Stations.Length / 2];
        var soft = bevel.Ground == GroundWhen.BeforeHardening;
        var sizes = new List<(string Name, double Mm)> { ("edge", (soft ? bevel.EdgeBeforeHardening ?? bevel.EdgeFinished : bevel.EdgeFinished).Mm) };
        foreach (var t in middle.Thicknesses.Where(t => t.Up.Mm is 5 or 10)) sizes.Add(($"{Shown.Trimmed(t.Up.Mm, 0)} mm up", (soft ? t.Soft ?? t.Finished : t.Finished).Mm));
        return new FlowRow(42, (canvas, box) =>
        {
            canvas.Fitted("Gauges to cut out of card or tin, true to scale only when the check line below measures 50 mm", new Point(box.MinX, box.MaxY - 5), box.Width, CardRows.NoteMm, bold: true);
            var cell = Math.Min(58, box.Width / sizes.Count);
            for (var i = 0; i < sizes.Count; i++)
            {
                var x = box.MinX + (i * cell);
                var (y0, y1) = (box.MaxY - 34, box.MaxY - 9);
                canvas.Frame4(new Box(x, y0, x + cell - 6, y1), new Pen(0.25, LineKind.Dashed));
                foreach (var (word, add, at) in new[] { ("go", ToleranceMm, 0.3), ("no-go", -ToleranceMm, 0.72) })
                {
                    // the printer's correction, so that the slot comes out at its size
                    var slot = Math.Max(0.05, sizes[i].Mm + add) * request.Scale.Across;
                    var mid = x + (at * (cell - 6));
                    foreach (var side in new[] { -0.5, 0.5 }) canvas.Line(new Point(mid + (side * slot), y1), new Point(mid + (side * slot), y1 - 12), new Pen(0.1));
                    canvas.Line(new Point(mid - (0.5 * slot), y1 - 12), new Point(mid + (0.5 * slot), y1 - 12), new Pen(0.1));
                    canvas.Text(word, new Point(mid, y1 - 15.5), Canvas.SmallMm, anchor: TextAnchor.Middle);
                    canvas.Text(Shown.Number(sizes[i].Mm + add, 2), new Point(mid, y1 - 19.2), Canvas.SmallMm, anchor: TextAnchor.Middle);
                }

                canvas.Fitted(sizes[i].Name, new Point(x + 1, y0 + 0.8), cell - 8, Canvas.SmallMm, bold: true);
            }

            var line = 50 * request.Scale.Across;
            canvas.Line(new Point(box.MinX, box.MinY + 2), new Point(box.MinX + line, box.MinY + 2), Pen.Narrow);
            foreach (var e in new[] { 0, line }) canvas.Line(new Point(box.MinX + e, box.MinY + 0.8), new Point(box.MinX + e, box.MinY + 3.2), Pen.Narrow);
            canvas.Text("50 mm", new Point(box.MinX + line + 2, box.MinY + 1), Canvas.SmallMm);
        });
    }

    /// <summary>Grams of left and right face, a line a piece.</summary>
    private static FlowRow Tally(BevelNumbers n, double width)
    {
        double[] at = [0, 0.1, 0.28, 0.46, 0.64, 0.82];
        string[] heads = ["piece", "before", "after left", "after right", "left took", "right took"];
        return new FlowRow(18 + (TallyPieces * 8), (canvas, box) =>
        {
            var drawn = canvas.Text("Tally, grams", new Point(box.MinX, box.MaxY - 6), Canvas.TextMm, bold: true);
            canvas.Fitted($"left and right within a tenth{((n.SoftPerSideGrams ?? n.HardPerSideGrams) is { } g ? $", each about {Shown.Number(g, 1)} g" : "")}; the edge wanders to the side that lost less", new Point(drawn.MaxX + 3, box.MaxY - 6), box.MaxX - drawn.MaxX - 3, CardRows.NoteMm);
            for (var i = 0; i < heads.Length; i++) canvas.Text(heads[i], new Point(box.MinX + (at[i] * width), box.MaxY - 12), Canvas.SmallMm);
            for (var k = 0; k < TallyPieces; k++)
            {
                var y = box.MaxY - 20 - (k * 8);
                canvas.Text($"{k + 1}", new Point(box.MinX, y + 1.4), Canvas.TextMm);
                for (var i = 1; i < at.Length; i++) canvas.Line(new Point(box.MinX + (at[i] * width), y), new Point(box.MinX + ((i + 1 < at.Length ? at[i + 1] : 1) * width) - 3, y), new Pen(0.18));
            }
        });
    }
}
