using Tangwright.UseCases;

namespace Tangwright.Desk;

/// <summary>The scanned drawing under a plan: sent by its page, given back to it. What comes from the folder is a PNG or JPEG by its first bytes or it is not given.</summary>
internal static class BackgroundFile
{
    /// <summary>Its address.</summary>
    public static string Address(PlanOnDesk plan, Background background) => $"{Address(plan)}?of={background.Mark}";

    /// <summary>Where a new one is sent to.</summary>
    public static string Address(PlanOnDesk plan) => $"/plan/{Uri.EscapeDataString(plan.Stem)}/background";

    /// <summary>Puts it under its address.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet("/plan/{stem}/background", (string stem, DeskFolder folder) => folder.Plan(stem) is { IsGood: true } plan && Background.Bytes(folder, plan.Value) is { } picture
            ? Results.Bytes(picture.Bytes, picture.Kind)
            : Results.NotFound());
        app.MapPost("/plan/{stem}/background", async (string stem, HttpRequest request, DeskFolder folder, CancellationToken left) =>
        {
            var plan = folder.Plan(stem);
            if (!plan.IsGood) return Results.NotFound();
            var put = await Taken(request, left) is { } bytes ? Background.Put(folder, plan.Value, bytes) : null;
            return put switch
            {
                null => Results.Text($"the picture is larger than {Background.LargestBytes / 1_000_000} MB", statusCode: StatusCodes.Status413PayloadTooLarge),
                { IsGood: true } => Results.NoContent(),
                _ => Results.Text($"{put.Faults[0].Message}: {put.Faults[0].Remedy}", statusCode: StatusCodes.Status422UnprocessableEntity),
            };
        });
    }

    /// <summary>The bytes sent; null when they are too many.</summary>
    private static async Task<byte[]?> Taken(HttpRequest request, CancellationToken left)
    {
        if (request.ContentLength > Background.LargestBytes) return null;
        using var all = new System.IO.MemoryStream();
        var part = new byte[65536];
        int n;
        while ((n = await request.Body.ReadAsync(part, left)) > 0)
        {
            if (all.Length + n > Background.LargestBytes) return null;
            all.Write(part, 0, n);
        }

        return all.ToArray();
    }
}
