using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Formats;
using Tangwright.Foundation;
namespace Tangwright.Tests;
public class LookTests
{
    [Fact]
    public void Look()
    {
        if (Environment.GetEnvironmentVariable("LOOK") is not { } dir) return;
        var i = 0;
        foreach (var r in new[] { ExamplePieces.Hatchet(), ExamplePieces.Kitchen(), ExamplePieces.Paring() })
        {
            i++;
            foreach (var (paper, units, tag) in new[] { (PaperSize.A4, UnitsShown.Both, "a4both"), (PaperSize.Letter, UnitsShown.Inch, "letterin"), (PaperSize.A4, UnitsShown.Mm, "a4mm"), (PaperSize.Letter, UnitsShown.Both, "letterboth") })
                File.WriteAllBytes(System.IO.Path.Combine(dir, $"p{i}-{tag}.pdf"), PdfWriter.Write(BenchPacket.Of(new SheetRequest(r, paper, 5, PrintScale.True, false, new DateOnly(2026, 1, 15), units, "shop.toml beside the plan"), [])));
        }
    }
}
