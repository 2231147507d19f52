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
    private readonly Dictionary<string, ShopOnDesk> _shops = new(StringComparer.Ordinal);
    private readonly Dictionary<PlanOnDesk, string> _shopSeen = [];
    private readonly Lock _lock = new();
    private readonly Lock _look = new();
    private readonly Timer _watch;

    private readonly TimeSpan _slower;

    private DeskFolder(string root, TimeSpan slower)
    {
        Root = root;
        _slower = slower;
        var every = TimeSpan.FromMilliseconds(400);
        _watch = new Timer(_ => Look(), null, every, every);
    }

    /// <summary>The folder, full path, links followed.</summary>
    public string Root { get; }

    /// <summary>What chooses among ways of filling bars when several plans are laid out together; null: none at hand.</summary>
    public Func<Core.IBarSolver>? Solver { get; init; }

    /// <summary>Opens a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="slower">Added to every calculation: to try how the desk feels on a slow computer.</param>
    /// <param name="solver">What chooses among ways of filling bars.</param>
    public static Checked<DeskFolder> Of(string folder, TimeSpan slower = default, Func<Core.IBarSolver>? solver = null)
    {
        if (!System.IO.Directory.Exists(folder)) return Checked<DeskFolder>.Bad(Fault.OfFile(folder, "no such folder or plan", "name a folder, or a plan file in one"));
        var full = System.IO.Path.TrimEndingDirectorySeparator(System.IO.Path.GetFullPath(folder));
        return Checked<DeskFolder>.Good(new DeskFolder(System.IO.Directory.ResolveLinkTarget(full, returnFinalTarget: true)?.FullName ?? full, slower) { Solver = solver });
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
                var opened = PlanOnDesk.Open(path, _slower);
                if (!opened.IsGood) return opened;
                _open.Add(path, opened.Value);
                opened.Value.StockAsked = OrderBeside.Read(path, this);
                _shopSeen[opened.Value] = ShopInUse.Stamp(path);
                return opened;
            }
        });

    /// <summary>The shop files in the folder, by name: shop.toml first, then those of single plans.</summary>
    public ImmutableArray<string> ShopFiles()
    {
        try
        {
            return
            [
                .. new System.IO.DirectoryInfo(Root).EnumerateFiles("*" + OpenWork.ShopName).Select(f => f.Name)
                    .Where(n => ShopPath(n).IsGood)
                    .OrderBy(n => n != OpenWork.ShopName).ThenBy(n => n, StringComparer.OrdinalIgnoreCase),
            ];
        }
        catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>A shop file of the folder, opened once and shared by every page that shows it. What is changed there is taken in by the plans that lie open.</summary>
    /// <param name="name">shop.toml or NAME.shop.toml.</param>
    public Checked<ShopOnDesk> Shop(string name)
        => ShopPath(name).Then(path =>
        {
            lock (_lock)
            {
                if (_shops.TryGetValue(path, out var there)) return Checked<ShopOnDesk>.Good(there);
                var opened = ShopOnDesk.Open(path);
                if (!opened.IsGood) return opened;
                _shops.Add(path, opened.Value);
                opened.Value.Changed += LookAtShops;
                return opened;
            }
        });

    /// <summary>Begins a shop file of the folder: a copy of the one that counts so far.</summary>
    /// <returns>Its name.</returns>
    public Checked<string> BeginShop()
        => ShopInUse.Of(this, stem: null) is { FileName: { } there }
            ? Checked<string>.Good(there)
            : ShopPath(OpenWork.ShopName).Then(_ => ShopStart.Write(Root, ShopInUse.Of(this, stem: null).Elsewhere)).Then(_ =>
            {
                LookAtShops();
                return Checked<string>.Good(OpenWork.ShopName);
            });

    /// <summary>The path of a shop file of the folder; refused when the name leads anywhere else.</summary>
    internal Checked<string> ShopPath(string name)
    {
        if (name != OpenWork.ShopName && !(name.EndsWith("." + OpenWork.ShopName, StringComparison.Ordinal) && PathOf(name[..^(OpenWork.ShopName.Length + 1)]).IsGood)) return NoShop(name);
        var path = System.IO.Path.Combine(Root, name);
        return StaysInside(path) ? Checked<string>.Good(path) : NoShop(name);
    }

    /// <summary>Takes shop files changed elsewhere in, and has the open plans take them in. Called by the clock and at each change made here.</summary>
    public void LookAtShops()
    {
        PlanOnDesk[] touched;
        ShopOnDesk[] shops;
        lock (_lock)
        {
            touched = [.. _shopSeen.Keys.Where(p => _shopSeen[p] != ShopInUse.Stamp(p.Path))];
            foreach (var p in touched) _shopSeen[p] = ShopInUse.Stamp(p.Path);
            shops = [.. _shops.Values];
        }

        foreach (var s in shops) s.LookAtFile();
        foreach (var p in touched) p.ShopChanged();
    }

    /// <summary>The path of a file that lies beside a plan under the plan's name; refused when it is a link to somewhere else.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="ending">What follows the plan's name.</param>
    internal Checked<string> Beside(PlanOnDesk plan, string ending)
    {
        var path = System.IO.Path.Combine(Root, plan.Stem + ending);
        return StaysInside(path) ? Checked<string>.Good(path) : Checked<string>.Bad(Fault.OfFile(plan.Stem + ending, "leads out of the folder", "put the file itself there"));
    }

    /// <summary>One look by the clock; while one goes on no other is begun. Nobody waits for it: what goes wrong here must not end the desk, and is looked at again.</summary>
    private void Look()
    {
        if (!_look.TryEnter()) return;
        try
        {
            LookAtShops();
        }
        catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException)
        {
            // a file in the middle of being written: the next look finds it whole
        }
        finally
        {
            _look.Exit();
        }
    }

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
        _watch.Dispose();
        lock (_lock)
        {
            foreach (var plan in _open.Values) plan.Dispose();
            _open.Clear();
            _shopSeen.Clear();
            _shops.Clear();
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

    private static Checked<string> NoShop(string name)
        => Checked<string>.Bad(Fault.OfFile(name, "is not the name of a shop file in this folder", "choose one of those listed"));

    private static Checked<string> Refused(string stem)
        => Checked<string>.Bad(Fault.OfFile(stem, "is not the name of a plan in this folder", "choose one of those listed"));
}
