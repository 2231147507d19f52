using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A part of the handle in words.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Lines">Its lines.</param>
public sealed record HandleBlock(string Title, ImmutableArray<string> Lines);

/// <summary>The handle in words, the same on the command line and the desk.</summary>
public static class HandleText
{
    /// <summary>What it is.</summary>
    public static string Head(HandlePlan p) => HandleWords.Head(p, Units(p));

    /// <summary>The parts in order.</summary>
    public static ImmutableArray<HandleBlock> Blocks(HandlePlan p)
    {
        var units = Units(p);
        var blocks = ImmutableArray.CreateBuilder<HandleBlock>();
        Add("Weight and balance", [.. HandleWords.Parts(p, units).Select(m => $"{m.Name}: {m.Weight}"), HandleWords.Balance(p, units), .. HandleWords.Unknown(p)]);
        Add("Rod and tube", [.. p.Pins.Select(pin => $"{pin.Hole.Name}, {BevelWords.Fine(pin.Diameter, units)}{(pin.Bore.Mm > 0 ? $", bore {BevelWords.Fine(pin.Bore, units)}" : "")}: cut {FigureText.Size(HandleWords.CutLength(pin), units)}; flush {HandleWords.Layers(p, pin, units)}")]);
        Add("Holes under the scales", [.. p.Under.Select(u => $"{u.Hole.Name}: {HandleWords.Under(u, units)}")]);
        if (p.Blank is { } blank) Add("Scales out of the board", [HandleWords.Blank(blank, units), .. HandleWords.Board(p, units)]);
        if (p.Glue is { } glue) Add("Glue", [.. HandleWords.Glue(glue, units), HandleWords.Strength(glue)]);
        Add("Wood and moisture", [.. p.Wood.SelectMany(w => HandleWords.Wood(w, units))]);
        Add("Heat", [.. p.Heat.Select(h => HandleWords.Heat(h, units))]);
        if (p.Cord is { } cord) Add("Cord", [HandleWords.Cord(cord, units)]);
        if (p.Grip is { } grip) Add("In the hand", [.. HandleWords.Grip(grip, units), HandleWords.GripGuidance]);
        return blocks.ToImmutable();

        void Add(string title, ImmutableArray<string> lines)
        {
            if (!lines.IsEmpty) blocks.Add(new HandleBlock(title, lines));
        }
    }

    /// <summary>Cautions; the first is that of the glue when there is any.</summary>
    public static ImmutableArray<string> Cautions(HandlePlan p) => [.. p.Glue is null ? [] : (string[])[HandleWords.GlueCaution], .. HandleWords.Cautions(p)];

    private static UnitsShown Units(HandlePlan p) => p.Results.Shop.Show;
}
