using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>What was written, as JSON; names are stable between versions.</summary>
public static class WrittenJson
{
    /// <summary>A packet or a template: the files, the sheets, and how many findings of each severity there are.</summary>
    public static string Of(WrittenPacket written) => JsonText.Of(w =>
    {
        w.WriteStartArray("files");
        foreach (var f in written.Files) w.WriteStringValue(f);
        w.WriteEndArray();
        w.WriteNumber("sheets", written.SheetCount);
        if (!written.NoProgram.IsEmpty)
        {
            w.WriteStartArray("no_program");
            foreach (var f in written.NoProgram) w.WriteStringValue($"{f.Message}: {f.Remedy}");
            w.WriteEndArray();
        }

        w.Object("findings", () =>
        {
            foreach (var s in new[] { Severity.Error, Severity.Warning, Severity.Note })
            {
                w.WriteNumber(CheckPlan.SeverityWord(s), written.Results.Findings.Count(f => f.Severity == s));
            }
        });
    });

    /// <summary>A plan made from a drawing: where it is, what was taken and what was left out.</summary>
    public static string Of(ImportedPlan imported) => JsonText.Of(w =>
    {
        w.WriteString("plan", imported.PlanPath);
        w.WriteStartArray("taken");
        foreach (var t in imported.Taken) w.WriteStringValue(t);
        w.WriteEndArray();
        w.WriteStartArray("left_out");
        foreach (var t in imported.LeftOut) w.WriteStringValue(t);
        w.WriteEndArray();
    });
}
