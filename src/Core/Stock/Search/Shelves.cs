namespace Tangwright.Core;

/// <summary>A layout to begin with, at once and surely clear: boxes stacked in columns, the widest first.</summary>
internal static class Shelves
{
    /// <summary>Boxes stand this far apart, as a share of the width: what only touches counts as meeting.</summary>
    private const double ApartShare = 1e-8;

    /// <summary>Lays them.</summary>
    public static PlacesKept Of(PieceFields fields, int[] kinds, StripRoom room)
    {
        var state = new LayoutState(fields, kinds, room);
        var (left, up, column, apart) = (0.0, 0.0, 0.0, ApartShare * room.Width);
        foreach (var i in Enumerable.Range(0, kinds.Length).OrderByDescending(i => Way(i).Width))
        {
            var way = Way(i);
            if (up + way.Height > room.Width)
            {
                (left, up, column) = (left + column + apart, 0, 0);
            }

            // on to the next bar where this one ends
            while (up == 0 && left + way.Width > room.Start(room.BarAt(left)) + room.LengthOf(room.BarAt(left)))
            {
                if (room.BarAt(left) + 1 == room.Bars) room.Add();
                left = room.Start(room.BarAt(left) + 1);
            }

            state.Put(i, way, left, up);
            (up, column) = (up + way.Height + apart, Math.Max(column, way.Width));
        }

        state.Length = left + column;
        return new PlacesKept(kinds.Length).Keep(state, 0);

        TurnedPiece Way(int i) => fields.Ways[kinds[i]].MinBy(w => w.Width)!;
    }
}
