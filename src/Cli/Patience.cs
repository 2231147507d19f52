namespace Tangwright.Cli;

/// <summary>Says what is being done, on standard error, when it takes more than a second, and again every few seconds.</summary>
internal static class Patience
{
    private static readonly TimeSpan First = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Then = TimeSpan.FromSeconds(3);

    /// <summary>Does it.</summary>
    /// <param name="doing">What is being done: "drawing the sheets".</param>
    /// <param name="work">The work.</param>
    public static T While<T>(string doing, Func<T> work)
    {
        var started = TimeProvider.System.GetTimestamp();
        using var timer = new Timer(_ => Console.Error.WriteLine($"still {doing}: {TimeProvider.System.GetElapsedTime(started).TotalSeconds:F0} s"), state: null, First, Then);
        return work();
    }

    /// <summary>Does work that Ctrl-C ends early with the best found by then; a second Ctrl-C ends the program.</summary>
    /// <param name="doing">What is being done.</param>
    /// <param name="work">The work.</param>
    public static T UntilStopped<T>(string doing, Func<CancellationToken, T> work)
    {
        using var stop = new CancellationTokenSource();
        void Stop(object? sender, ConsoleCancelEventArgs e)
        {
            e.Cancel = !stop.IsCancellationRequested;
            stop.Cancel();
        }

        Console.CancelKeyPress += Stop;
        try
        {
            return While(doing, () => work(stop.Token));
        }
        finally
        {
            Console.CancelKeyPress -= Stop;
        }
    }
}
