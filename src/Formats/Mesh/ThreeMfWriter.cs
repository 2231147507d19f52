using System.IO.Compression;
using System.Text;
using System.Xml;
using Tangwright.Foundation;

namespace Tangwright.Formats;

/// <summary>A solid as 3MF, mm: a zip of three parts after the open packaging conventions, the model in the words of the 3MF Core Specification (3MF Consortium), version 1.3 or any other 1.x.</summary>
public static class ThreeMfWriter
{
    private const string Core = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
    private const string Model = "3D/3dmodel.model";

    // the earliest time a zip can hold, so that the same solid gives the same bytes
    private static readonly DateTimeOffset Always = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The bytes.</summary>
    /// <param name="solid">The solid.</param>
    /// <param name="title">What it is.</param>
    /// <param name="says">A sentence for whoever opens it.</param>
    public static byte[] Write(TriangleMesh solid, string title, string says)
    {
        using var bytes = new System.IO.MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Part(zip, "[Content_Types].xml", x =>
            {
                x.WriteStartElement("Types", "http://schemas.openxmlformats.org/package/2006/content-types");
                Kind(x, "rels", "application/vnd.openxmlformats-package.relationships+xml");
                Kind(x, "model", "application/vnd.ms-package.3dmanufacturing-3dmodel+xml");
                x.WriteEndElement();
            });
            Part(zip, "_rels/.rels", x =>
            {
                x.WriteStartElement("Relationships", "http://schemas.openxmlformats.org/package/2006/relationships");
                x.WriteStartElement("Relationship");
                x.WriteAttributeString("Target", "/" + Model);
                x.WriteAttributeString("Id", "model");
                x.WriteAttributeString("Type", "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel");
                x.WriteEndElement();
                x.WriteEndElement();
            });
            Part(zip, Model, x => WriteModel(x, solid, title, says));
        }

        return bytes.ToArray();
    }

    private static void Kind(XmlWriter x, string ending, string kind)
    {
        x.WriteStartElement("Default");
        x.WriteAttributeString("Extension", ending);
        x.WriteAttributeString("ContentType", kind);
        x.WriteEndElement();
    }

    private static void Part(ZipArchive zip, string name, Action<XmlWriter> write)
    {
        var entry = zip.CreateEntry(name, CompressionLevel.Optimal);
        entry.LastWriteTime = Always;
        using var stream = entry.Open();
        using var x = XmlWriter.Create(stream, new XmlWriterSettings { Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), Indent = true, IndentChars = " ", NewLineChars = "\n", CheckCharacters = false });
        write(x);
    }

    private static void WriteModel(XmlWriter x, TriangleMesh solid, string title, string says)
    {
        x.WriteStartElement("model", Core);
        x.WriteAttributeString("unit", "millimeter");
        x.WriteAttributeString("xml", "lang", null, "en-US");
        Metadata(x, "Title", title);
        Metadata(x, "Description", says);
        Metadata(x, "Application", "Tangwright");
        x.WriteStartElement("resources");
        x.WriteStartElement("object");
        x.WriteAttributeString("id", "1");
        x.WriteAttributeString("type", "model");
        x.WriteAttributeString("name", Clean(title));
        x.WriteStartElement("mesh");
        x.WriteStartElement("vertices");
        foreach (var p in solid.Points)
        {
            x.WriteStartElement("vertex");
            x.WriteAttributeString("x", Number(p.X));
            x.WriteAttributeString("y", Number(p.Y));
            x.WriteAttributeString("z", Number(p.Z));
            x.WriteEndElement();
        }

        x.WriteEndElement();
        x.WriteStartElement("triangles");
        foreach (var (a, b, c) in solid.Triangles)
        {
            x.WriteStartElement("triangle");
            x.WriteAttributeString("v1", XmlConvert.ToString(a));
            x.WriteAttributeString("v2", XmlConvert.ToString(b));
            x.WriteAttributeString("v3", XmlConvert.ToString(c));
            x.WriteEndElement();
        }

        x.WriteEndElement();
        x.WriteEndElement();
        x.WriteEndElement();
        x.WriteEndElement();
        x.WriteStartElement("build");
        x.WriteStartElement("item");
        x.WriteAttributeString("objectid", "1");
        x.WriteEndElement();
        x.WriteEndElement();
        x.WriteEndElement();
    }

    private static void Metadata(XmlWriter x, string name, string value)
    {
        x.WriteStartElement("metadata");
        x.WriteAttributeString("name", name);
        x.WriteString(Clean(value));
        x.WriteEndElement();
    }

    private static string Clean(string text) => new([.. text.Where(c => XmlConvert.IsXmlChar(c) && !char.IsSurrogate(c))]);

    // the shortest digits that read back as the same number
    private static string Number(float value) => XmlConvert.ToString(value);
}
