using System.Collections.Immutable;
using System.Text;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>The file of an open plan or shop: what was last read or written, and whether somebody touched it since.</summary>
internal sealed class PlanOnDisk
{
    private readonly string _ending;
    private (DateTime Written, long Length) _seen;
    private string? _ownBeside;
    private bool _marked;

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

    /// <summary>Whether there is a file, readable or not.</summary>
    public bool IsThere => System.IO.File.Exists(Path);

    /// <summary>Opens it.</summary>
    /// <param name="path">The file.</param>
    /// <param name="ending">Ending of its name, kept when a text is written beside it.</param>
    public static Checked<PlanOnDisk> Open(string path, string ending = OpenWork.PlanEnding)
    {
        var seen = Look(path);
        return TextFile.Read(path).Then(text => Checked<PlanOnDisk>.Good(new PlanOnDisk(path, text, ending) { _seen = seen, _marked = BeginsWithMark(path) }));
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
            if (read.IsGood) (LastText, _marked) = (read.Value, BeginsWithMark(Path));
        }

        return read;
    }

    /// <summary>Writes it whole: to another name first, then into place. A file marked as not to be written is left alone; a byte order mark at its start stays, and a link still leads to it.</summary>
    public ImmutableArray<Fault> Write(string text)
    {
        try
        {
            var file = new System.IO.FileInfo(Path);
            if (file.Exists && file.IsReadOnly) return [Fault.OfFile(System.IO.Path.GetFileName(Path), "the file is marked as not to be written", "allow writing to it")];
            var place = file.LinkTarget is null ? Path : file.ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? Path;
            var faults = OutputFolder.Write([new OutputFile(place, _marked ? [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text)] : Encoding.UTF8.GetBytes(text))], overwrite: true);
            if (faults.Length > 0) return faults;
            _seen = Look(Path);
            LastText = text;
            return [];
        }
        catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException)
        {
            return [Fault.OfFile(System.IO.Path.GetFileName(Path), "cannot be written: " + e.Message, "check the folder and that you may write there")];
        }
    }

    /// <summary>Writes a text beside it, NAME.desk.plan.toml or the next free number; the one written before is written over until <see cref="LeaveBeside"/>.</summary>
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

    /// <summary>Leaves what was written beside it for good: the next goes under a name of its own.</summary>
    public void LeaveBeside() => _ownBeside = null;

    private static bool BeginsWithMark(string path)
    {
        try
        {
            using var s = System.IO.File.OpenRead(path);
            Span<byte> first = stackalloc byte[3];
            return s.ReadAtLeast(first, 3, throwOnEndOfStream: false) == 3 && first.SequenceEqual(Encoding.UTF8.Preamble);
        }
        catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException)
        {
            return false;
        }
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
