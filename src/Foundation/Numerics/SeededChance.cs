using System.Numerics;

namespace Tangwright.Foundation;

/// <summary>Numbers of chance that are always the same for the same seed: xoshiro256**, its state filled by SplitMix64 as its authors advise.</summary>
/// <remarks>A value type that is changed by drawing from it: pass it on by reference.</remarks>
[Formula("Evenly spread whole numbers of 64 bits that repeat for a seed", "blackman-vigna-2021", "Period 2^256 - 1; seeds far apart or near give unlike runs. Exact")]
public struct SeededChance
{
    private ulong _a;
    private ulong _b;
    private ulong _c;
    private ulong _d;

    /// <summary>A run with a given state, not all 0.</summary>
    public SeededChance(ulong a, ulong b, ulong c, ulong d) => (_a, _b, _c, _d) = (a, b, c, d);

    /// <summary>The run of a seed.</summary>
    public static SeededChance Of(ulong seed) => new(SplitMix(ref seed), SplitMix(ref seed), SplitMix(ref seed), SplitMix(ref seed));

    /// <summary>The run of one trial of many under a seed: trials can be taken up in any order, and again.</summary>
    public static SeededChance OfTrial(ulong seed, int trial)
    {
        var own = seed ^ ((ulong)(uint)trial * 0xD1342543DE82EF95UL);
        return Of(SplitMix(ref own));
    }

    /// <summary>The next number of SplitMix64, which moves its state on.</summary>
    public static ulong SplitMix(ref ulong state)
    {
        var z = state += 0x9E3779B97F4A7C15UL;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        var given = BitOperations.RotateLeft(_b * 5, 7) * 9;
        var t = _b << 17;
        _c ^= _a;
        _d ^= _b;
        _b ^= _c;
        _a ^= _d;
        _c ^= t;
        _d = BitOperations.RotateLeft(_d, 45);
        return given;
    }

    /// <summary>The next number from 0 up to but not 1, in steps of 2^-53.</summary>
    public double NextShare() => (Next() >> 11) * (1.0 / 9007199254740992.0);
}
