using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Binds sheets into a packet and gives each its title block and number.</summary>
public static class BenchPacket
{
    /// <summary>The packet.</summary>
    /// <param name="request">What the sheets are drawn for.</param>
    /// <param name="kinds">Keys of the kinds wanted; empty: all. A key that is no kind's gives no sheet: the caller checks what a person wrote.</param>
    public static SheetSet Of(SheetRequest request, ImmutableArray<string> kinds)
    {
        var wanted = kinds.IsDefaultOrEmpty ? SheetKinds.All : [.. SheetKinds.All.Where(k => kinds.Contains(k.Key))];

        // first pass: count; second pass: the sheets that name others, now with numbers
        var drawn = wanted.Select(k => k.Draw(request)).ToImmutableArray();
        var numbered = request with { SheetNumbers = Numbers(wanted, drawn) };
        var sheets = wanted.SelectMany((k, i) => k.NamesOthers ? k.Draw(numbered) : drawn[i]).ToImmutableArray();
        return new SheetSet(
            $"{request.Results.Plan.Name}, revision {request.Results.Plan.Revision}",
            request.Date,
            [.. sheets.Select((s, i) => TitleBlock.AddTo(request, s, i + 1, sheets.Length))]);
    }

    private static ImmutableDictionary<string, string> Numbers(ImmutableArray<SheetKind> kinds, ImmutableArray<ImmutableArray<Sheet>> drawn)
    {
        var numbers = ImmutableDictionary.CreateBuilder<string, string>();
        var next = 1;
        for (var i = 0; i < kinds.Length; i++)
        {
            var count = drawn[i].Length;
            if (count == 0) continue;
            numbers[kinds[i].Key] = count == 1 ? $"{next}" : $"{next}–{next + count - 1}";
            next += count;
        }

        return numbers.ToImmutable();
    }
}
