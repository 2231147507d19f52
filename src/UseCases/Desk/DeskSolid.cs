using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>The solid of an open plan, made once for each state of the plan and stage however many ask for it.</summary>
public static class DeskSolid
{
    private static readonly ConditionalWeakTable<Results, ConcurrentDictionary<Stage, Lazy<Checked<BladeMesh>>>> Made = [];

    /// <summary>The stages to choose from: stable name, what it is called.</summary>
    public static ImmutableArray<(string Key, string Says)> Stages(Results results)
        => [.. results.Stages.Reverse().Where(s => s.Stage != Stage.Assembled).Select(s => (StageName.Key(s.Stage), FigureText.Of(s.Stage)))];

    /// <summary>The solid; takes up to about a second, so never ask for it where a page waits.</summary>
    public static Checked<BladeMesh> Of(Results results, string stage)
        => PieceSolid.StageOf(results, stage).Then(s => Made.GetOrCreateValue(results).GetOrAdd(s.Stage, key => new Lazy<Checked<BladeMesh>>(() => BladeMesh.Of(results, key))).Value);

    /// <summary>The solid as a file for the browser to save, or as the picture it draws ("view").</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="stage">Stable name of the stage.</param>
    /// <param name="ending">stl, 3mf or view.</param>
    public static Checked<OutputFile> File(PlanOnDesk desk, string stage, string ending)
    {
        var results = desk.Results;
        return Of(results, stage).Then(mesh => Checked<OutputFile>.Good(new OutputFile(
            ExportSolid.FileName(desk.Stem, mesh.Stage, ending),
            ending == "view" ? SolidPicture.Of(mesh) : PieceSolid.Bytes(mesh, results.Plan, ending))));
    }
}
