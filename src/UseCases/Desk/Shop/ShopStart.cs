using System.Text;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>The shop that holds until the maker writes one, and a file of it to begin with.</summary>
internal static class ShopStart
{
    private static readonly Lazy<ShopFile> Built = new(() => ShopReader.ReadFile(ShopReader.BuiltInText, OpenWork.ShopName).Value);

    /// <summary>The built-in shop with its text.</summary>
    public static ShopFile BuiltIn => Built.Value;

    /// <summary>Text of a first shop file: the built-in one under the maker's own heading.</summary>
    public static string FirstText()
    {
        var text = BuiltIn.Text;
        var first = text.IndexOf("tangwright =", StringComparison.Ordinal);
        return "# What this shop has. It began as the assumed shop: change what is not so.\n\n" + text[first..].Replace("name = \"assumed shop\"", "name = \"own shop\"", StringComparison.Ordinal);
    }

    /// <summary>Writes a first shop.toml into a folder; one that is there is left alone.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="text">What to write.</param>
    public static Checked<string> Write(string folder, string text)
    {
        var path = System.IO.Path.Combine(folder, OpenWork.ShopName);
        var faults = OutputFolder.Write([new OutputFile(path, Encoding.UTF8.GetBytes(text))], overwrite: false);
        return faults.Length > 0 ? Checked<string>.Bad(faults) : Checked<string>.Good(path);
    }
}
