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
        // what must be settled first lies on top
        var errors = !request.Results.Findings.IsDefaultOrEmpty && request.Results.Findings.Any(f => f.Severity == Severity.Error);
        ImmutableArray<SheetKind> all = errors ? [.. SheetKinds.All.OrderBy(k => k.Key == FindingsSheet.Key ? 0 : 1)] : SheetKinds.All;
        var wanted = kinds.IsDefaultOrEmpty ? all : [.. all.Where(k => kinds.Contains(k.Key))];

        // first pass: count; second pass: the sheets that name others, now with numbers
        var drawn = wanted.Select(k => k.Draw(request)).ToImmutableArray();
        var numbered = request with { SheetNumbers = Numbers(wanted, drawn), SheetCount = drawn.Sum(d => d.Length) };
        var sheets = wanted.SelectMany((k, i) => (k.NamesNumbers ? k.Draw(numbered) : drawn[i]).Select(s => (Sheet: s, Kind: k)));
        return new SheetSet(
            $"{request.Results.Plan.Name}, revision {request.Results.Plan.Revision}",
            request.Date,
            [.. sheets.Select((s, i) => s.Kind.HasOwnStrip ? s.Sheet : TitleBlock.AddTo(request, s.Sheet, i + 1, numbered.SheetCount))]);
    }

    private static ImmutableDictionary<string, SheetSpan> Numbers(ImmutableArray<SheetKind> kinds, ImmutableArray<ImmutableArray<Sheet>> drawn)
    {
        var numbers = ImmutableDictionary.CreateBuilder<string, SheetSpan>();
        var next = 1;
        for (var i = 0; i < kinds.Length; i++)
        {
            var count = drawn[i].Length;
            if (count == 0) continue;
            numbers[kinds[i].Key] = new SheetSpan(next, next + count - 1);
            next += count;
        }

        return numbers.ToImmutable();
    }
}
