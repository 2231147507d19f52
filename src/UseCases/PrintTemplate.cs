using Tangwright.Documents;
using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>Prints the true-scale template alone.</summary>
public static class PrintTemplate
{
    /// <summary>Makes template.pdf (drill-only.pdf for the drilling template); a paper asked for and the mirroring stand in the name, so that the packet's own template stays.</summary>
    public static Checked<WrittenPacket> Of(string planPath, string? shopPath, string? folder, bool drillOnly, PrintRequest print, bool overwrite)
        => OpenWork.Of(planPath, shopPath).Then(work =>
        {
            var results = work.WorkUp();
            return print.For(work, results).Then(request =>
            {
                var options = TemplateOptions.For(request, drillOnly);
                if (TemplateSheets.Trouble(request, options) is { } trouble) return Checked<WrittenPacket>.Bad(Fault.OfFile(planPath, "the template cannot be drawn: " + trouble, "choose larger paper or a roll with --paper, or measure the bars again"));
                var sheets = Sheets(request, options);
                var name = (drillOnly ? "drill-only" : "template") + (print.Paper is { } paper ? "-" + paper : "") + (request.Mirror ? "-mirrored" : "") + ".pdf";
                var file = System.IO.Path.Combine(folder ?? MakePacket.PacketFolder(planPath), name);
                var faults = OutputFolder.Write([new OutputFile(file, PdfWriter.Write(sheets))], overwrite);
                return faults.Length > 0
                    ? Checked<WrittenPacket>.Bad(faults)
                    : Checked<WrittenPacket>.Good(new WrittenPacket(results, [file], sheets.Sheets.Length));
            });
        });

    /// <summary>The template's sheets bound alone.</summary>
    internal static SheetSet Sheets(SheetRequest request, TemplateOptions options)
        => new(request.Results.Plan.Name + " - template", request.Date, TemplateSheets.Draw(request, options));
}
