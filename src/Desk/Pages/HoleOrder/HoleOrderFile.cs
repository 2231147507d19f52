using Tangwright.UseCases;

namespace Tangwright.Desk;

/// <summary>The order of holes as a file for a spreadsheet.</summary>
internal static class HoleOrderFile
{
    /// <summary>Its address.</summary>
    public static string Address(string stem) => $"/plan/{Uri.EscapeDataString(stem)}/readout.csv";

    /// <summary>Puts it under its address.</summary>
    public static void Map(WebApplication app) => app.MapGet("/plan/{stem}/readout.csv", (string stem, DeskFolder folder) =>
    {
        var plan = folder.Plan(stem);
        if (!plan.IsGood) return Results.Text($"{plan.Faults[0].Message}: {plan.Faults[0].Remedy}", statusCode: StatusCodes.Status422UnprocessableEntity);
        var file = DeskWay.Csv(plan.Value);
        return Results.Bytes(file.Bytes, "text/csv; charset=utf-8", file.Path);
    });
}
