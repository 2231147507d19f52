using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>Writes the JSON that other programs may rely on: indented, plain characters, numbers as short as they read back.</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    /// <summary>The text that <paramref name="write"/> makes, with a line end.</summary>
    public static string Of(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var w = new Utf8JsonWriter(buffer, Options))
        {
            w.WriteStartObject();
            write(w);
            w.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    /// <summary>An object under a name.</summary>
    public static void Object(this Utf8JsonWriter w, string name, Action inside)
    {
        w.WriteStartObject(name);
        inside();
        w.WriteEndObject();
    }

    /// <summary>A list under a name, an object an item.</summary>
    public static void List<T>(this Utf8JsonWriter w, string name, IEnumerable<T> items, Action<T> item)
    {
        w.WriteStartArray(name);
        foreach (var i in items)
        {
            w.WriteStartObject();
            item(i);
            w.WriteEndObject();
        }

        w.WriteEndArray();
    }

    /// <summary>A number, rounded to 9 decimals so that the last bits of the arithmetic do not show; null when there is none.</summary>
    public static void Number(this Utf8JsonWriter w, string name, double? value)
    {
        if (value is { } v && double.IsFinite(v)) w.WriteNumber(name, Math.Round(v, 9) + 0.0);
        else w.WriteNull(name);
    }

    /// <summary>A point as x and y in mm; null when there is none.</summary>
    public static void Place(this Utf8JsonWriter w, string name, Point? place)
    {
        if (place is not { } p)
        {
            w.WriteNull(name);
            return;
        }

        w.Object(name, () =>
        {
            w.Number("x_mm", p.X);
            w.Number("y_mm", p.Y);
        });
    }
}
