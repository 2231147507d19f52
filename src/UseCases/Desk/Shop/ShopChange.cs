using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>One change of a shop file, as the desk asks for it.</summary>
public abstract record ShopChange
{
    private protected ShopChange()
    {
    }

    /// <summary>The changed shop file.</summary>
    internal abstract Checked<ShopFile> Of(ShopFile file);
}

/// <summary>Sets a value as a maker types it; an empty one takes the key out.</summary>
/// <param name="Heading">Heading; empty for the top of the file.</param>
/// <param name="Index">Which one, from 0, of a heading that repeats.</param>
/// <param name="Key">Key.</param>
/// <param name="Typed">What was typed.</param>
public sealed record SetInShop(string Heading, int Index, string Key, string Typed) : ShopChange
{
    /// <inheritdoc/>
    internal override Checked<ShopFile> Of(ShopFile file) => ShopEdit.Set(file, Heading, Index, Key, Typed);
}

/// <summary>Adds a machine, a saw, a wheel, a printer.</summary>
/// <param name="Heading">Heading, as "machine".</param>
/// <param name="Typed">Keys and what was typed.</param>
public sealed record AddToShop(string Heading, ImmutableArray<(string Key, string Typed)> Typed) : ShopChange
{
    /// <inheritdoc/>
    internal override Checked<ShopFile> Of(ShopFile file) => ShopEdit.Add(file, Heading, Typed);
}

/// <summary>Takes one out.</summary>
/// <param name="Heading">Heading, as "machine".</param>
/// <param name="Index">Which one, from 0.</param>
public sealed record TakeFromShop(string Heading, int Index) : ShopChange
{
    /// <inheritdoc/>
    internal override Checked<ShopFile> Of(ShopFile file) => ShopEdit.Remove(file, Heading, Index);
}

/// <summary>Says that there is none of a kind.</summary>
/// <param name="Heading">Heading, as "saw".</param>
public sealed record HaveNoneInShop(string Heading) : ShopChange
{
    /// <inheritdoc/>
    internal override Checked<ShopFile> Of(ShopFile file) => ShopEdit.HaveNone(file, Heading);
}

/// <summary>Writes what is assumed under a heading into the file, to be changed there.</summary>
/// <param name="Heading">Heading, as "wheel".</param>
public sealed record WriteAssumed(string Heading) : ShopChange
{
    /// <inheritdoc/>
    internal override Checked<ShopFile> Of(ShopFile file)
    {
        var assumed = ShopStart.BuiltIn;
        var made = Checked<ShopFile>.Good(file);
        for (var i = 0; i < assumed.Count(Heading); i++)
        {
            var which = i;
            made = made.Then(f => ShopEdit.Add(f, Heading, [.. ShopKeys.Table.Under(Heading).Select(k => (k.Key, InMm(assumed.Written(Heading, which, k.Key), k)))]));
        }

        return made;

        // bare numbers of the built-in shop are mm
        string InMm(string? written, KeyRow row) => written is not null && row.Kind == "length" && file.Units == LengthUnit.Inch && written.All(c => char.IsAsciiDigit(c) || c == '.') ? written + " mm" : written ?? "";
    }
}

/// <summary>Says that a drill or reamer is owned, or that it is not.</summary>
/// <param name="Key">drills or reamers.</param>
/// <param name="Name">Name of the size: "6 mm", "1/4 in", "#30", "F".</param>
/// <param name="IsOwned">Whether it is owned.</param>
public sealed record TickDrill(string Key, string Name, bool IsOwned) : ShopChange
{
    /// <inheritdoc/>
    internal override Checked<ShopFile> Of(ShopFile file)
        => DrillSeries.All.Concat(file.Shop.Drills).Concat(file.Shop.Reamers).FirstOrDefault(d => d.Name == Name) is { } size
            ? ShopLists.Tick(file, Key, size, IsOwned)
            : Checked<ShopFile>.Bad(Fault.OfFile(file.FileName, $"there is no drill {Name}", "write its size into the list"));
}
