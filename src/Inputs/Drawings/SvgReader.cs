using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads the curves of an SVG drawing at true size, y turned up: paths and basic shapes, groups, transforms, uses of parts of the same file. Text, pictures and clipping are left out.</summary>
internal sealed class SvgReader
{
    private const int MostUses = 100_000;

    private static readonly HashSet<string> Silent = new(StringComparer.Ordinal)
    {
        "defs", "symbol", "clipPath", "mask", "marker", "pattern", "linearGradient", "radialGradient", "filter", "style", "title", "desc", "metadata", "another vocabulary's element", "view", "font", "cursor", "color-profile",
    };

    private readonly CurveTray _tray;
    private readonly Dictionary<string, SvgElement> _byId = new(StringComparer.Ordinal);
    private int _uses;
    private int _drawn;

    private SvgReader(string file) => _tray = new CurveTray(file);

    public static CurveTray Read(byte[] bytes, string file, ImportChoice choice)
    {
        var reader = new SvgReader(file);
        var tray = reader._tray;
        if (SvgTree.Read(bytes, tray) is not { } root) return tray;
        if (!string.Equals(root.Name, "svg", StringComparison.Ordinal))
        {
            tray.Refuse(root.Line, $"The file begins with <{root.Name}>, not with <svg>.", "Save the drawing as plain SVG.");
            return tray;
        }

        reader.Index(root);
        var map = reader.TrueSize(root, choice);
        if (tray.Fault is null) reader.DrawChildren(root, map, "0", 0);
        return tray;
    }

    private void Index(SvgElement e)
    {
        if (e["id"] is { } id) _byId.TryAdd(id, e);
        foreach (var child in e.Children) Index(child);
    }

    /// <summary>The map from user units, y down, to mm, y up. The point 0 0 stays where it is.</summary>
    private Transform TrueSize(SvgElement root, ImportChoice choice)
    {
        var box = ViewBox(root);
        var (mmX, mmY) = (SizeMm(root, "width", out var unit), SizeMm(root, "height", out var unitOfHeight));
        var (sx, sy) = (double.NaN, double.NaN);
        if (mmX is not null || mmY is not null)
        {
            if (box is { } b)
            {
                sx = mmX / b.Width ?? double.NaN;
                sy = mmY / b.Height ?? double.NaN;
                var stretch = (root["preserveAspectRatio"] ?? "").TrimStart().StartsWith("none", StringComparison.Ordinal);
                if (double.IsNaN(sx)) sx = sy;
                if (double.IsNaN(sy)) sy = sx;
                if (!stretch) sx = sy = (root["preserveAspectRatio"] ?? "").Contains("slice", StringComparison.Ordinal) ? Math.Max(sx, sy) : Math.Min(sx, sy);
            }
            else
            {
                sx = sy = SvgNumbers.MmPerPx;
            }

            _tray.MmPerUnit = sx;
            _tray.Units = string.Equals(mmX is null ? unitOfHeight : unit, "in", StringComparison.Ordinal) ? LengthUnit.Inch : LengthUnit.Mm;
        }

        if (choice.Units is not null)
        {
            _tray.SayUnits(choice.Units);
            sx = sy = _tray.MmPerUnit!.Value;
        }

        if (double.IsNaN(sx)) sx = sy = 1;
        return Transform.Scale(sx, -sy);
    }

    private (double Width, double Height)? ViewBox(SvgElement root)
    {
        if (root["viewBox"] is not { } text) return null;
        if (SvgNumbers.Numbers(text) is [_, _, var w and > 0, var h and > 0]) return (w, h);
        _tray.Refuse(root.Line, "The viewBox should be four numbers, the last two above zero.", "Save the drawing again.", text);
        return null;
    }

    /// <summary>A size with a unit, mm; null where it is absent, without a unit or in percent.</summary>
    private double? SizeMm(SvgElement root, string name, out string unit)
    {
        unit = "";
        if (root[name] is not { } text || string.Equals(text.Trim(), "auto", StringComparison.Ordinal)) return null;
        if (!SvgNumbers.TryLength(text, out var n, out unit) || n < 0)
        {
            _tray.Refuse(root.Line, $"The {name} of the drawing should be a length.", $"Write it as {name}=\"200mm\".", text);
            return null;
        }

        return SvgNumbers.MmPer(unit) is { } mm && n > 0 ? n * mm : null;
    }

    private void DrawChildren(SvgElement parent, Transform map, string layer, int depth)
    {
        foreach (var child in parent.Children)
        {
            if (_tray.Fault is not null) return;
            Draw(child, map, layer, depth);
        }
    }

    private void Draw(SvgElement e, Transform map, string layer, int depth)
    {
        if (Silent.Contains(e.Name)) return;
        if (++_drawn > CurveTray.MostEntities || depth > CurveTray.DeepestNesting)
        {
            _tray.Refuse(e.Line, depth > CurveTray.DeepestNesting ? "Parts of the drawing use one another too deep, or one uses itself." : $"The drawing shows more than {CurveTray.MostEntities:N0} elements.", "Save only the piece, ungrouped, into a file of its own.");
            return;
        }

        if (string.Equals(e.Property("display"), "none", StringComparison.Ordinal) || e.Property("visibility") is "hidden" or "collapse")
        {
            _tray.Leave($"hidden {e.Name}");
            return;
        }

        if (e["transform"] is { } text)
        {
            if (SvgNumbers.Transforms(text) is not { } own)
            {
                _tray.Refuse(e.Line, "This transform cannot be read.", "Use matrix, translate, scale, rotate, skewX or skewY with plain numbers.", text);
                return;
            }

            map = own.Then(map);
            if (map.Determinant == 0 || !double.IsFinite(map.Determinant))
            {
                _tray.Leave($"{e.Name} scaled to nothing");
                return;
            }
        }

        switch (e.Name)
        {
            case "g":
                DrawChildren(e, map, LayerOf(e) ?? layer, depth + 1);
                break;
            case "a" or "switch": DrawChildren(e, map, layer, depth + 1); break;
            case "svg": DrawChildren(e, Placed(e, map), layer, depth + 1); break;
            case "use": Use(e, map, layer, depth); break;
            case "text":
                _tray.Texts.Add(map.Map(TextPlace(e)));
                _tray.Leave("text");
                break;
            default:
                if (!SvgShapes.IsShape(e.Name))
                {
                    _tray.Leave(e.Name);
                    break;
                }

                foreach (var path in SvgShapes.Of(e, _tray)) _tray.Add(layer, path.Transformed(map).Segments, path.Closed, e.Line);
                break;
        }
    }

    private void Use(SvgElement e, Transform map, string layer, int depth)
    {
        if (e["href"] is not { Length: > 1 } href || !_byId.TryGetValue(href[1..], out var target))
        {
            _tray.Refuse(e.Line, "A <use> names a part that is not in the drawing.", "Save the drawing again with all its parts.", e["href"] ?? "");
            return;
        }

        if (++_uses > MostUses)
        {
            _tray.Refuse(e.Line, $"Parts of the drawing are used more than {MostUses:N0} times.", "Save only the piece into a file of its own.");
            return;
        }

        map = Transform.Shift(new Point(Plain(e, "x"), Plain(e, "y"))).Then(map);
        if (string.Equals(target.Name, "symbol", StringComparison.Ordinal)) DrawChildren(target, Placed(target, map), layer, depth + 1);
        else Draw(target, map, layer, depth + 1);
    }

    /// <summary>The axes inside an inner drawing or a symbol: its place, and its size over its viewBox.</summary>
    private Transform Placed(SvgElement e, Transform map)
    {
        map = Transform.Shift(new Point(Plain(e, "x"), Plain(e, "y"))).Then(map);
        if (ViewBox(e) is not { } box || SvgNumbers.Numbers(e["viewBox"]!) is not [var x, var y, _, _]) return map;
        var (w, h) = (Plain(e, "width"), Plain(e, "height"));
        var f = w > 0 && h > 0 ? Math.Min(w / box.Width, h / box.Height) : w > 0 ? w / box.Width : h > 0 ? h / box.Height : 1;
        return Transform.Shift(new Point(-x, -y)).Then(Transform.Scale(f, f)).Then(map);
    }

    private double Plain(SvgElement e, string name)
    {
        if (e[name] is not { } text) return 0;
        if (SvgNumbers.TryLength(text, out var n, out var unit) && !string.Equals(unit, "%", StringComparison.Ordinal)) return SvgNumbers.MmPer(unit) is { } mm ? n * mm / SvgNumbers.MmPerPx : n;
        if (string.Equals(unit, "%", StringComparison.Ordinal)) return 0;
        _tray.Refuse(e.Line, $"{name} of <{e.Name}> should be a number.", "Mend it, or save the drawing again.", text);
        return 0;
    }

    private static Point TextPlace(SvgElement e)
    {
        // a text may have a place for each letter; the first will do, and one that cannot be read only weakens a guess
        var (x, y) = (SvgNumbers.Numbers(e["x"] ?? ""), SvgNumbers.Numbers(e["y"] ?? ""));
        return new Point(x is { Count: > 0 } ? x[0] : 0, y is { Count: > 0 } ? y[0] : 0);
    }

    private static string? LayerOf(SvgElement g) => g["label"] ?? g["id"];
}
