using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>The piece as a solid for other programs: kinds of file, bytes, and what must be known about it.</summary>
public static class PieceSolid
{
    /// <summary>What is true of every printed mock-up.</summary>
    public const string Caution = "A printed mock-up is for the hand, not for use: it weighs and balances differently from the steel, and edges and points of plastic can still cut. Dull them before you hand it round. The maker's manual of the printer comes first.";

    /// <summary>Kinds of file, the ending first, then what it is.</summary>
    public static ImmutableArray<(string Ending, string Says)> Kinds { get; } = [("stl", "STL"), ("3mf", "3MF")];

    /// <summary>The stages, the last first, by their stable names.</summary>
    public static ImmutableArray<string> Stages { get; } = [.. Enum.GetValues<Stage>().Where(s => s != Stage.Assembled).Reverse().Select(StageName.Key)];

    /// <summary>The stage of a stable name; "" is the finished piece.</summary>
    public static Checked<StageFigures> StageOf(Results results, string name)
    {
        var wanted = name.Length == 0 ? StageName.Key(Stage.Finished) : name;
        return results.Stages.FirstOrDefault(s => s.Stage != Stage.Assembled && StageName.Key(s.Stage) == wanted) is { } stage
            ? Checked<StageFigures>.Good(stage)
            : Checked<StageFigures>.Bad(Fault.OfFile("--stage", $"\"{name}\" is no stage", "write " + string.Join(", ", Stages)));
    }

    /// <summary>The bytes of a file.</summary>
    /// <param name="mesh">The solid.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="ending">stl or 3mf.</param>
    public static byte[] Bytes(BladeMesh mesh, Plan plan, string ending)
    {
        var title = $"{plan.Name} rev {plan.Revision}, {Documents.FigureText.Of(mesh.Stage)}";
        return ending == "3mf" ? ThreeMfWriter.Write(mesh.Solid, title, Caution) : StlWriter.Write(mesh.Solid, title);
    }

    /// <summary>How well the solid stands for the piece, a sentence each.</summary>
    public static ImmutableArray<string> About(BladeMesh mesh, Plan plan)
    {
        var says = ImmutableArray.CreateBuilder<string>();
        says.Add($"{mesh.Solid.Triangles.Length} triangles hold {Both(mesh.Solid.VolumeMm3)}; by the figures it is {Both(mesh.Figure.Mm3)}, {Shown.Number(Math.Abs(mesh.VolumeOffShare) * 100, 3)} % off.");
        says.Add($"Sides lie within {Shown.Number(mesh.OutlineOffMm, 3)} mm of the outline" + (mesh.Faces.Contains(BladeFace.Bevel) ? $", faces within {Shown.Number(mesh.ThicknessOffMm, 3)} mm of the thickness the bevel has{(plan.Bevel is { IsFull: true } ? ", save within 0.4 mm of a step where a full height changes at once" : "")}." : "."));
        if (mesh.BrokenEdges.Mm3 > 0) says.Add($"Broken edges are not shaped: they would take off {Both(mesh.BrokenEdges.Mm3)} more.");
        if (mesh.Faces.Contains(BladeFace.Bevel) && plan.Bevel is { } bevel)
        {
            if (BevelSolid.IsFlatStandIn(bevel)) says.Add("The bevel is shaped flat: the plan does not say the wheel it is hollowed on.");
            if (bevel.OneSided) says.Add("The bevel is on the upper face.");
        }

        return says.ToImmutable();
    }

    private static string Both(double mm3) => $"{Shown.Number(mm3 / 1000, 3)} cm³ ({Shown.Number(mm3 / (25.4 * 25.4 * 25.4), 3)} in³)";
}
