using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A solid that was written.</summary>
/// <param name="Path">Where.</param>
/// <param name="Says">What must be known about it, a sentence each.</param>
public sealed record WrittenSolid(string Path, ImmutableArray<string> Says);

/// <summary>Writes the piece as a solid, for a printed mock-up to hold in the hand.</summary>
public static class ExportSolid
{
    /// <summary>Writes NAME.stl or NAME.3mf, or NAME-STAGE of it when it is not the finished piece.</summary>
    /// <param name="planPath">The plan file.</param>
    /// <param name="to">stl or 3mf.</param>
    /// <param name="stage">Stable name of the stage; null: finished.</param>
    /// <param name="folder">Where to; null: beside the plan.</param>
    /// <param name="overwrite">Whether an existing file may be replaced.</param>
    public static Checked<WrittenSolid> Of(string planPath, string to, string? stage, string? folder, bool overwrite)
        => OpenWork.Of(planPath, null).Then(work =>
        {
            var results = work.WorkUp();
            return PieceSolid.StageOf(results, stage ?? "").Then(s => BladeMesh.Of(results, s.Stage)).Then(mesh =>
            {
                var ending = to.ToLowerInvariant();
                var path = System.IO.Path.Combine(folder ?? System.IO.Path.GetDirectoryName(planPath) ?? "", FileName(OpenWork.Stem(planPath), mesh.Stage, ending));
                var faults = OutputFolder.Write([new OutputFile(path, PieceSolid.Bytes(mesh, work.Plan, ending))], overwrite);
                return faults.Length > 0
                    ? Checked<WrittenSolid>.Bad(faults)
                    : Checked<WrittenSolid>.Good(new WrittenSolid(path, [.. PieceSolid.About(mesh, work.Plan), PieceSolid.Caution]));
            });
        });

    /// <summary>Name of the file of a solid.</summary>
    public static string FileName(string stem, Stage stage, string ending)
        => stage == Stage.Finished ? $"{stem}.{ending}" : $"{stem}-{StageName.Key(stage).Replace('_', '-')}.{ending}";
}
