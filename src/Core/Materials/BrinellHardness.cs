using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Brinell hardness for a Rockwell C hardness, as printed for steels other than austenitic ones.</summary>
[Formula("Brinell hardness of a Rockwell C hardness, HB", "astm-e140", "40 to 60 HRC, two reprints of table 1 agree; over 60 the table has no figure and a line drawn on from its last two is used")]
public static class BrinellHardness
{
    private const int FirstHrc = 40;

    private static ReadOnlySpan<short> Table => [371, 381, 390, 400, 409, 421, 432, 443, 455, 469, 481, 496, 512, 525, 543, 560, 577, 595, 615, 634, 654];

    /// <summary>The Brinell hardness, HB.</summary>
    /// <param name="hrc">Rockwell C hardness, from 40 up; a softer one is taken as 40.</param>
    public static double OfRockwellC(double hrc)
    {
        var steps = Math.Max(0, hrc - FirstHrc);
        var i = Math.Min((int)steps, Table.Length - 2);
        return Table[i] + ((steps - i) * (Table[i + 1] - Table[i]));
    }
}
