using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>One open plan, shared by every page that shows it: its text, everything computed from it, what was done and undone, and its file on the disk. A move begins, steps and ends; the file is written at its end.</summary>
public sealed partial class PlanOnDesk : IDisposable
{
    private const int MostUndone = 200;

    private readonly Lock _lock = new();
    private readonly Stack<PlanFile> _done = new();
    private readonly Stack<PlanFile> _undone = new();
    private readonly PlanOnDisk _disk;
    private readonly Timer _watch;
    private PlanFile _file;
    private PlanFile? _moveFrom;
    private OpenedWork _work;

    private PlanOnDesk(PlanOnDisk disk, PlanFile file, OpenedWork work)
    {
        _disk = disk;
        _file = file;
        _work = work;
        Results = work.WorkUp();
        _watch = new Timer(_ => LookAtFile(), null, LookEvery, LookEvery);
    }

    /// <summary>Told at every step of a move, and whenever anything shown has changed.</summary>
    public event Action? Changed;

    /// <summary>Told when a move has ended or the file was changed elsewhere.</summary>
    public event Action? Settled;

    /// <summary>Where the file lies.</summary>
    public string Path => _disk.Path;

    /// <summary>Its name without the ending.</summary>
    public string Stem => OpenWork.Stem(Path);

    /// <summary>Everything computed from the plan as it stands.</summary>
    public Results Results { get; private set; }

    /// <summary>Counts up with every change.</summary>
    public int Version { get; private set; }

    /// <summary>Which shop file was used, in words.</summary>
    public string ShopUsed => _work.ShopUsed;

    /// <summary>The plan's text as it stands.</summary>
    public string Text => _file.Text;

    /// <summary>What is wrong with the file as somebody saved it elsewhere; the last good plan stays shown.</summary>
    public ImmutableArray<Fault> FileFaults { get; private set; } = [];

    /// <summary>What the maker should know about the file, in a sentence; empty when nothing.</summary>
    public string Notice { get; private set; } = "";

    /// <summary>The desk's own version where the file was changed elsewhere at the same time: drawn pale behind; null when there is none.</summary>
    public Results? Pale { get; private set; }

    /// <summary>Whether there is something to undo.</summary>
    public bool CanUndo => _done.Count > 0;

    /// <summary>Whether there is something to do again.</summary>
    public bool CanRedo => _undone.Count > 0;

    private static TimeSpan LookEvery => TimeSpan.FromMilliseconds(400);

    /// <summary>The work with its shop and steel, for the sheets.</summary>
    internal OpenedWork Work => _work;

    /// <summary>Opens a plan.</summary>
    internal static Checked<PlanOnDesk> Open(string path)
        => PlanOnDisk.Open(path)
            .Then(disk => PlanReader.Read(disk.LastText, path)
            .Then(file => OpenWork.For(file.Plan, path)
            .Then(work => Checked<PlanOnDesk>.Good(new PlanOnDesk(disk, file, work)))));

    /// <summary>Begins a move: what follows until <see cref="End"/> is one thing to undo.</summary>
    public void Begin()
    {
        lock (_lock) _moveFrom ??= _file;
    }

    /// <summary>One step of a move: the change is made to the plan as it was when the move began.</summary>
    /// <param name="change">The change.</param>
    /// <returns>The faults; none when it was made. The plan stays as it was when there are any.</returns>
    public ImmutableArray<Fault> Step(PlanChange change)
    {
        lock (_lock)
        {
            var changed = change.Of(_moveFrom ?? _file);
            if (!changed.IsGood) return changed.Faults;
            var shown = Show(changed.Value);
            if (shown.Length > 0) return shown;
        }

        Changed?.Invoke();
        return [];
    }

    /// <summary>Ends a move and writes the file.</summary>
    public void End()
    {
        lock (_lock)
        {
            if (_moveFrom is not { } before) return;
            _moveFrom = null;
            if (before.Text != _file.Text)
            {
                Remember(before);
                Save();
            }
        }

        Tell();
    }

    /// <summary>A change made at once.</summary>
    public ImmutableArray<Fault> Make(PlanChange change)
    {
        Begin();
        var faults = Step(change);
        End();
        return faults;
    }

    /// <summary>Takes the last change back.</summary>
    public void Undo() => Turn(_done, _undone);

    /// <summary>Makes the last undone change again.</summary>
    public void Redo() => Turn(_undone, _done);

    /// <summary>Puts the notice and the pale drawing away.</summary>
    public void PutNoticeAway()
    {
        lock (_lock) (Notice, Pale) = ("", null);
        Tell();
    }

    /// <summary>Looks whether the file was changed elsewhere, and takes it in. Called by the clock; a move in hand is left to its end.</summary>
    public void LookAtFile()
    {
        lock (_lock)
        {
            if (_moveFrom is not null || !_disk.WasTouched()) return;
            var read = _disk.ReadAgain();
            if (read.IsGood && read.Value == _file.Text && FileFaults.IsEmpty) return;
            TakeIn(read);
        }

        Tell();
    }

    /// <inheritdoc/>
    public void Dispose() => _watch.Dispose();

    private void Turn(Stack<PlanFile> from, Stack<PlanFile> to)
    {
        lock (_lock)
        {
            if (_moveFrom is not null || !from.TryPop(out var there)) return;
            to.Push(_file);
            Show(there);
            Save();
        }

        Tell();
    }

    private void Remember(PlanFile before)
    {
        _done.Push(before);
        _undone.Clear();
        if (_done.Count <= MostUndone) return;
        var kept = _done.Take(MostUndone / 2).Reverse().ToArray();
        _done.Clear();
        foreach (var k in kept) _done.Push(k);
    }

    private ImmutableArray<Fault> Show(PlanFile file)
    {
        if (file.Plan.Stock.Steel == _work.Plan.Stock.Steel)
        {
            _work = _work with { Plan = file.Plan };
        }
        else
        {
            var work = OpenWork.For(file.Plan, Path);
            if (!work.IsGood) return work.Faults;
            _work = work.Value;
        }

        _file = file;
        Results = _work.WorkUp();
        Version++;
        return [];
    }

    /// <summary>Writes the file; when it was changed elsewhere meanwhile, ours goes beside it and theirs is taken in, so that neither is lost.</summary>
    private void Save()
    {
        var theirs = _disk.ReadAgain(remember: false);
        if (theirs.IsGood && theirs.Value != _disk.LastText)
        {
            var (ours, drawn) = (_file, Results);
            var beside = _disk.WriteBeside(ours.Text);
            _disk.ReadAgain();
            TakeIn(theirs);
            Pale = drawn;
            Notice = beside.IsGood
                ? $"The file was changed elsewhere while you worked here. What you see is the file; what you did here is drawn pale and lies beside it as {System.IO.Path.GetFileName(beside.Value)}."
                : "The file was changed elsewhere while you worked here, and what you did here could not be written beside it: undo brings it back.";
            return;
        }

        var faults = _disk.Write(_file.Text);
        Notice = faults.IsEmpty ? "" : "Not saved: " + faults[0].Message + ". " + faults[0].Remedy + ".";
        if (faults.IsEmpty) (Pale, FileFaults) = (null, []);
    }

    /// <summary>Takes in the file as it lies on the disk; while it cannot be used the last good plan stays.</summary>
    private void TakeIn(Checked<string> text)
    {
        var file = text.Then(t => PlanReader.Read(t, Path));
        if (file.IsGood && file.Value.Text != _file.Text)
        {
            var before = _file;
            var work = OpenWork.For(file.Value.Plan, Path);
            if (!work.IsGood)
            {
                FileFaults = work.Faults;
                return;
            }

            _work = work.Value;
            Show(file.Value);
            Remember(before);
        }

        FileFaults = file.Faults;
        Version++;
    }

    private void Tell()
    {
        Changed?.Invoke();
        Settled?.Invoke();
    }
}
