using Tangwright.UseCases;

namespace Tangwright.Desk;

/// <summary>The solid of a plan as a file to save, or as the picture the page draws.</summary>
internal static class SolidFile
{
    /// <summary>Its address.</summary>
    /// <param name="stem">The plan.</param>
    /// <param name="ending">stl, 3mf or view.</param>
    /// <param name="stage">Stable name of the stage.</param>
    public static string Address(string stem, string ending, string stage) => $"/plan/{Uri.EscapeDataString(stem)}/solid.{ending}?stage={Uri.EscapeDataString(stage)}";

    /// <summary>Puts it under its address.</summary>
    public static void Map(WebApplication app)
    {
        Map(app, "stl", "model/stl");
        Map(app, "3mf", "model/3mf");
        Map(app, "view", "application/octet-stream");
    }

    private static void Map(WebApplication app, string ending, string kind) => app.MapGet(
        $"/plan/{{stem}}/solid.{ending}",
        (string stem, string? stage, DeskFolder folder) =>
        {
            var file = folder.Plan(stem).Then(plan => DeskSolid.File(plan, stage ?? "", ending));
            return file.IsGood
                ? Results.Bytes(file.Value.Bytes, kind, ending == "view" ? null : file.Value.Path)
                : Results.Text($"{file.Faults[0].Message}: {file.Faults[0].Remedy}", statusCode: StatusCodes.Status422UnprocessableEntity);
        });
}
