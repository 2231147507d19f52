using System.Text;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>The file of an open plan or shop: what was last read or written, and whether somebody touched it since.</summary>
internal sealed class PlanOnDisk
{
    private readonly string _ending;
    private (DateTime Written, long Length) _seen;
    private string? _ownBeside;

    private PlanOnDisk(string path, string text, string ending)
    {
        _ending = ending;
        Path = path;
        LastText = text;
    }

    /// <summary>Where it lies.</summary>
    public string Path { get; }

    /// <summary>The text last read or written here.</summary>
    public string LastText { get; private set; }

    /// <summary>Opens it.</summary>
    /// <param name="path">The file.</param>
    /// <param name="ending">Ending of its name, kept when a text is written beside it.</param>
    public static Checked<PlanOnDisk> Open(string path, string ending = OpenWork.PlanEnding)
    {
        var seen = Look(path);
        return TextFile.Read(path).Then(text => Checked<PlanOnDisk>.Good(new PlanOnDisk(path, text, ending) { _seen = seen }));
    }

    /// <summary>Whether time or size of the file differ from when it was last seen.</summary>
    public bool WasTouched() => Look(Path) != _seen;

    /// <summary>Reads it again.</summary>
    /// <param name="remember">Whether what was read counts as seen.</param>
    public Checked<string> ReadAgain(bool remember = true)
    {
        var seen = Look(Path);
        var read = TextFile.Read(Path);
        if (remember)
        {
            _seen = seen;
            if (read.IsGood) LastText = read.Value;
        }

        return read;
    }

    /// <summary>Writes it whole: to another name first, then into place.</summary>
    public System.Collections.Immutable.ImmutableArray<Fault> Write(string text)
    {
        var faults = OutputFolder.Write([new OutputFile(Path, Encoding.UTF8.GetBytes(text))], overwrite: true);
        if (faults.IsEmpty)
        {
            _seen = Look(Path);
            LastText = text;
        }

        return faults;
    }

    /// <summary>Writes a text beside it, NAME.desk.plan.toml or the next free number; the one written before in this sitting is written over.</summary>
    /// <returns>Where.</returns>
    public Checked<string> WriteBeside(string text)
    {
        if (_ownBeside is null)
        {
            var stem = Path.EndsWith(_ending, StringComparison.OrdinalIgnoreCase) ? Path[..^_ending.Length] : System.IO.Path.ChangeExtension(Path, null);
            _ownBeside = stem + ".desk" + _ending;
            for (var i = 2; System.IO.File.Exists(_ownBeside); i++) _ownBeside = $"{stem}-{i}.desk{_ending}";
        }

        var faults = OutputFolder.Write([new OutputFile(_ownBeside, Encoding.UTF8.GetBytes(text))], overwrite: true);
        return faults.IsEmpty ? Checked<string>.Good(_ownBeside) : Checked<string>.Bad(faults);
    }

    private static (DateTime Written, long Length) Look(string path)
    {
        try
        {
            var f = new System.IO.FileInfo(path);
            return f.Exists ? (f.LastWriteTimeUtc, f.Length) : default;
        }
        catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException)
        {
            return default;
        }
    }
}
