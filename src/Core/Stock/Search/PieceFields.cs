using System.Collections.Immutable;

namespace Tangwright.Core;

/// <summary>All pieces in all their ways and the fields between them, made when first wanted. Safe to use from several threads.</summary>
internal sealed class PieceFields
{
    private const int MostCellsInAll = 4_000_000;

    private readonly FieldView[] _views;
    private readonly bool[] _made;
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
        (_views, _made) = (new FieldView[_count * _count], new bool[_count * _count]);
        _cells = Math.Clamp(MostCellsInAll / Math.Max(1, Kinds(pieces)), PairField.LeastCells, PairField.MostCells);
    }

    private static int Kinds(ImmutableArray<SheetPiece> pieces) => pieces.Length * (pieces.Length + 1) / 2 * pieces.Max(p => p.Turns.Length);

    /// <summary>The ways of each kind.</summary>
    public ImmutableArray<ImmutableArray<TurnedPiece>> Ways { get; }

    /// <summary>How badly two pieces meet; 0 when they do not.</summary>
    public float Loss(TurnedPiece a, double ax, double ay, TurnedPiece b, double bx, double by)
    {
        if (a.Index > b.Index) (a, ax, ay, b, bx, by) = (b, bx, by, a, ax, ay);
        var at = (a.Index * _count) + b.Index;
        if (!Volatile.Read(ref _made[at])) Make(a, b);
        ref readonly var view = ref _views[at];
        var (dx, dy) = (bx - ax, by - ay);
        return view.At((float)dx, (float)dy, out var fx, out var fy) switch
        {
            CellKind.Free => 0,
            CellKind.Met => view.Field.Between(0.5f * fx, 0.5f * fy),
            _ => view.Mixed(dx, dy, a, b, fx, fy),
        };
    }

    private void Make(TurnedPiece a, TurnedPiece b)
    {
        lock (_making)
        {
            var at = (a.Index * _count) + b.Index;
            if (_made[at]) return;
            var quarters = 0;
            var (first, second) = (a, b);
            if (a.Quarters is { } q && b.Quarters is { } r && Turned(a, 0) is { } plain && Turned(b, (r - q + 4) % 4) is { } other) (quarters, first, second) = (q, plain, other);
            var key = (first.Index * _count) + second.Index;
            if (!_fields.TryGetValue(key, out var field)) _fields[key] = field = PairField.Of(first, second, _cells, _hair);
            _views[at] = new FieldView(field, quarters, a, b);
            Volatile.Write(ref _made[at], true);
        }
    }

    private TurnedPiece? Turned(TurnedPiece p, int quarters) => Ways[p.Piece].FirstOrDefault(w => w.Quarters == quarters && w.Turn.IsOver == p.Turn.IsOver);
}
