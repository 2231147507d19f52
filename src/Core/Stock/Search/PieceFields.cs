using System.Collections.Immutable;

namespace Tangwright.Core;

/// <summary>All pieces in all their ways and the fields between them, made when first wanted. Safe to use from several threads.</summary>
internal sealed class PieceFields
{
    private const int MostCellsInAll = 12_000_000;

    private readonly Known[] _pairs;
    private readonly Dictionary<int, PairField> _fields = [];
    private readonly int _count;
    private readonly int _cells;
    private readonly double _hair;
    private readonly Lock _making = new();

    /// <summary>For a list of pieces.</summary>
    /// <param name="pieces">The kinds.</param>
    /// <param name="hairMm">Closer than this counts as meeting, mm.</param>
    public PieceFields(ImmutableArray<SheetPiece> pieces, double hairMm)
    {
        (Ways, _hair) = (TurnedPiece.All(pieces), hairMm);
        _count = Ways.Sum(w => w.Length);
        _pairs = new Known[_count * _count];
        Array.Fill(_pairs, new Known(null, 0));
        _cells = Math.Clamp(MostCellsInAll / Math.Max(1, Kinds(pieces)), PairField.LeastCells, PairField.MostCells);
    }

    private static int Kinds(ImmutableArray<SheetPiece> pieces) => pieces.Length * (pieces.Length + 1) / 2 * pieces.Max(p => p.Turns.Length);

    /// <summary>The ways of each kind.</summary>
    public ImmutableArray<ImmutableArray<TurnedPiece>> Ways { get; }

    /// <summary>How badly two pieces meet; 0 when they do not.</summary>
    /// <remarks>Two pieces turned together by quarter turns meet as before: fields are kept for the first as drawn.</remarks>
    public float Loss(TurnedPiece a, double ax, double ay, TurnedPiece b, double bx, double by)
    {
        if (a.Index > b.Index) (a, ax, ay, b, bx, by) = (b, bx, by, a, ax, ay);
        var (dx, dy) = (bx - ax, by - ay);
        var pair = _pairs[(a.Index * _count) + b.Index];
        if (pair.Field is null) pair = Make(a, b);
        (dx, dy) = pair.Quarters switch
        {
            0 => (dx, dy),
            1 => (dy, a.Width - b.Width - dx),
            2 => (a.Width - b.Width - dx, a.Height - b.Height - dy),
            _ => (a.Height - b.Height - dy, dx),
        };
        return pair.Field!.Loss(dx, dy);
    }

    private Known Make(TurnedPiece a, TurnedPiece b)
    {
        lock (_making)
        {
            ref var known = ref _pairs[(a.Index * _count) + b.Index];
            if (known.Field is not null) return known;
            var quarters = 0;
            var (first, second) = (a, b);
            if (a.Quarters is { } q && b.Quarters is { } r && Turned(a, 0) is { } plain && Turned(b, (r - q + 4) % 4) is { } other) (quarters, first, second) = (q, plain, other);
            var key = (first.Index * _count) + second.Index;
            if (!_fields.TryGetValue(key, out var field)) _fields[key] = field = PairField.Of(first, second, _cells, _hair);
            return known = new Known(field, quarters);
        }
    }

    private TurnedPiece? Turned(TurnedPiece p, int quarters) => Ways[p.Piece].FirstOrDefault(w => w.Quarters == quarters && w.Turn.IsOver == p.Turn.IsOver);

    /// <summary>A field and by how many quarter turns both pieces are turned back for it.</summary>
    private sealed record Known(PairField? Field, int Quarters);
}
