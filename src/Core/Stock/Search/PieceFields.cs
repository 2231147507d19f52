using System.Collections.Immutable;

namespace Tangwright.Core;

/// <summary>All pieces in all their ways and the fields between them, made when first wanted. Safe to use from several threads.</summary>
internal sealed class PieceFields
{
    private const int MostCellsInAll = 12_000_000;

    private readonly PairField?[] _fields;
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
        _fields = new PairField[_count * _count];
        _cells = Math.Clamp(MostCellsInAll / Math.Max(1, _count * (_count + 1) / 2), PairField.LeastCells, PairField.MostCells);
    }

    /// <summary>The ways of each kind.</summary>
    public ImmutableArray<ImmutableArray<TurnedPiece>> Ways { get; }

    /// <summary>How badly two pieces meet; 0 when they do not.</summary>
    public float Loss(TurnedPiece a, double ax, double ay, TurnedPiece b, double bx, double by)
        => a.Index <= b.Index ? Of(a, b).Loss(bx - ax, by - ay) : Of(b, a).Loss(ax - bx, ay - by);

    private PairField Of(TurnedPiece a, TurnedPiece b) => Volatile.Read(ref _fields[(a.Index * _count) + b.Index]) ?? Make(a, b);

    private PairField Make(TurnedPiece a, TurnedPiece b)
    {
        lock (_making)
        {
            ref var field = ref _fields[(a.Index * _count) + b.Index];
            if (field is null) Volatile.Write(ref field, PairField.Of(a, b, _cells, _hair));
            return field!;
        }
    }
}
