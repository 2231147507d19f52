using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>One open shop file, shared by every page that shows it: its text, what was done and undone, and its file on the disk, written at each change.</summary>
public sealed class ShopOnDesk
{
    private readonly Lock _lock = new();
    private readonly History<ShopFile> _history = new();
    private readonly PlanOnDisk _disk;
    private ShopFile _file;

    private ShopOnDesk(PlanOnDisk disk, ShopFile file)
    {
        _disk = disk;
        _file = file;
    }

    /// <summary>Told whenever anything shown has changed.</summary>
    public event Action? Changed;

    /// <summary>Where the file lies.</summary>
    public string Path => _disk.Path;

    /// <summary>Its name.</summary>
    public string FileName => System.IO.Path.GetFileName(Path);

    /// <summary>The shop as it stands.</summary>
    public Shop Shop => _file.Shop;

    /// <summary>The text as it stands.</summary>
    public string Text => _file.Text;

    /// <summary>What is wrong with the file as somebody saved it elsewhere; the last good shop stays shown.</summary>
    public ImmutableArray<Fault> FileFaults { get; private set; } = [];

    /// <summary>What the maker should know about the file, in a sentence; empty when nothing.</summary>
    public string Notice { get; private set; } = "";

    /// <summary>Whether there is something to undo.</summary>
    public bool CanUndo => _history.CanUndo;

    /// <summary>Whether there is something to do again.</summary>
    public bool CanRedo => _history.CanRedo;

    /// <summary>The file with the place of its values.</summary>
    internal ShopFile File => _file;

    /// <summary>Makes a change and writes the file.</summary>
    /// <returns>The faults; none when it was made. The shop stays as it was when there are any.</returns>
    public ImmutableArray<Fault> Make(ShopChange change)
    {
        lock (_lock)
        {
            var changed = change.Of(_file);
            if (!changed.IsGood) return changed.Faults;
            if (changed.Value.Text == _file.Text) return [];
            _history.Remember(_file);
            _file = changed.Value;
            Save();
        }

        Changed?.Invoke();
        return [];
    }

    /// <summary>Takes the last change back.</summary>
    public void Undo() => Turned(_history.Back);

    /// <summary>Makes the last undone change again.</summary>
    public void Redo() => Turned(_history.Forward);

    /// <summary>Puts the notice away.</summary>
    public void PutNoticeAway()
    {
        lock (_lock) Notice = "";
        Changed?.Invoke();
    }

    /// <summary>Looks whether the file was changed elsewhere, and takes it in.</summary>
    public void LookAtFile()
    {
        lock (_lock)
        {
            if (!_disk.WasTouched()) return;
            var read = _disk.ReadAgain();
            if (read.IsGood && read.Value == _file.Text && FileFaults.IsEmpty) return;
            TakeIn(read);
        }

        Changed?.Invoke();
    }

    /// <summary>Opens a shop file.</summary>
    internal static Checked<ShopOnDesk> Open(string path)
        => PlanOnDisk.Open(path, "." + OpenWork.ShopName)
            .Then(disk => ShopReader.ReadFile(disk.LastText, path)
            .Then(file => Checked<ShopOnDesk>.Good(new ShopOnDesk(disk, file))));

    private void Turned(History<ShopFile>.Way way)
    {
        lock (_lock)
        {
            if (!way(_file, out var there)) return;
            _file = there;
            Save();
        }

        Changed?.Invoke();
    }

    /// <summary>Writes the file; when it was changed elsewhere meanwhile, or lies there so that it cannot be used, ours goes beside it, so that neither is lost.</summary>
    private void Save()
    {
        var theirs = _disk.ReadAgain(remember: false);
        if ((_disk.IsThere && (!theirs.IsGood || FileFaults.Length > 0)) || (theirs.IsGood && theirs.Value != _disk.LastText))
        {
            var beside = _disk.WriteBeside(_file.Text);
            _disk.ReadAgain();
            TakeIn(theirs);
            var what = FileFaults.Length > 0 ? "The file was left alone." : "The file was changed elsewhere while you worked here. What you see is the file.";
            Notice = beside.IsGood
                ? $"{what} What you did here lies beside it as {System.IO.Path.GetFileName(beside.Value)}."
                : $"{what} What you did here could not be written beside it: undo brings it back.";
            return;
        }

        var faults = _disk.Write(_file.Text);
        Notice = faults.IsEmpty ? "" : $"Not saved: {faults[0].Message}. {faults[0].Remedy}.";
        if (faults.Length > 0) return;
        FileFaults = [];
        _disk.LeaveBeside();
    }

    /// <summary>Takes in the file as it lies on the disk; while it cannot be used the last good one stays.</summary>
    private void TakeIn(Checked<string> text)
    {
        var file = text.Then(t => ShopReader.ReadFile(t, Path));
        if (file.IsGood && file.Value.Text != _file.Text)
        {
            _history.Remember(_file);
            _file = file.Value;
        }

        FileFaults = file.Faults;
    }
}
