namespace Tangwright.Foundation;

/// <summary>Gauss-Legendre rules on −1..1 (Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.4). n points integrate polynomials to degree 2n−1 exactly.</summary>
public static class Gauss
{
    /// <summary>Nodes of the 2-point rule.</summary>
    public static ReadOnlySpan<double> Nodes2 => [-0.57735026918962576451, 0.57735026918962576451];

    /// <summary>Weights of the 2-point rule.</summary>
    public static ReadOnlySpan<double> Weights2 => [1, 1];

    /// <summary>Nodes of the 3-point rule.</summary>
    public static ReadOnlySpan<double> Nodes3 => [-0.77459666924148337704, 0, 0.77459666924148337704];

    /// <summary>Weights of the 3-point rule.</summary>
    public static ReadOnlySpan<double> Weights3 => [0.55555555555555555556, 0.88888888888888888889, 0.55555555555555555556];

    /// <summary>Nodes of the 6-point rule.</summary>
    public static ReadOnlySpan<double> Nodes6 => [-0.93246951420315202781, -0.66120938646626451366, -0.23861918608319690863, 0.23861918608319690863, 0.66120938646626451366, 0.93246951420315202781];

    /// <summary>Weights of the 6-point rule.</summary>
    public static ReadOnlySpan<double> Weights6 => [0.17132449237917034504, 0.36076157304813860757, 0.46791393457269104739, 0.46791393457269104739, 0.36076157304813860757, 0.17132449237917034504];

    /// <summary>Nodes of the 16-point rule.</summary>
    public static ReadOnlySpan<double> Nodes16 =>
    [
        -0.989400934991649932596, -0.944575023073232576078, -0.865631202387831743880, -0.755404408355003033895,
        -0.617876244402643748447, -0.458016777657227386342, -0.281603550779258913230, -0.095012509837637440185,
        0.095012509837637440185, 0.281603550779258913230, 0.458016777657227386342, 0.617876244402643748447,
        0.755404408355003033895, 0.865631202387831743880, 0.944575023073232576078, 0.989400934991649932596,
    ];

    /// <summary>Weights of the 16-point rule.</summary>
    public static ReadOnlySpan<double> Weights16 =>
    [
        0.027152459411754094852, 0.062253523938647892863, 0.095158511682492784810, 0.124628971255533872052,
        0.149595988816576732082, 0.169156519395002538189, 0.182603415044923588867, 0.189450610455068496285,
        0.189450610455068496285, 0.182603415044923588867, 0.169156519395002538189, 0.149595988816576732082,
        0.124628971255533872052, 0.095158511682492784810, 0.062253523938647892863, 0.027152459411754094852,
    ];

    /// <summary>Integral of f from a to b by the 16-point rule.</summary>
    public static double Over(double a, double b, Func<double, double> f)
    {
        var (mid, half) = (0.5 * (a + b), 0.5 * (b - a));
        var sum = 0.0;
        for (var i = 0; i < Nodes16.Length; i++) sum += Weights16[i] * f(mid + (half * Nodes16[i]));
        return half * sum;
    }
}
