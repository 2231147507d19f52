using System.Text;
using System.Xml;

namespace Tangwright.Inputs;

/// <summary>Reads the XML of an SVG file into elements. Nothing is fetched and nothing is expanded: no document type with entities, no other file, no script.</summary>
internal static class SvgTree
{
    private const string SvgSpace = "http://www.w3.org/2000/svg";

    public static SvgElement? Read(byte[] bytes, CurveTray tray)
    {
        if (!BlankDocumentType(ref bytes, tray)) return null;
        var settings = new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            MaxCharactersInDocument = CurveTray.MostBytes,
            MaxCharactersFromEntities = 1000,
            IgnoreComments = true,
            IgnoreWhitespace = true,
        };
        try
        {
            using var stream = new System.IO.MemoryStream(bytes, writable: false);
            using var xml = XmlReader.Create(stream, settings);
            return Read(xml, tray);
        }
        catch (XmlException e)
        {
            // the reader's own messages are meant for programmers: keep the first sentence only
            var text = e.Message.Split(" Line ", 2)[0].Split(" For security", 2)[0];
            tray.Refuse(e.LineNumber, $"The file is no sound XML: {text}", "Save the drawing again as plain SVG.");
            return null;
        }
        catch (DecoderFallbackException)
        {
            tray.Refuse(0, "The file holds bytes that are no text.", "Save the drawing again as plain SVG.");
            return null;
        }
    }

    private static SvgElement? Read(XmlReader xml, CurveTray tray)
    {
        var open = new Stack<SvgElement>();
        SvgElement? root = null;
        var count = 0;
        while (tray.Fault is null && xml.Read())
        {
            var line = (xml as IXmlLineInfo)?.LineNumber ?? 0;
            switch (xml.NodeType)
            {
                case XmlNodeType.ProcessingInstruction when string.Equals(xml.Name, "xml-stylesheet", StringComparison.Ordinal):
                    tray.Refuse(line, "The drawing refers to a style sheet in another file.", "Save it as plain SVG, with nothing linked.", xml.Value);
                    break;
                case XmlNodeType.EntityReference:
                    tray.Refuse(line, $"The drawing uses the entity &{xml.Name};, which it does not explain.", "Save it as plain SVG.");
                    break;
                case XmlNodeType.EndElement: open.Pop(); break;
                case XmlNodeType.Text or XmlNodeType.CDATA when open.Count > 0 && string.Equals(open.Peek().Name, "style", StringComparison.Ordinal):
                    if (PointsOutside(xml.Value)) tray.Refuse(line, "A style of the drawing refers to another file.", "Save it as plain SVG, with nothing linked.");
                    break;
                case XmlNodeType.Element:
                    if (++count > CurveTray.MostEntities)
                    {
                        tray.Refuse(line, $"The drawing has more than {CurveTray.MostEntities:N0} elements.", "Save only the piece into a file of its own.");
                        break;
                    }

                    if (open.Count >= CurveTray.DeepestNesting)
                    {
                        tray.Refuse(line, $"Groups stand within groups more than {CurveTray.DeepestNesting} deep.", "Ungroup the drawing and save it again.");
                        break;
                    }

                    var e = Element(xml, line, open.Count, tray);
                    if (open.Count > 0) open.Peek().Children.Add(e);
                    else root = e;
                    if (!xml.IsEmptyElement) open.Push(e);
                    break;
                default: break;
            }
        }

        return tray.Fault is null ? root : null;
    }

    private static SvgElement Element(XmlReader xml, int line, int depth, CurveTray tray)
    {
        var own = xml.NamespaceURI.Length == 0 || string.Equals(xml.NamespaceURI, SvgSpace, StringComparison.Ordinal);
        var e = new SvgElement(own ? xml.LocalName : "another vocabulary's element", line, depth);
        if (string.Equals(xml.LocalName, "script", StringComparison.OrdinalIgnoreCase))
            tray.Refuse(line, "The drawing holds a script.", "A drawing needs none: save it as plain SVG.");
        if (!xml.MoveToFirstAttribute()) return e;
        do
        {
            if (own && xml.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase) && xml.Prefix.Length == 0)
                tray.Refuse(line, $"The drawing holds a script (in {xml.Name}).", "A drawing needs none: save it as plain SVG.");

            // xlink:href counts as href; a layer's label keeps its name without the prefix unless the plain one is there
            e.Attributes.TryAdd(xml.LocalName, xml.Value);
        }
        while (xml.MoveToNextAttribute());
        xml.MoveToElement();
        if (own && e.Name is "use" or "image" or "feImage" or "tref" && e["href"] is { } href && !href.StartsWith('#') && !href.StartsWith("data:", StringComparison.OrdinalIgnoreCase))
            tray.Refuse(line, $"The drawing refers to another file (<{e.Name}>).", "Take the reference out, or put the other file's curves into this drawing.", href);
        if (e["style"] is { } style && PointsOutside(style)) tray.Refuse(line, "A style of the drawing refers to another file.", "Save it as plain SVG, with nothing linked.", style);
        return e;
    }

    private static bool PointsOutside(string css)
    {
        if (css.Contains("@import", StringComparison.OrdinalIgnoreCase)) return true;
        for (var at = css.IndexOf("url(", StringComparison.OrdinalIgnoreCase); at >= 0; at = css.IndexOf("url(", at + 4, StringComparison.OrdinalIgnoreCase))
        {
            var inside = css.AsSpan(at + 4).TrimStart(" \t\r\n\"'");
            if (!inside.StartsWith("#") && !inside.StartsWith("data:", StringComparison.OrdinalIgnoreCase)) return true;
        }

        return false;
    }

    /// <summary>Many programs write a document type that only names the standard: it is blanked out, so that the XML reader may refuse every other one. One with a part of its own (entities) is refused with its line.</summary>
    private static bool BlankDocumentType(ref byte[] bytes, CurveTray tray)
    {
        var at = bytes.AsSpan().IndexOf("<!DOCTYPE"u8);
        if (at < 0) return true;
        var quote = (byte)0;
        for (var i = at; i < bytes.Length; i++)
        {
            var b = bytes[i];
            if (quote != 0)
            {
                if (b == quote) quote = 0;
                continue;
            }

            if (b is (byte)'"' or (byte)'\'') quote = b;
            if (b == '[')
            {
                tray.Refuse(1 + bytes.AsSpan(0, i).Count((byte)'\n'), "The drawing defines entities of its own in its document type; they are never expanded.", "Save it as plain SVG, or delete the DOCTYPE.");
                return false;
            }

            if (b != '>') continue;
            bytes = [.. bytes];
            for (var k = at; k <= i; k++)
            {
                if (bytes[k] is not ((byte)'\n' or (byte)'\r')) bytes[k] = (byte)' ';
            }

            return true;
        }

        return true;
    }
}
