using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A plan lying in the folder, for the first page.</summary>
/// <param name="Stem">Its name without the ending.</param>
/// <param name="Changed">When it was last changed.</param>
public sealed record PlanInFolder(string Stem, DateTime Changed);

/// <summary>The one folder that lies open on the desk. Nothing outside it is read or written by a name that comes from a page.</summary>
public sealed class DeskFolder : IDisposable
{
    private readonly Dictionary<string, PlanOnDesk> _open = new(StringComparer.Ordinal);
    private readonly Lock _lock = new();

    private DeskFolder(string root) => Root = root;

    /// <summary>The folder, full path, links followed.</summary>
    public string Root { get; }

    /// <summary>Opens a folder.</summary>
    public static Checked<DeskFolder> Of(string folder)
    {
        if (!System.IO.Directory.Exists(folder)) return Checked<DeskFolder>.Bad(Fault.OfFile(folder, "no such folder or plan", "name a folder, or a plan file in one"));
        var full = System.IO.Path.TrimEndingDirectorySeparator(System.IO.Path.GetFullPath(folder));
        return Checked<DeskFolder>.Good(new DeskFolder(System.IO.Directory.ResolveLinkTarget(full, returnFinalTarget: true)?.FullName ?? full));
    }

    /// <summary>The plans in the folder, by name.</summary>
    public ImmutableArray<PlanInFolder> Plans()
    {
        try
        {
            return
            [
                .. new System.IO.DirectoryInfo(Root).EnumerateFiles("*" + OpenWork.PlanEnding)
                    .Select(f => new PlanInFolder(OpenWork.Stem(f.Name), f.LastWriteTime))
                    .Where(p => PathOf(p.Stem).IsGood)
                    .OrderBy(p => p.Stem, StringComparer.OrdinalIgnoreCase),
            ];
        }
        catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>The path of a plan of the folder; refused when the name leads anywhere else.</summary>
    public Checked<string> PathOf(string stem)
    {
        if (stem.Length is 0 or > 120 || stem[0] == '.' || stem.Any(c => c is '/' or '\\' or ':' || char.IsControl(c))) return Refused(stem);
        var path = System.IO.Path.GetFullPath(System.IO.Path.Combine(Root, stem + OpenWork.PlanEnding));
        return System.IO.Path.GetDirectoryName(path) == Root && StaysInside(path) ? Checked<string>.Good(path) : Refused(stem);
    }

    /// <summary>The plan, opened once and shared by every page that shows it.</summary>
    public Checked<PlanOnDesk> Plan(string stem)
        => PathOf(stem).Then(path =>
        {
            lock (_lock)
            {
                if (_open.TryGetValue(path, out var there)) return Checked<PlanOnDesk>.Good(there);
                var opened = PlanOnDesk.Open(path);
                if (opened.IsGood) _open.Add(path, opened.Value);
                return opened;
            }
        });

    /// <summary>Whether writing the packet beside a plan stays inside the folder.</summary>
    public bool HoldsPacketOf(PlanOnDesk plan) => StaysInside(MakePacket.PacketFolder(plan.Path));

    /// <summary>Where the revisions of a plan are kept; refused when that leads out of the folder.</summary>
    public Checked<string> RevisionsOf(PlanOnDesk plan)
    {
        var place = System.IO.Path.Combine(Root, plan.Stem + "-revisions");
        return System.IO.Path.GetDirectoryName(plan.Path) == Root && StaysInside(place)
            ? Checked<string>.Good(place)
            : Checked<string>.Bad(Fault.OfFile(plan.Stem + "-revisions", "leads out of the folder that lies open", "move it away"));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_lock)
        {
            foreach (var plan in _open.Values) plan.Dispose();
            _open.Clear();
        }
    }

    /// <summary>Whether a file or folder directly in the folder is no link to somewhere else.</summary>
    private bool StaysInside(string path)
    {
        try
        {
            System.IO.FileSystemInfo entry = System.IO.Directory.Exists(path) ? new System.IO.DirectoryInfo(path) : new System.IO.FileInfo(path);
            if (entry.LinkTarget is null) return true;
            return entry.ResolveLinkTarget(returnFinalTarget: true) is { } target && System.IO.Path.GetDirectoryName(target.FullName) == Root;
        }
        catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static Checked<string> Refused(string stem)
        => Checked<string>.Bad(Fault.OfFile(stem, "is not the name of a plan in this folder", "choose one of those listed"));
}
