using Tangwright.UseCases;

namespace Tangwright.Desk;

/// <summary>The program of a plan as a file to save; one that fails the check is not given out.</summary>
internal static class ProgramFile
{
    /// <summary>Its address.</summary>
    /// <param name="stem">The plan.</param>
    /// <param name="work">all, holes or profile.</param>
    /// <param name="zero">Hole taken as zero; empty for the corner of the stock.</param>
    /// <param name="machine">The mill; empty for the first.</param>
    public static string Address(string stem, string work, string zero, string machine)
        => $"/plan/{Uri.EscapeDataString(stem)}/program.ngc" + QueryString.Create("work", work).Add("zero", zero).Add("machine", machine);

    /// <summary>Puts it under its address.</summary>
    public static void Map(WebApplication app) => app.MapGet(
        "/plan/{stem}/program.ngc",
        (string stem, string? work, string? zero, string? machine, DeskFolder folder) =>
        {
            var file = folder.Plan(stem).Then(plan => MillProgram.File(plan, machine, MillProgram.Choice(work, zero)));
            return file.IsGood
                ? Results.Bytes(file.Value.Bytes, "text/plain", file.Value.Path)
                : Results.Text($"{file.Faults[0].Message}: {file.Faults[0].Remedy}", statusCode: StatusCodes.Status422UnprocessableEntity);
        });
}
