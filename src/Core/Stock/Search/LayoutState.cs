using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Tangwright.Core;

/// <summary>Pieces on a strip while they are being moved: places, how badly each pair meets, and how heavily each pair counts. mm. Changed in place: the inner loop of the search makes no garbage.</summary>
internal sealed class LayoutState
{
    private const int Lanes = 16;

    private readonly PieceFields _fields;
    private readonly float[] _minX;
    private readonly float[] _minY;
    private readonly float[] _maxX;
    private readonly float[] _maxY;
    private readonly float _hair;

    /// <summary>For so many pieces, all at the origin.</summary>
    public LayoutState(PieceFields fields, int[] kinds, StripRoom room)
    {
        (_fields, Kinds, Room) = (fields, kinds, room);
        var n = kinds.Length;
        var padded = (n + Lanes - 1) / Lanes * Lanes;
        (Ways, Xs, Ys) = (kinds.Select(k => fields.Ways[k][0]).ToArray(), new double[n], new double[n]);
        (_minX, _minY, _maxX, _maxY) = (new float[padded], new float[padded], new float[padded], new float[padded]);
        Array.Fill(_minX, float.PositiveInfinity);
        (Losses, Weights) = (new float[n * n], new float[n * n]);
        Array.Fill(Weights, 1);
        _hair = (float)(1e-6 * room.Width);
    }

    public int Count => Kinds.Length;

    public int[] Kinds { get; }

    /// <summary>The bars.</summary>
    public StripRoom Room { get; }

    public double Width => Room.Width;

    public double Length { get; set; }

    public TurnedPiece[] Ways { get; }

    public double[] Xs { get; }

    public double[] Ys { get; }

    /// <summary>How badly each pair meets, row by row.</summary>
    public float[] Losses { get; }

    /// <summary>How heavily each pair counts.</summary>
    public float[] Weights { get; }

    /// <summary>Placements weighed up so far: the measure of work.</summary>
    public long Work { get; private set; }

    /// <summary>The ways a piece may lie that fit the strip.</summary>
    public ReadOnlySpan<TurnedPiece> WaysOf(int i) => _fields.Ways[Kinds[i]].AsSpan();

    /// <summary>Puts a piece down without looking at what it meets.</summary>
    public void Put(int i, TurnedPiece way, double x, double y)
    {
        (Ways[i], Xs[i], Ys[i]) = (way, x, y);
        (_minX[i], _minY[i]) = ((float)x - _hair, (float)y - _hair);
        (_maxX[i], _maxY[i]) = ((float)(x + way.Width) + _hair, (float)(y + way.Height) + _hair);
    }

    /// <summary>The weighed loss of one piece put somewhere; infinite as soon as it is sure to reach the bound.</summary>
    public double Value(int i, TurnedPiece way, double x, double y, double bound)
    {
        Work++;
        var (left, low) = (Vector512.Create((float)x), Vector512.Create((float)y));
        var (right, high) = (Vector512.Create((float)(x + way.Width)), Vector512.Create((float)(y + way.Height)));
        var (sum, row) = (0.0, i * Count);
        for (var at = 0; at < _minX.Length; at += Lanes)
        {
            var near = Near(at, left, low, right, high);
            while (near != 0)
            {
                var j = at + System.Numerics.BitOperations.TrailingZeroCount(near);
                near &= near - 1;
                if (j == i) continue;
                var loss = _fields.Loss(way, x, y, Ways[j], Xs[j], Ys[j]);
                if (loss <= 0) continue;
                sum += loss * Weights[row + j];
                if (sum >= bound) return double.PositiveInfinity;
            }
        }

        return sum;
    }

    /// <summary>Works out anew how badly a piece meets each other one.</summary>
    public void Reckon(int i)
    {
        var (way, x, y, n) = (Ways[i], Xs[i], Ys[i], Count);
        var (left, low) = (Vector512.Create((float)x), Vector512.Create((float)y));
        var (right, high) = (Vector512.Create((float)(x + way.Width)), Vector512.Create((float)(y + way.Height)));
        var row = Losses.AsSpan(i * n, n);
        for (var j = 0; j < n; j++)
        {
            if (row[j] == 0) continue;
            row[j] = 0;
            Losses[(j * n) + i] = 0;
        }

        for (var at = 0; at < _minX.Length; at += Lanes)
        {
            var near = Near(at, left, low, right, high);
            while (near != 0)
            {
                var j = at + System.Numerics.BitOperations.TrailingZeroCount(near);
                near &= near - 1;
                if (j == i) continue;
                var loss = _fields.Loss(way, x, y, Ways[j], Xs[j], Ys[j]);
                row[j] = loss;
                Losses[(j * n) + i] = loss;
            }
        }
    }

    /// <summary>Works out every pair.</summary>
    public void ReckonAll()
    {
        for (var i = 0; i < Count; i++) Reckon(i);
    }

    /// <summary>Whether a piece meets any other.</summary>
    public bool Meets(int i) => Losses.AsSpan(i * Count, Count).ContainsAnyExcept(0f);

    /// <summary>The loss of all pairs.</summary>
    public double Total()
    {
        var sum = 0.0;
        for (var i = 0; i < Count; i++)
        {
            foreach (var loss in Losses.AsSpan(i * Count, i)) sum += loss;
        }

        return sum;
    }

    /// <summary>Pairs that meet weigh more, the worst most; others slowly forget.</summary>
    public void Reweigh()
    {
        const float Least = 1.2f, More = 0.8f, Forget = 0.95f;
        var (most, n) = (0f, Count);
        foreach (var loss in Losses) most = Math.Max(most, loss);
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var at = (i * n) + j;
                ref var w = ref Weights[at];
                if (Losses[at] > 0) w *= Least + (More * Losses[at] / most);
                else if (w > 1) w = Math.Max(1, w * Forget);
                else continue;
                Weights[(j * n) + i] = w;
            }
        }
    }

    /// <summary>All pairs count alike again.</summary>
    public void ForgetWeights() => Array.Fill(Weights, 1);

    /// <summary>Takes places over.</summary>
    public void Take(PlacesKept kept)
    {
        Length = kept.Length;
        for (var i = 0; i < Count; i++) Put(i, kept.Ways[i], kept.Xs[i], kept.Ys[i]);
        ReckonAll();
    }

    /// <summary>Makes the strip shorter: all right of a line moves left, and nothing stands out.</summary>
    public void Shrink(double length, double line)
    {
        var by = Length - length;
        Length = length;
        for (var i = 0; i < Count; i++)
        {
            var x = Xs[i] + (0.5 * Ways[i].Width) > line ? Xs[i] - by : Xs[i];
            var way = Ways[i].Width <= length ? Ways[i] : Narrowest(i);
            Put(i, way, Room.Fit(x, way.Width, length), Math.Clamp(Ys[i], 0, Width - way.Height));
        }

        ReckonAll();
    }

    private TurnedPiece Narrowest(int i) => _fields.Ways[Kinds[i]].MinBy(w => w.Width)!;

    private uint Near(int at, Vector512<float> left, Vector512<float> low, Vector512<float> right, Vector512<float> high)
    {
        var hit = Vector512.LessThan(Vector512.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(_minX), (nuint)at), right)
            & Vector512.LessThan(left, Vector512.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(_maxX), (nuint)at))
            & Vector512.LessThan(Vector512.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(_minY), (nuint)at), high)
            & Vector512.LessThan(low, Vector512.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(_maxY), (nuint)at));
        return (uint)hit.ExtractMostSignificantBits();
    }
}

/// <summary>Places set aside. Changed in place.</summary>
internal sealed class PlacesKept(int count)
{
    public TurnedPiece[] Ways { get; } = new TurnedPiece[count];

    public double[] Xs { get; } = new double[count];

    public double[] Ys { get; } = new double[count];

    public double Length { get; private set; }

    public double Loss { get; private set; }

    /// <summary>Copies from a state.</summary>
    public PlacesKept Keep(LayoutState s, double loss)
    {
        s.Ways.CopyTo(Ways, 0);
        s.Xs.CopyTo(Xs, 0);
        s.Ys.CopyTo(Ys, 0);
        (Length, Loss) = (s.Length, loss);
        return this;
    }
}
