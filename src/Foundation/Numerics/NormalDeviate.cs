namespace Tangwright.Foundation;

/// <summary>Deviates of the normal distribution, mean 0 and standard deviation 1, by the ziggurat of 256 layers.</summary>
/// <remarks>
/// Layer i reaches out to X[i]; all have the area of the lowest, r exp(-r²/2) and the tail beyond r. The layer is taken from other bits than the place in it (Doornik 2005).
/// A place under the next layer's reach is taken at once; one in the rim is held against the curve; one beyond r is drawn from the tail (Marsaglia 1964).
/// </remarks>
[Formula("Normal deviates of mean 0 and standard deviation 1", "marsaglia-tsang-2000", "Both signs, tail included; places in steps of 2^-53 of a layer")]
public static class NormalDeviate
{
    private const int Layers = 256;
    private const double R = 3.6541528853610088;

    private static readonly double[] Reach = new double[Layers + 1];
    private static readonly double[] Height = new double[Layers + 1];

    static NormalDeviate()
    {
        // area of a layer: the rectangle under r and the tail, sqrt(pi / 2) erfc(r / sqrt 2)
        var area = (R * Curve(R)) + (Math.Sqrt(Math.PI / 2) * (1 - ChiSquared.ShareBelow(R * R, 1)));
        Reach[0] = area / Curve(R);
        Reach[1] = R;
        for (var i = 2; i < Layers; i++) Reach[i] = Math.Sqrt(-2 * Math.Log((area / Reach[i - 1]) + Curve(Reach[i - 1])));
        for (var i = 0; i <= Layers; i++) Height[i] = Curve(Reach[i]);
    }

    /// <summary>The next one.</summary>
    public static double Next(ref SeededChance chance)
    {
        while (true)
        {
            var bits = chance.Next();
            var layer = (int)(bits & 255);
            var place = (long)bits >> 10;
            var x = place * (Reach[layer] * (1.0 / 9007199254740992.0));
            if (Math.Abs(x) < Reach[layer + 1]) return x;
            if (layer == 0) return Tail(ref chance, x < 0);
            if (Height[layer] + (chance.NextShare() * (Height[layer + 1] - Height[layer])) < Curve(x)) return x;
        }
    }

    private static double Tail(ref SeededChance chance, bool below)
    {
        double x;
        double y;
        do
        {
            x = -Math.Log(1 - chance.NextShare()) / R;
            y = -Math.Log(1 - chance.NextShare());
        }
        while (y + y < x * x);
        return below ? -(R + x) : R + x;
    }

    private static double Curve(double x) => Math.Exp(-0.5 * x * x);
}
