namespace Tangwright.Core;

/// <summary>A layout to begin with, at once and surely clear: boxes stacked in columns, the widest first.</summary>
internal static class Shelves
{
    /// <summary>Lays them.</summary>
    public static PlacesKept Of(PieceFields fields, int[] kinds, double width)
    {
        var state = new LayoutState(fields, kinds, width);
        var (left, up, column) = (0.0, 0.0, 0.0);
        foreach (var i in Enumerable.Range(0, kinds.Length).OrderByDescending(i => Way(i).Width))
        {
            var way = Way(i);
            if (up + way.Height > width)
            {
                (left, up, column) = (left + column, 0, 0);
            }

            state.Put(i, way, left, up);
            (up, column) = (up + way.Height, Math.Max(column, way.Width));
        }

        state.Length = left + column;
        return new PlacesKept(kinds.Length).Keep(state, 0);

        TurnedPiece Way(int i) => fields.Ways[kinds[i]][0];
    }
}
