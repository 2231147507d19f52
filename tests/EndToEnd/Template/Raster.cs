using System.Diagnostics;
using System.Globalization;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>A page as poppler prints it: grey dots, read and measured here. Dot (0, 0) is the upper left; sheet coordinates are mm from the lower left.</summary>
internal sealed class Raster
{
    private readonly byte[] _dots;
    private readonly int _width;
    private readonly int _height;
    private readonly double _mm;

    private Raster(byte[] dots, int width, int height, double mm)
    {
        _dots = dots;
        _width = width;
        _height = height;
        _mm = mm;
    }

    public double WidthMm => _width * _mm;

    public double HeightMm => _height * _mm;

    /// <summary>Prints all pages at 600 dots to the inch, as a printer would that shrinks x and y by the factors.</summary>
    public static List<Raster> Print(byte[] pdf, IReadOnlyList<Sheet> sheets, double shrinkX = 1, double shrinkY = 1)
    {
        var folder = System.IO.Directory.CreateTempSubdirectory("template");
        try
        {
            var file = System.IO.Path.Combine(folder.FullName, "t.pdf");
            System.IO.File.WriteAllBytes(file, pdf);
            var pages = new List<Raster>();
            for (var i = 0; i < sheets.Count; i++)
            {
                var (w, h) = ((int)Math.Round(sheets[i].WidthMm / 25.4 * 600 * shrinkX), (int)Math.Round(sheets[i].HeightMm / 25.4 * 600 * shrinkY));
                string[] size = shrinkX == 1 && shrinkY == 1 ? ["-r", "600"] : ["-r", "600", "-scale-to-x", w.ToString(CultureInfo.InvariantCulture), "-scale-to-y", h.ToString(CultureInfo.InvariantCulture)];
                var root = System.IO.Path.Combine(folder.FullName, "p" + i);
                Run("pdftoppm", ["-gray", "-singlefile", "-f", (i + 1).ToString(CultureInfo.InvariantCulture), .. size, file, root]);
                pages.Add(Parse(System.IO.File.ReadAllBytes(root + ".pgm"), 600));
            }

            return pages;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>Prints one page of a PDF, from 1.</summary>
    public static Raster Page(byte[] pdf, int page, int dotsToTheInch = 600)
    {
        var folder = System.IO.Directory.CreateTempSubdirectory("page");
        try
        {
            var (file, root) = (System.IO.Path.Combine(folder.FullName, "t.pdf"), System.IO.Path.Combine(folder.FullName, "p"));
            System.IO.File.WriteAllBytes(file, pdf);
            var number = page.ToString(CultureInfo.InvariantCulture);
            Run("pdftoppm", ["-gray", "-singlefile", "-f", number, "-l", number, "-r", dotsToTheInch.ToString(CultureInfo.InvariantCulture), file, root]);
            return Parse(System.IO.File.ReadAllBytes(root + ".pgm"), dotsToTheInch);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>Share of the ink here that has ink of another page within so many dots each way.</summary>
    public double InkAlsoOn(Raster other, int dots)
    {
        long ink = 0, also = 0;
        for (var y = 0; y < _height; y++)
        {
            for (var x = 0; x < _width; x++)
            {
                if (_dots[(y * _width) + x] >= 128) continue;
                ink++;
                if (other.HasInk(x, y, dots)) also++;
            }
        }

        Assert.True(ink > 1000, "an empty page");
        return (double)also / ink;
    }

    /// <summary>Runs a program and gives its exit code and what it said.</summary>
    public static (int Exit, string Said) Start(string program, IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo(program) { RedirectStandardError = true, RedirectStandardOutput = true, UseShellExecute = false };
        foreach (var a in arguments) start.ArgumentList.Add(a);
        using var process = Process.Start(start)!;
        var said = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, said.Result + error);
    }

    /// <summary>Middle of a dark upright line near x, from the rows between two heights, mm.</summary>
    public double LineX(double x, double y0, double y1, double near = 0.7)
        => Middle(x, near, (HeightMm - y1) / _mm, (HeightMm - y0) / _mm, _width, (along, across) => _dots[(across * _width) + along]);

    /// <summary>Middle of a dark level line near y, from the columns between two x, mm.</summary>
    public double LineY(double y, double x0, double x1, double near = 0.7)
        => HeightMm - Middle(HeightMm - y, near, x0 / _mm, x1 / _mm, _height, (along, across) => _dots[(along * _width) + across]);

    private static void Run(string program, IEnumerable<string> arguments)
    {
        var (exit, said) = Start(program, arguments);
        Assert.True(exit == 0, program + ": " + said);
    }

    private bool HasInk(int x, int y, int dots)
    {
        for (var v = Math.Max(0, y - dots); v <= Math.Min(_height - 1, y + dots); v++)
        {
            for (var u = Math.Max(0, x - dots); u <= Math.Min(_width - 1, x + dots); u++)
            {
                if (_dots[(v * _width) + u] < 192) return true;
            }
        }

        return false;
    }

    private static Raster Parse(byte[] pgm, int dotsToTheInch)
    {
        // P5, width, height, greatest value, one white space, dots
        var at = 0;
        string Word()
        {
            while (char.IsWhiteSpace((char)pgm[at])) at++;
            var from = at;
            while (!char.IsWhiteSpace((char)pgm[at])) at++;
            return System.Text.Encoding.ASCII.GetString(pgm, from, at - from);
        }

        Assert.Equal("P5", Word());
        var (w, h) = (int.Parse(Word(), CultureInfo.InvariantCulture), int.Parse(Word(), CultureInfo.InvariantCulture));
        Assert.Equal("255", Word());
        return new Raster(pgm[(at + 1)..], w, h, 25.4 / dotsToTheInch);
    }

    /// <summary>Darkness-weighted middle along one axis, averaged over rows of the other.</summary>
    private double Middle(double place, double near, double from, double to, int limit, Func<int, int, byte> dot)
    {
        var (low, high) = (Math.Max(0, (int)((place - near) / _mm)), Math.Min(limit - 1, (int)((place + near) / _mm)));
        double weight = 0, moment = 0;
        for (var across = (int)Math.Ceiling(from); across <= (int)to; across++)
        {
            for (var along = low; along <= high; along++)
            {
                var dark = 255 - dot(along, across);
                weight += dark;
                moment += dark * (along + 0.5) * _mm;
            }
        }

        Assert.True(weight > 255 * 2, $"nothing dark near {place:F2} mm");
        return moment / weight;
    }
}
