using System.Text;
using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>Writes the outline and the holes for a drawing program.</summary>
public static class ExportDrawing
{
    /// <summary>Writes NAME.dxf or NAME.svg.</summary>
    /// <param name="planPath">The plan file.</param>
    /// <param name="to">dxf or svg.</param>
    /// <param name="folder">Where to; null: beside the plan.</param>
    /// <param name="overwrite">Whether an existing file may be replaced.</param>
    /// <returns>Where it was written.</returns>
    public static Checked<string> Of(string planPath, string to, string? folder, bool overwrite)
        => OpenWork.Of(planPath, null).Then(work =>
        {
            var drawing = PieceDrawing.Of(work.WorkUp());
            var bytes = to.ToLowerInvariant() switch
            {
                "dxf" => Encoding.UTF8.GetBytes(DxfWriter.Write(drawing)),
                "svg" => Encoding.UTF8.GetBytes(SvgWriter.Write(drawing)),
                _ => null,
            };
            if (bytes is null) return Checked<string>.Bad(Fault.OfFile("--to", $"\"{to}\" is not a drawing this can write", "write dxf or svg"));
            var path = System.IO.Path.Combine(folder ?? System.IO.Path.GetDirectoryName(planPath) ?? "", $"{OpenWork.Stem(planPath)}.{to.ToLowerInvariant()}");
            var faults = OutputFolder.Write([new OutputFile(path, bytes)], overwrite);
            return faults.Length > 0 ? Checked<string>.Bad(faults) : Checked<string>.Good(path);
        });
}
