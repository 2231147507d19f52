namespace Tangwright.Core;

/// <summary>What a cell of a field says.</summary>
internal enum CellKind
{
    /// <summary>The pieces do not meet.</summary>
    Free = 0,

    /// <summary>They meet.</summary>
    Met = 1,

    /// <summary>They meet in part of the cell.</summary>
    Mixed = 2,
}

/// <summary>A field as two pieces see it that are turned together by quarter turns: they meet as before, so one field serves all four. Small enough to be near at hand.</summary>
internal readonly struct FieldView
{
    private readonly uint[] _kinds;
    private readonly float _xx;
    private readonly float _xy;
    private readonly float _x0;
    private readonly float _yx;
    private readonly float _yy;
    private readonly float _y0;
    private readonly int _nx;
    private readonly int _ny;
    private readonly int _quarters;

    /// <summary>The view of two pieces turned so many quarters from where the field has them.</summary>
    public FieldView(PairField field, int quarters, TurnedPiece a, TurnedPiece b)
    {
        (Field, _kinds, _nx, _ny, _quarters) = (field, field.Kinds, field.Columns, field.Rows, quarters);
        var k = field.PerCell;
        double Cx(double dx, double dy) => (Back(quarters, dx, dy, a, b).X - field.Left) * k;
        double Cy(double dx, double dy) => (Back(quarters, dx, dy, a, b).Y - field.Low) * k;
        (_x0, _y0) = ((float)Cx(0, 0), (float)Cy(0, 0));
        (_xx, _xy) = ((float)(Cx(1, 0) - Cx(0, 0)), (float)(Cx(0, 1) - Cx(0, 0)));
        (_yx, _yy) = ((float)(Cy(1, 0) - Cy(0, 0)), (float)(Cy(0, 1) - Cy(0, 0)));
    }

    /// <summary>The field.</summary>
    public PairField Field { get; }

    /// <summary>What the cell of a shift says, and where in the grid it is.</summary>
    public CellKind At(float dx, float dy, out float fx, out float fy)
    {
        (fx, fy) = (_x0 + (_xx * dx) + (_xy * dy), _y0 + (_yx * dx) + (_yy * dy));
        var (ix, iy) = ((int)fx, (int)fy);
        if (fx < 0 || fy < 0 || ix >= _nx || iy >= _ny) return CellKind.Free;
        var cell = (iy * _nx) + ix;
        return (CellKind)((_kinds[cell >> 4] >> ((cell & 15) << 1)) & 3);
    }

    /// <summary>The loss in a cell where they meet in part.</summary>
    public float Mixed(double dx, double dy, TurnedPiece a, TurnedPiece b, float fx, float fy)
    {
        var (x, y) = Back(_quarters, dx, dy, a, b);
        return Field.Meets(((int)fy * _nx) + (int)fx, x, y) ? Field.Between(0.5f * fx, 0.5f * fy) : 0;
    }

    private static (double X, double Y) Back(int quarters, double dx, double dy, TurnedPiece a, TurnedPiece b) => quarters switch
    {
        0 => (dx, dy),
        1 => (dy, a.Width - b.Width - dx),
        2 => (a.Width - b.Width - dx, a.Height - b.Height - dy),
        _ => (a.Height - b.Height - dy, dx),
    };
}
