using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The true-scale sheets as the packet takes them: numbered within the packet; when none can be drawn, a sheet that says why.</summary>
public static class TemplateKinds
{
    /// <summary>Key of the full template.</summary>
    public const string Key = "template";

    /// <summary>Key of the template for drilling alone.</summary>
    public const string DrillKey = "drill-only";

    /// <summary>The full template.</summary>
    public static ImmutableArray<Sheet> Full(SheetRequest request) => Draw(request, Key, drillOnly: false);

    /// <summary>Hole centres alone; no sheet without holes.</summary>
    public static ImmutableArray<Sheet> DrillOnly(SheetRequest request)
        => request.Results.Holes.IsDefaultOrEmpty ? [] : Draw(request, DrillKey, drillOnly: true);

    private static ImmutableArray<Sheet> Draw(SheetRequest request, string key, bool drillOnly)
    {
        var options = TemplateOptions.For(request, drillOnly);
        var span = request.SheetNumbers.TryGetValue(key, out var s) ? s : default;
        if (TemplateSheets.Trouble(request, options) is not { } trouble)
            return TemplateSheets.Draw(request, options, i => $"Packet sheet {span.First + i} of {request.SheetCount}");
        var (canvas, room) = SheetTop.New(request, key, "Template", "No template", "The true-scale template could not be drawn.");
        canvas.Wrapped($"Why: {trouble}. Use larger paper or a roll.", new Point(room.MinX, room.MaxY), room.Width, bold: true);
        return [TitleBlock.AddTo(request, canvas.Done(), span.First, request.SheetCount)];
    }
}
