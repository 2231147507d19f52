using System.Collections.Immutable;
using Tangwright.Documents;
using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>The bytes of a PDF.</summary>
/// <param name="Bytes">The bytes.</param>
/// <param name="SheetCount">How many sheets.</param>
public sealed record PrintedSheets(byte[] Bytes, int SheetCount);

/// <summary>A kind of sheet that can be printed.</summary>
/// <param name="Key">Name to ask for it by.</param>
/// <param name="Title">Title.</param>
/// <param name="For">What it is for.</param>
public sealed record KindOfSheet(string Key, string Title, string For);

/// <summary>Sheets of an open plan, printed from the desk.</summary>
public static class DeskSheets
{
    /// <summary>The kinds there are.</summary>
    public static ImmutableArray<KindOfSheet> Kinds => [.. SheetKinds.All.Select(k => new KindOfSheet(k.Key, k.Title, k.For))];

    /// <summary>The kind of a key.</summary>
    public static Checked<KindOfSheet> Kind(string key)
        => Kinds.FirstOrDefault(k => k.Key == key) is { } kind ? Checked<KindOfSheet>.Good(kind) : Checked<KindOfSheet>.Bad(Unknown(key));

    /// <summary>Key of the template with hole centres alone.</summary>
    public const string DrillOnly = TemplateKinds.DrillKey;

    /// <summary>The printers of the shop the plan uses.</summary>
    public static ImmutableArray<PrinterOnDesk> Printers(PlanOnDesk desk) => PrinterSetUp.Of(desk.Work.Shop);

    /// <summary>Which printer is meant and how it is corrected, in a sentence.</summary>
    public static string PrinterInWords(PlanOnDesk desk, PrintRequest print) => print.PrinterOf(desk.Work.Shop) is { } p
        ? $"{p.Name}: {PrinterSetUp.Correction(p)}."
        : print.Printer is null ? "No printer of the shop holds this paper: the template is drawn uncorrected." : $"The shop has no printer called {print.Printer}.";

    /// <summary>Whether a kind can be mirrored for the back face.</summary>
    public static bool CanMirror(string key) => key is TemplateKinds.Key or TemplateKinds.DrillKey;

    /// <summary>The other template: with the piece, or with hole centres alone; null for what is no template.</summary>
    public static string? OtherTemplate(string key) => key switch { TemplateKinds.Key => TemplateKinds.DrillKey, TemplateKinds.DrillKey => TemplateKinds.Key, _ => null };

    /// <summary>The sheets as a PDF; nothing is written to the disk.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="sheets">Kinds wanted; empty: all.</param>
    /// <param name="print">How to print.</param>
    public static Checked<PrintedSheets> Pdf(PlanOnDesk desk, ImmutableArray<string> sheets, PrintRequest print)
        => Set(desk, sheets, print).Then(set => Checked<PrintedSheets>.Good(new PrintedSheets(PdfWriter.Write(set), set.Sheets.Length)));

    /// <summary>The same sheets as pictures for a page.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="sheets">Kinds wanted; empty: all.</param>
    /// <param name="print">How to print.</param>
    public static Checked<DrawnSheets> Drawn(PlanOnDesk desk, ImmutableArray<string> sheets, PrintRequest print)
        => Set(desk, sheets, print).Then(set => Checked<DrawnSheets>.Good(new DrawnSheets([.. set.Sheets.Select((s, i) => DrawnSheet.Of(s, $"{s.Title}, sheet {i + 1} of {set.Sheets.Length}"))])));

    /// <summary>The first sheet of a kind as a small picture; a sheet that says so where the kind does not apply to the plan as it stands.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="kind">Kind wanted.</param>
    /// <param name="print">How to print.</param>
    public static Checked<DrawnSheet> First(PlanOnDesk desk, string kind, PrintRequest print)
        => Kind(kind).Then(known => DeskBevels.With(desk, DeskFinish.With(desk, DeskRoughCuts.With(desk, DeskStock.Asked(desk, print)))).For(desk.Work, desk.Results).Then(request =>
        {
            var sheet = BenchPacket.Of(request, [kind]).Sheets is [var first, ..] ? first : new Sheet(kind, known.Title, request.Paper.WidthMm, request.Paper.HeightMm, [NotYet(request.Paper)], "");
            return Checked<DrawnSheet>.Good(DrawnSheet.Of(sheet, known.Title));
        }));

    /// <summary>Writes the whole packet to its folder beside the plan, in place of the one there.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="folder">The folder that lies open.</param>
    /// <param name="print">How to print.</param>
    public static Checked<WrittenPacket> Packet(PlanOnDesk desk, DeskFolder folder, PrintRequest print)
        => folder.HoldsPacketOf(desk)
            ? MakePacket.Of(desk.Path, shopPath: null, folder: null, [], DeskBevels.With(desk, DeskFinish.With(desk, DeskRoughCuts.With(desk, DeskStock.Asked(desk, print)))), overwrite: true)
            : Checked<WrittenPacket>.Bad(Fault.OfFile(desk.Stem + "-packet", "leads out of the folder that lies open", "move it away, or make the packet from the command line"));

    private static Checked<SheetSet> Set(PlanOnDesk desk, ImmutableArray<string> sheets, PrintRequest print)
    {
        if (sheets.FirstOrDefault(s => SheetKinds.All.All(k => k.Key != s)) is { } unknown) return Checked<SheetSet>.Bad(Unknown(unknown));
        var (work, results) = (desk.Work, desk.Results);
        return DeskBevels.With(desk, DeskFinish.With(desk, DeskRoughCuts.With(desk, DeskStock.Asked(desk, print)))).For(work, results).Then(request =>
        {
            var packet = BenchPacket.Of(request, sheets);
            return packet.Sheets.Length == 0
                ? Checked<SheetSet>.Bad(Fault.OfFile("sheets", sheets.Length == 1 ? "this sheet does not apply to the plan as it stands" : "none of the sheets chosen applies to this plan", sheets is [TemplateKinds.DrillKey] ? "it needs a hole" : DeskStock.IsOfBars(sheets) ? "say on the page of bars how many good pieces are wanted" : "choose others"))
                : Checked<SheetSet>.Good(packet);
        });
    }

    private static TextMark NotYet(PaperSize paper) => new("nothing to print yet", new Point(paper.WidthMm / 2, paper.HeightMm / 2), 10, false, TextAnchor.Middle, 0, Ink.Grey);

    private static Fault Unknown(string key) => Fault.OfFile("sheets", $"there is no sheet called \"{key}\"", "choose from those listed");
}
