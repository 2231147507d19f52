using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Moves pieces about until none meets another, on a strip of fixed length.</summary>
/// <remarks>Guided local search after Umetani and others 2009 and Gardeyn, Vanden Berghe and Wauters 2025, arXiv:2509.13329, section 8.</remarks>
internal sealed class Separation(LayoutState state)
{
    private const double GainShare = 0.98;

    private readonly Replacing _replacing = new(state);
    private readonly int[] _turn = new int[state.Count];

    /// <summary>The state with the least loss of the last run.</summary>
    public PlacesKept Least { get; } = new(state.Count);

    /// <summary>Whether the last run came to its end with nothing meeting.</summary>
    public bool IsClear { get; private set; }

    /// <summary>Sweeps of the last run.</summary>
    public int Sweeps { get; private set; }

    /// <summary>Runs; gives control back after every sweep.</summary>
    /// <param name="patience">Sweeps without gain before the best is taken up again.</param>
    /// <param name="strikes">Times that may come to nothing.</param>
    /// <param name="chance">Lots.</param>
    public IEnumerable<bool> Run(int patience, int strikes, ChanceHolder chance)
    {
        (IsClear, Sweeps) = (false, 0);
        state.ForgetWeights();
        Least.Keep(state, state.Total());
        if (Least.Loss == 0)
        {
            IsClear = true;
            yield break;
        }

        for (var strike = 0; strike < strikes;)
        {
            var (start, since) = (Least.Loss, 0);
            while (since < patience)
            {
                Sweep(ref chance.Chance);
                Sweeps++;
                var loss = state.Total();
                if (loss == 0)
                {
                    Least.Keep(state, 0);
                    IsClear = true;
                    yield break;
                }

                since = loss < GainShare * Least.Loss ? 0 : since + 1;
                if (loss < Least.Loss) Least.Keep(state, loss);
                state.Reweigh();
                yield return true;
            }

            strike = Least.Loss < GainShare * start ? 0 : strike + 1;
            state.Take(Least);
        }
    }

    private void Sweep(ref SeededChance chance)
    {
        var count = 0;
        for (var i = 0; i < state.Count; i++)
        {
            if (state.Meets(i)) _turn[count++] = i;
        }

        for (var k = count - 1; k > 0; k--)
        {
            var other = (int)(chance.NextShare() * (k + 1));
            (_turn[k], _turn[other]) = (_turn[other], _turn[k]);
        }

        for (var k = 0; k < count; k++)
        {
            if (state.Meets(_turn[k])) _replacing.Move(_turn[k], ref chance);
        }
    }
}

/// <summary>Lots that several share.</summary>
internal sealed class ChanceHolder(SeededChance chance)
{
    /// <summary>The run of lots.</summary>
    public SeededChance Chance = chance;
}
