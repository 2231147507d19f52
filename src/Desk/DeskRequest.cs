using System.Globalization;
using Tangwright.Foundation;

namespace Tangwright.Desk;

/// <summary>What was asked for on the command line.</summary>
/// <param name="Folder">Folder to open.</param>
/// <param name="Stem">Plan to open at once, without its ending; null: the first page.</param>
/// <param name="Port">Port; null: the usual one, or a free one when that is taken.</param>
/// <param name="NoBrowser">Whether the browser is left alone.</param>
/// <param name="Help">Whether only the use was asked for.</param>
internal sealed record DeskRequest(string Folder, string? Stem, int? Port, bool NoBrowser, bool Help)
{
    /// <summary>The port used unless another is named.</summary>
    public const int UsualPort = 4275;

    /// <summary>How it is used.</summary>
    public const string HowUsed = """
        Opens a folder of plans on the desk: the drawing, its numbers and its sheets in your browser.

          tangwright desk [FOLDER | PLAN] [--port N] [--no-browser]

          FOLDER or PLAN   what to open; this folder when left out
          --port N         port to listen on (usually 4275; a free one when that is taken)
          --no-browser     only print the address

        It listens on this computer alone. Ctrl-C ends it; every change is saved by then.
        """;

    private const string PlanEnding = UseCases.OpenWork.PlanEnding;

    /// <summary>Reads it.</summary>
    public static Checked<DeskRequest> Of(string[] args)
    {
        string? place = null;
        int? port = null;
        var (noBrowser, help) = (false, false);
        for (var i = 0; i < args.Length; i++)
        {
            switch (args[i])
            {
                case "--no-browser":
                    noBrowser = true;
                    break;
                case "-h" or "-?" or "--help":
                    help = true;
                    break;
                case "--port":
                    if (++i >= args.Length || !int.TryParse(args[i], NumberStyles.None, CultureInfo.InvariantCulture, out var n) || n > 65535) return Bad("--port", "needs a number from 0 to 65535", "leave it out for the usual port");
                    port = n;
                    break;
                case ['-', _, ..] option:
                    return Bad(option, "is no option of desk", "see tangwright desk --help");
                default:
                    if (place is not null) return Bad(args[i], "one folder or plan at a time", "leave out the others");
                    place = args[i];
                    break;
            }
        }

        place ??= ".";
        if (!System.IO.File.Exists(place)) return Checked<DeskRequest>.Good(new DeskRequest(place, null, port, noBrowser, help));
        var name = System.IO.Path.GetFileName(place);
        if (!name.EndsWith(PlanEnding, StringComparison.OrdinalIgnoreCase)) return Bad(place, "is not a plan", $"give a file that ends in {PlanEnding}, or a folder");
        return Checked<DeskRequest>.Good(new DeskRequest(System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(place))!, name[..^PlanEnding.Length], port, noBrowser, help));
    }

    private static Checked<DeskRequest> Bad(string what, string message, string remedy) => Checked<DeskRequest>.Bad(Fault.OfFile(what, message, remedy));
}
