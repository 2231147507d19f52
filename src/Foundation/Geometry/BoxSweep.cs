using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>All pairs of segments whose boxes share a point, i before j, found by a sweep along x.</summary>
internal struct BoxSweep
{
    private readonly Box[] _boxes;
    private readonly int[] _order;
    private int _a;
    private int _b;

    public BoxSweep(ImmutableArray<Segment> segments)
    {
        var n = segments.Length;
        _boxes = new Box[n];
        _order = new int[n];
        var starts = new double[n];
        for (var i = 0; i < n; i++)
        {
            var box = segments[i].Bounds.Grown(SegmentMeetings.TouchMm);
            _boxes[i] = box;
            starts[i] = box.MinX;
            _order[i] = i;
        }

        Array.Sort(starts, _order);
        var sorted = new Box[n];
        for (var i = 0; i < n; i++) sorted[i] = _boxes[_order[i]];
        _boxes = sorted;
        _a = 0;
        _b = 0;
    }

    public bool Next(out int i, out int j)
    {
        while (_a < _boxes.Length)
        {
            var box = _boxes[_a];
            while (++_b < _boxes.Length && _boxes[_b].MinX <= box.MaxX)
            {
                var other = _boxes[_b];
                if (other.MinY > box.MaxY || other.MaxY < box.MinY) continue;
                (i, j) = (Math.Min(_order[_a], _order[_b]), Math.Max(_order[_a], _order[_b]));
                return true;
            }

            _b = ++_a;
        }

        (i, j) = (0, 0);
        return false;
    }
}
