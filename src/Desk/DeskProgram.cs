using System.Globalization;
using System.Net;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Tangwright.UseCases;

namespace Tangwright.Desk;

/// <summary>Starts the desk on this computer alone, tells its address and runs until it is ended.</summary>
internal static class DeskProgram
{
    /// <summary>Runs it.</summary>
    /// <returns>0 when it was ended; 2 when it could not be started as asked.</returns>
    public static async Task<int> Run(string[] args)
    {
        var asked = DeskRequest.Of(args);
        if (!asked.IsGood) return Say(asked.Faults[0]);
        var request = asked.Value;
        if (request.Help)
        {
            Console.WriteLine(DeskRequest.HowUsed);
            return 0;
        }

        var folder = DeskFolder.Of(request.Folder, Slower, static () => new Planners.BarSolver());
        if (!folder.IsGood) return Say(folder.Faults[0]);
        using var open = folder.Value;
        await using var app = await Started(open, request.Port ?? DeskRequest.UsualPort) ?? (request.Port is null ? await Started(open, 0) : null);
        if (app is null)
        {
            Console.Error.WriteLine($"port {request.Port} is taken by another program; leave --port out and a free one is found");
            return 2;
        }

        var address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        var page = request.Stem is { } stem ? $"{address}/plan/{Uri.EscapeDataString(stem)}" : address;
        Console.WriteLine($"the desk is open at {page} (this computer only); Ctrl-C ends it");
        if (!request.NoBrowser) Browser.Open(page);
        await app.WaitForShutdownAsync();
        return 0;
    }

    /// <summary>Set by the stress tests alone: makes every calculation as slow as on an old computer.</summary>
    private static TimeSpan Slower => TimeSpan.FromMilliseconds(int.TryParse(Environment.GetEnvironmentVariable("TANGWRIGHT_DESK_SLOWER_MS"), NumberStyles.None, CultureInfo.InvariantCulture, out var ms) ? ms : 0);

    /// <summary>The desk listening on a port; null when the port is taken.</summary>
    private static async Task<WebApplication?> Started(DeskFolder folder, int port)
    {
        var app = DeskApp.Make(folder, IPAddress.Loopback, port);
        try
        {
            await app.StartAsync();
            return app;
        }
        catch (System.IO.IOException)
        {
            await app.DisposeAsync();
            return null;
        }
    }

    private static int Say(Foundation.Fault fault)
    {
        Console.Error.WriteLine($"{fault.File}: {fault.Message}; {fault.Remedy}");
        return 2;
    }
}
