using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>One kind of bench sheet: a name to ask for it by, and how it is drawn. Adding a sheet to the packet is one file and one line in <see cref="SheetKinds.All"/>.</summary>
/// <param name="Key">Name on the command line: <c>holes</c>.</param>
/// <param name="Title">Title on the sheet.</param>
/// <param name="For">What it is for, in one line.</param>
/// <param name="Draw">Draws its sheets, without title block: the packet adds that with the sheet numbers. No sheet when it does not apply.</param>
public sealed record SheetKind(string Key, string Title, string For, Func<SheetRequest, ImmutableArray<Sheet>> Draw);

/// <summary>All kinds of sheets, in the order of the packet.</summary>
public static class SheetKinds
{
    /// <summary>All kinds, in the order of the packet.</summary>
    public static ImmutableArray<SheetKind> All { get; } = [];
}
