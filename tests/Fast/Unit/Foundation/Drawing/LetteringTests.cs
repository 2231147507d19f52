using System.Buffers.Binary;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>Held against the font file itself: tables cmap (format 4), hmtx, hhea and glyf as the OpenType specification lays them out, read here by hand.</summary>
public sealed class LetteringTests
{
    private const string Used = " ABCxyz0129.,;:-+/()[]{}%&#@'\"*=<>?!_~ÄÖÜäöüßéèàñçÅåÆØø±°µ×÷·²³¹½¼¾«»§©®–—…‘’“”•→←↑↓≤≥≠≈−⁄∑√☐☑■□●○▲▼€";

    [Theory]
    [InlineData("DejaVuSansCondensed.ttf", false)]
    [InlineData("DejaVuSansCondensed-Bold.ttf", true)]
    public void Every_width_of_the_table_is_that_of_the_font(string resource, bool bold)
    {
        var font = FontFile.Load(resource);
        Assert.Equal(2048, font.UnitsPerEm);
        var checkedCount = 0;
        for (var c = '\u0020'; c < '\uFFFF'; c++)
        {
            if (!Lettering.Knows(c)) continue;
            Assert.True(font.Glyph(c) > 0, $"U+{(int)c:X4} is in the table but not in the font");
            Assert.Equal(font.Advance(font.Glyph(c)) * 7.0 / 1493, Lettering.Width(c.ToString(), 7, bold), 1e-12);
            checkedCount++;
        }

        Assert.True(checkedCount > 230, $"only {checkedCount} characters");
        Assert.Equal(Lettering.Width("\u25A1", 7, bold), Lettering.Width("\u4E00", 7, bold), 1e-12);
        Assert.Equal(Lettering.CapitalInEm * 2048, font.Top(font.Glyph('H')));
    }

    [Fact]
    public void Characters_the_sheets_use_are_in_the_table()
    {
        foreach (var c in Used) Assert.True(Lettering.Knows(c), $"'{c}' U+{(int)c:X4}");
    }

    [Fact]
    public void What_cannot_be_drawn_becomes_a_box_and_keeps_its_width()
    {
        const string hostile = "a\uD800b\t\u0000\u4E00\uFFFFz";
        Assert.Equal("a□b  □□z", Lettering.Drawn(hostile));
        Assert.Equal(Lettering.Width(Lettering.Drawn(hostile), 5), Lettering.Width(hostile, 5), 1e-12);
        Assert.Same("plain", Lettering.Drawn("plain"));
    }

    [Fact]
    public void Width_adds_up_and_grows_with_height()
    {
        Assert.Equal(Lettering.Width("Heel", 3.5) + Lettering.Width(" and toe", 3.5), Lettering.Width("Heel and toe", 3.5), 1e-9);
        Assert.Equal(2 * Lettering.Width("Ø 16", 3.5), Lettering.Width("Ø 16", 7), 1e-9);
        Assert.True(Lettering.Width("Ø 16", 7, bold: true) > Lettering.Width("Ø 16", 7));
        Assert.Equal(0, Lettering.Width("", 7));
    }

    [Fact]
    public void Wrapped_lines_fit_and_lose_nothing_but_spaces()
    {
        const string text = "Clamp the piece; no gloves at the spindle. Extraordinarily-long-word-without-any-space-in-it-at-all stays whole on paper.\nSecond paragraph.";
        foreach (var width in new[] { 15.0, 30, 60, 500 })
        {
            var lines = Lettering.Wrap(text, width, 3.5);
            Assert.All(lines, l => Assert.True(Lettering.Width(l, 3.5) <= width, l));
            Assert.Equal(string.Concat(text.Where(c => c is not ' ' and not '\n')), string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
        }

        Assert.Equal(["Clamp the piece"], Lettering.Wrap("Clamp the piece", 500, 3.5));
        Assert.Equal(["a", "", "b"], Lettering.Wrap("a\n\nb", 500, 3.5));
        Assert.Equal(["W", "W"], Lettering.Wrap("WW", 0.1, 3.5));
        Assert.Equal([""], Lettering.Wrap("", 10, 3.5));
    }

    /// <summary>The few tables of a TrueType file needed here.</summary>
    private sealed class FontFile(byte[] data)
    {
        public int UnitsPerEm => U16(Table("head") + 18);

        public static FontFile Load(string resource)
        {
            using var stream = System.Reflection.Assembly.Load("Tangwright.Formats").GetManifestResourceStream(resource)!;
            var data = new byte[stream.Length];
            stream.ReadExactly(data);
            return new FontFile(data);
        }

        public int Advance(int glyph) => U16(Table("hmtx") + (4 * Math.Min(glyph, U16(Table("hhea") + 34) - 1)));

        public int Top(int glyph) => S16(Table("glyf") + (int)BinaryPrimitives.ReadUInt32BigEndian(data.AsSpan(Table("loca") + (4 * glyph))) + 8);

        public int Glyph(char c)
        {
            var map = UnicodeMap();
            var segments = U16(map + 6) / 2;
            for (var k = 0; k < segments; k++)
            {
                if (c > U16(map + 14 + (2 * k))) continue;
                var start = U16(map + 16 + (2 * (segments + k)));
                if (c < start) return 0;
                var delta = S16(map + 16 + (2 * ((2 * segments) + k)));
                var rangeAt = map + 16 + (2 * ((3 * segments) + k));
                var range = U16(rangeAt);
                if (range == 0) return (c + delta) & 0xFFFF;
                var glyph = U16(rangeAt + range + (2 * (c - start)));
                return glyph == 0 ? 0 : (glyph + delta) & 0xFFFF;
            }

            return 0;
        }

        private int UnicodeMap()
        {
            var cmap = Table("cmap");
            for (var i = 0; i < U16(cmap + 2); i++)
            {
                var at = cmap + 4 + (8 * i);
                if (U16(at) == 3 && U16(at + 2) == 1) return cmap + (int)BinaryPrimitives.ReadUInt32BigEndian(data.AsSpan(at + 4));
            }

            throw new InvalidOperationException("no Unicode map");
        }

        private int Table(string tag)
        {
            for (var i = 0; i < U16(4); i++)
            {
                var at = 12 + (16 * i);
                if (System.Text.Encoding.ASCII.GetString(data, at, 4) == tag) return (int)BinaryPrimitives.ReadUInt32BigEndian(data.AsSpan(at + 8));
            }

            throw new InvalidOperationException("no table " + tag);
        }

        private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(data.AsSpan(at));

        private int S16(int at) => BinaryPrimitives.ReadInt16BigEndian(data.AsSpan(at));
    }
}
