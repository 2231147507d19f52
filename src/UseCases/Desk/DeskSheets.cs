using System.Collections.Immutable;
using Tangwright.Documents;
using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>The bytes of a PDF.</summary>
/// <param name="Bytes">The bytes.</param>
/// <param name="SheetCount">How many sheets.</param>
public sealed record PrintedSheets(byte[] Bytes, int SheetCount);

/// <summary>Sheets of an open plan, printed from the desk.</summary>
public static class DeskSheets
{
    /// <summary>The kinds there are: key, title, what it is for.</summary>
    public static ImmutableArray<(string Key, string Title, string For)> Kinds => [.. SheetKinds.All.Select(k => (k.Key, k.Title, k.For))];

    /// <summary>The sheets as a PDF; nothing is written to the disk.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="sheets">Kinds wanted; empty: all.</param>
    /// <param name="print">How to print.</param>
    public static Checked<PrintedSheets> Pdf(PlanOnDesk desk, ImmutableArray<string> sheets, PrintRequest print)
    {
        if (sheets.FirstOrDefault(s => SheetKinds.All.All(k => k.Key != s)) is { } unknown) return Checked<PrintedSheets>.Bad(Fault.OfFile("sheets", $"there is no sheet called \"{unknown}\"", "choose from those listed"));
        var (work, results) = (desk.Work, desk.Results);
        return print.For(work, results).Then(request =>
        {
            var packet = BenchPacket.Of(request, sheets);
            return packet.Sheets.Length == 0
                ? Checked<PrintedSheets>.Bad(Fault.OfFile("sheets", "none of the sheets chosen applies to this plan", "choose others"))
                : Checked<PrintedSheets>.Good(new PrintedSheets(PdfWriter.Write(packet), packet.Sheets.Length));
        });
    }

    /// <summary>Writes the whole packet to its folder beside the plan, in place of the one there.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="folder">The folder that lies open.</param>
    /// <param name="print">How to print.</param>
    public static Checked<WrittenPacket> Packet(PlanOnDesk desk, DeskFolder folder, PrintRequest print)
        => folder.HoldsPacketOf(desk)
            ? MakePacket.Of(desk.Path, shopPath: null, folder: null, [], print, overwrite: true)
            : Checked<WrittenPacket>.Bad(Fault.OfFile(desk.Stem + "-packet", "leads out of the folder that lies open", "move it away, or make the packet from the command line"));
}
