using System.Collections.Immutable;
using System.Text;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>What was written.</summary>
/// <param name="Results">What it was made from.</param>
/// <param name="Files">The files, in order.</param>
/// <param name="SheetCount">Sheets in the packet.</param>
public sealed record WrittenPacket(Results Results, ImmutableArray<string> Files, int SheetCount)
{
    /// <summary>Why there is no program for the shop's mill; empty when there is one, or no such mill.</summary>
    public ImmutableArray<Fault> NoProgram { get; init; } = [];
}

/// <summary>Makes the bench packet: the sheets, the template, the hole list, the drawings and the figures, in one folder.</summary>
public static class MakePacket
{
    /// <summary>The kinds of sheets that can be asked for, with what each is for.</summary>
    public static ImmutableArray<(string Key, string For)> Kinds => [.. SheetKinds.All.Select(k => (k.Key, k.For))];

    /// <summary>Makes it.</summary>
    /// <param name="planPath">The plan file.</param>
    /// <param name="shopPath">The shop file; null: looked for.</param>
    /// <param name="folder">Where to; null: NAME-packet beside the plan.</param>
    /// <param name="sheets">Only these kinds, for tonight; empty: everything.</param>
    /// <param name="print">How to print.</param>
    /// <param name="overwrite">Whether existing files may be replaced.</param>
    public static Checked<WrittenPacket> Of(string planPath, string? shopPath, string? folder, ImmutableArray<string> sheets, PrintRequest print, bool overwrite)
        => OpenWork.Of(planPath, shopPath).Then(work =>
        {
            var unknown = sheets.Where(s => SheetKinds.All.All(k => k.Key != s)).ToImmutableArray();
            if (unknown.Length > 0)
            {
                return Checked<WrittenPacket>.Bad(unknown.Select(u => Fault.OfFile("--sheets", $"there is no sheet called \"{u}\"", "choose from: " + string.Join(", ", SheetKinds.All.Select(k => k.Key)))));
            }

            var results = work.WorkUp();
            return print.For(work, results).Then(asked =>
            {
                ImmutableArray<(ProgramReport Report, CheckedProgram? Made)> programs = sheets.Length > 0 ? [] : MakeProgram.All(results, OpenWork.Stem(planPath));
                var request = sheets.Length > 0 ? asked : asked with { Programs = new([.. programs.Select(p => p.Report)]) };
                var into = folder ?? PacketFolder(planPath);
                var packet = BenchPacket.Of(request, sheets);
                if (packet.Sheets.IsEmpty) return Checked<WrittenPacket>.Bad(Fault.OfFile("--sheets", $"there is nothing to draw for {string.Join(", ", sheets)}", request.Stock is null ? "the sheets of bars need a count: --good 12; others need what the plan does not say yet" : "choose other sheets"));
                var files = new List<OutputFile>();
                void Add(string name, byte[] bytes) => files.Add(new OutputFile(System.IO.Path.Combine(into, name), bytes));
                if (sheets.Length > 0)
                {
                    Add($"packet-{string.Join('-', sheets)}.pdf", PdfWriter.Write(packet));
                }
                else
                {
                    Add("packet.pdf", PdfWriter.Write(packet));
                    if (TemplateSheets.Trouble(request, TemplateOptions.For(request)) is null) Add("template.pdf", PdfWriter.Write(PrintTemplate.Sheets(request, TemplateOptions.For(request))));
                    Add("holes.csv", CsvWriter.Write(HoleCsv.Rows(results)));
                    Add("readout.csv", CsvWriter.Write(ReadoutCsv.Rows(results)));
                    Add("layout.csv", CsvWriter.Write(LayoutCsv.Rows(results)));
                    if (HeatSubject.Of(results) is { } subject && HeatPlan.Of(subject) is { } heat) Add("furnace.csv", PlanHeat.Csv(heat));
                    var drawing = PieceDrawing.Of(results);
                    Add("outline.svg", Encoding.UTF8.GetBytes(SvgWriter.Write(drawing)));
                    Add("outline.dxf", Encoding.UTF8.GetBytes(DxfWriter.Write(drawing)));
                    Add("figures.json", Encoding.UTF8.GetBytes(Figures.Json(results)));
                    foreach (var program in programs.Where(p => p.Made is not null)) Add(program.Report.FileName, MakeProgram.Bytes(program.Made!));
                }

                var faults = OutputFolder.Write(files, overwrite);
                return faults.Length > 0
                    ? Checked<WrittenPacket>.Bad(faults)
                    : Checked<WrittenPacket>.Good(new WrittenPacket(results, [.. files.Select(f => f.Path)], packet.Sheets.Length) { NoProgram = [.. programs.SelectMany(p => p.Report.Refusals)] });
            });
        });

    /// <summary>The folder a plan's packet goes to unless another is named.</summary>
    internal static string PacketFolder(string planPath)
        => System.IO.Path.Combine(System.IO.Path.GetDirectoryName(planPath) ?? "", OpenWork.Stem(planPath) + "-packet");
}
