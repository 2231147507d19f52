using System.Collections.Immutable;
using System.Text;
using Tangwright.Core;
using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>How many pieces to start, which bars to buy and how to cut them.</summary>
/// <param name="Results">The plan worked up.</param>
/// <param name="Stock">The bars.</param>
public sealed record StockAnswer(Results Results, StockPlan Stock)
{
    /// <summary>The bars without the demand that straight cuts part the pieces; null when that was not demanded.</summary>
    public StockPlan? Free { get; init; }
}

/// <summary>From good pieces wanted to starts, bars and cuts.</summary>
public static class PlanStock
{
    /// <summary>Works it out.</summary>
    /// <param name="planPath">The plan file.</param>
    /// <param name="shopPath">The shop file; null: looked for.</param>
    /// <param name="request">What is asked.</param>
    public static Checked<StockAnswer> Of(string planPath, string? shopPath, StockRequest request)
    {
        var twice = request.With.Select(w => w.PlanPath).Prepend(planPath).GroupBy(System.IO.Path.GetFullPath).FirstOrDefault(g => g.Count() > 1);
        return twice is not null
            ? Checked<StockAnswer>.Bad(Fault.OfFile("--with", $"{System.IO.Path.GetFileName(twice.Key)} is in the order twice", "name each plan once, with all the good pieces wanted of it"))
            : OpenWork.Of(planPath, shopPath).Then(w => Of(w, w.WorkUp(), request));
    }

    /// <summary>The same for a plan that is worked up already; other plans of the order are opened with its shop.</summary>
    internal static Checked<StockAnswer> Of(OpenedWork work, Results results, StockRequest request) => Of(results, request, work.Shop);

    /// <summary>The same.</summary>
    internal static Checked<StockAnswer> Of(Results results, StockRequest request, Shop? shop = null)
    {
        var wanted = request.Read(results.Plan.Units);
        if (!wanted.IsGood) return Checked<StockAnswer>.Bad(wanted.Faults);
        var items = ImmutableArray.Create(new StockItem(results, wanted.Value));
        var faults = new List<Fault>();
        foreach (var with in request.With)
        {
            var other = OpenWork.Of(with.PlanPath, null);
            faults.AddRange(other.Faults);
            if (other.IsGood) items = items.Add(new StockItem((other.Value with { Shop = shop ?? results.Shop }).WorkUp(), StockRequest.For(wanted.Value, with.Good)));
        }

        if (faults.Count > 0) return Checked<StockAnswer>.Bad(faults);
        return Planned(items, request).Then(stock =>
        {
            var free = request.StraightCuts ? Planned([.. items.Select(i => i with { Wanted = i.Wanted with { StraightCuts = false } })], request) : null;
            return Checked<StockAnswer>.Good(new StockAnswer(results, stock) { Free = free is { IsGood: true } f ? f.Value : null });
        });
    }

    private static Checked<StockPlan> Planned(ImmutableArray<StockItem> items, StockRequest request)
        => items[0].Wanted.Sheet is not null ? SheetOrder.Of(items, request.Better, request.Stop)
            : items.Length == 1 ? BarPlan.Of(items[0].Results, items[0].Wanted)
            : request.Solver is { } solver ? OrderPlan.Of(items, solver(), request.Stop)
            : throw new InvalidOperationException("an order of several plans needs a solver");

    /// <summary>Writes each way of cutting a bar as a drawing: bar, outlines and holes at true size, mm; for a service named with lead-ins and with steel to grind off.</summary>
    /// <param name="answer">The bars.</param>
    /// <param name="planPath">The plan file, for the names.</param>
    /// <param name="folder">Where to; null: beside the plan.</param>
    /// <param name="overwrite">Whether existing files may be replaced.</param>
    public static Checked<WrittenDrawings> Draw(StockAnswer answer, string planPath, string? folder, bool overwrite)
    {
        if (answer.Stock.Service is { } service)
        {
            var refused = answer.Stock.Patterns.Select(p => (p.Results.Plan.Name, Grown: OffsetLoop.Of(p.Results.Plan.Outline, service.Edge.Mm))).Where(p => p.Grown.Path is null)
                .Select(p => Fault.OfFile(p.Name, $"the outline cannot hold {Foundation.Shown.Both(service.Edge)} of cut edge to grind off: {p.Grown.Why}", "widen the hollow, or send the drawing without --service and say on which side the kerf lies")).ToArray();
            if (refused.Length > 0) return Checked<WrittenDrawings>.Bad(refused);
        }

        var into = folder ?? System.IO.Path.GetDirectoryName(planPath) ?? "";
        var files = answer.Stock.Cuts.SelectMany((cut, i) =>
        {
            var drawing = BarDrawing.Of(answer.Stock, cut, i + 1);
            var name = System.IO.Path.Combine(into, $"{OpenWork.Stem(planPath)}-{Documents.StockWords.Word(answer.Stock)}-{i + 1}");
            return new[] { new OutputFile(name + ".dxf", Encoding.UTF8.GetBytes(DxfWriter.Write(drawing))), new OutputFile(name + ".svg", Encoding.UTF8.GetBytes(SvgWriter.Write(drawing))) };
        }).ToArray();
        var faults = OutputFolder.Write(files, overwrite);
        return faults.Length > 0 ? Checked<WrittenDrawings>.Bad(faults) : Checked<WrittenDrawings>.Good(new WrittenDrawings([.. files.Select(f => f.Path)]));
    }
}

/// <summary>Drawings that were written.</summary>
/// <param name="Files">The files, in order.</param>
public sealed record WrittenDrawings(ImmutableArray<string> Files);
