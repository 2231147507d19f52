using System.Net;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Tangwright.UseCases;

namespace Tangwright.Desk;

/// <summary>The web app itself: guard first, then its own files and pages.</summary>
internal static class DeskApp
{
    /// <summary>Makes it, not yet listening.</summary>
    public static WebApplication Make(DeskFolder folder, IPAddress address, int port)
    {
        // its own files lie beside the program, wherever it is started from
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(k =>
        {
            k.Listen(address, port);
            k.AddServerHeader = false;
        });
        builder.Logging.ClearProviders().AddSimpleConsole(c => c.SingleLine = true).SetMinimumLevel(LogLevel.Error);
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        builder.Services.AddSingleton(folder);
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddScoped<PageHand>();
        builder.Services.AddScoped<CircuitHandler>(s => s.GetRequiredService<PageHand>());

        var app = builder.Build();
        OwnPagesOnly.Use(app);
        app.UseAntiforgery();
        app.MapStaticAssets();
        SheetsFiles.Map(app);
        BackgroundFile.Map(app);
        SolidFile.Map(app);
        ProgramFile.Map(app);
        HoleOrderFile.Map(app);
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
        return app;
    }
}
