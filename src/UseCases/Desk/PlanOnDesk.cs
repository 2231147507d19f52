using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>One open plan, shared by every page that shows it: its text, everything computed from it, what was done and undone, and its file on the disk. A move begins, steps and ends; the file is written at its end. One page moves at a time; what others ask for meanwhile is refused in words.</summary>
public sealed partial class PlanOnDesk : IDisposable
{
    private const int LooksBetweenTries = 5;

    /// <summary>Guards <see cref="_move"/>; never held while something is worked up or written.</summary>
    private readonly Lock _lock = new();

    /// <summary>Whoever has it works up, writes or takes in: one at a time.</summary>
    private readonly SemaphoreSlim _turn = new(1, 1);
    private readonly History<PlanFile> _history = new();
    private readonly PlanOnDisk _disk;
    private readonly Timer _watch;
    private readonly TimeSpan _slower;
    private volatile PlanState _now;
    private HeldMove? _move;
    private int _looks;

    private PlanOnDesk(PlanOnDisk disk, PlanFile file, OpenedWork work, TimeSpan slower)
    {
        _disk = disk;
        _slower = slower;
        _now = new PlanState(file, work, work.WorkUp(), 0);
        _watch = new Timer(_ => Look(), null, LookEvery, LookEvery);
    }

    /// <summary>Told at every step of a move, and whenever anything shown has changed.</summary>
    public event Action? Changed;

    /// <summary>Told when a move has ended or the file was changed elsewhere.</summary>
    public event Action? Settled;

    /// <summary>Where the file lies.</summary>
    public string Path => _disk.Path;

    /// <summary>Its name without the ending.</summary>
    public string Stem => OpenWork.Stem(Path);

    /// <summary>The plan as it stands, results and version of one piece.</summary>
    public PlanState Now => _now;

    /// <summary>Everything computed from the plan as it stands.</summary>
    public Results Results => _now.Results;

    /// <summary>Counts up with every change.</summary>
    public int Version => _now.Version;

    /// <summary>Which shop file was used, in words.</summary>
    public string ShopUsed => _now.Work.ShopUsed;

    /// <summary>The plan's text as it stands.</summary>
    public string Text => _now.File.Text;

    /// <summary>What is wrong with the file as somebody saved it elsewhere; the last good plan stays shown.</summary>
    public ImmutableArray<Fault> FileFaults { get; private set; } = [];

    /// <summary>What is wrong with the shop file as it lies on the disk; the last good shop stays in use.</summary>
    public ImmutableArray<Fault> ShopFaults { get; private set; } = [];

    /// <summary>What the maker should know about the file, in a sentence; empty when nothing.</summary>
    public string Notice { get; private set; } = "";

    /// <summary>Whether the plan as it stands could not be written; it is tried again by the clock.</summary>
    public bool IsUnsaved { get; private set; }

    /// <summary>The desk's own version where the file was changed elsewhere at the same time: drawn pale behind; null when there is none.</summary>
    public Results? Pale { get; private set; }

    /// <summary>The bars last asked for; null when nobody asked. Kept in a file beside the plan, not in the plan.</summary>
    public StockRequest? StockAsked { get; set; }

    /// <summary>The rough cuts last asked for; null when nobody asked: as many as pay, with the quickest saw. It is not kept in the file.</summary>
    public RoughCutWanted? RoughCutAsked { get; set; }

    /// <summary>The bevels last asked for; null when nobody asked. It is not kept in the file.</summary>
    public BevelsRequest? BevelsAsked { get; set; }

    /// <summary>The finish last asked for; null when nobody asked. It is not kept in the file.</summary>
    public FinishRequest? FinishAsked { get; set; }

    /// <summary>Whether something is held and being moved.</summary>
    public bool IsHeld => _move is not null;

    /// <summary>Whether there is something to undo.</summary>
    public bool CanUndo => !IsHeld && _history.CanUndo;

    /// <summary>Whether there is something to do again.</summary>
    public bool CanRedo => !IsHeld && _history.CanRedo;

    /// <summary>Why nothing else can be changed while something is held.</summary>
    public Fault WhyHeld => Fault.OfFile(System.IO.Path.GetFileName(Path), "something of this plan is being moved", "let go of it first; it may be held on another page");

    private static TimeSpan LookEvery => TimeSpan.FromMilliseconds(400);

    /// <summary>The work with its shop and steel, for the sheets.</summary>
    internal OpenedWork Work => _now.Work;

    /// <summary>The plan with its text, for the forms.</summary>
    internal PlanFile File => _now.File;

    /// <summary>Begins a move: what follows until <see cref="End"/> is one thing to undo.</summary>
    /// <param name="by">The page that moves.</param>
    /// <returns>Whether it has the plan in hand; false while another page has.</returns>
    public bool Begin(object? by = null)
    {
        lock (_lock) return (_move ??= new HeldMove(by)).IsOf(by);
    }

    /// <summary>One step of a move: the change is made to the plan as it was when the move began. A step asked for before the last one was begun takes its place.</summary>
    /// <param name="change">The change.</param>
    /// <param name="by">The page that moves.</param>
    /// <returns>The faults; none when it was made. The plan stays as it was when there are any.</returns>
    public ImmutableArray<Fault> Step(PlanChange change, object? by = null) => Ask(change, by) is { } move ? WorkOff(move) : [WhyHeld];

    /// <summary>The same beside the page's own work, so that a long calculation holds up no button.</summary>
    /// <param name="change">The change.</param>
    /// <param name="by">The page that moves.</param>
    public Task<ImmutableArray<Fault>> StepAsync(PlanChange change, object? by)
        => Ask(change, by) is { } move ? Task.Run(() => WorkOff(move)) : Task.FromResult<ImmutableArray<Fault>>([WhyHeld]);

    /// <summary>Ends a move at the last place asked for and writes the file.</summary>
    /// <param name="by">The page that moves; the move of another goes on.</param>
    public void End(object? by = null)
    {
        if (MoveOf(by) is not { } move) return;
        WorkOff(move);
        Turn(() =>
        {
            if (!LetGo(move) || move.From is not { } before || before.Text == _now.File.Text) return;
            _history.Remember(before);
            Save();
        });
        Tell();
    }

    /// <summary>Ends a move by putting everything back as it was when it began.</summary>
    /// <param name="by">The page that moves; the move of another goes on.</param>
    public void Cancel(object? by = null)
    {
        if (MoveOf(by) is not { } move) return;
        lock (_lock) move.Wanted = null;
        Turn(() =>
        {
            if (LetGo(move) && move.From is { } before && before.Text != _now.File.Text) Show(before);
        });
        Tell();
    }

    /// <summary>A change made at once; refused while something is held.</summary>
    public ImmutableArray<Fault> Make(PlanChange change)
    {
        if (IsHeld) return [WhyHeld];
        ImmutableArray<Fault> faults = [];
        Turn(() =>
        {
            var before = _now.File;
            var changed = IsHeld ? Checked<PlanFile>.Bad(WhyHeld) : change.Of(before);
            faults = changed.IsGood ? Show(changed.Value) : changed.Faults;
            if (faults.Length > 0 || before.Text == _now.File.Text) return;
            _history.Remember(before);
            Save();
        });
        Tell();
        return faults;
    }

    /// <summary>Takes the last change back; nothing while something is held.</summary>
    public void Undo() => Turned(_history.Back);

    /// <summary>Makes the last undone change again; nothing while something is held.</summary>
    public void Redo() => Turned(_history.Forward);

    /// <summary>Puts the notice and the pale drawing away; what is not saved stays told.</summary>
    public void PutNoticeAway()
    {
        Turn(() => (Notice, Pale) = (IsUnsaved ? Notice : "", null));
        Tell();
    }

    /// <summary>Looks whether the file was changed elsewhere, and takes it in. Called by the clock; a move in hand is left to its end.</summary>
    public void LookAtFile()
    {
        var news = false;
        Turn(() =>
        {
            if (IsHeld) return;
            if (IsUnsaved && ++_looks % LooksBetweenTries == 0)
            {
                Save();
                news = !IsUnsaved;
                return;
            }

            if (!_disk.WasTouched()) return;
            var (last, read) = (_disk.LastText, _disk.ReadAgain());
            if (read.IsGood && FileFaults.IsEmpty && (read.Value == last || read.Value == _now.File.Text)) return;
            news = true;
            if (IsUnsaved && read.IsGood) BothChanged(read);
            else TakeIn(read);
        });
        if (news) Tell();
    }

    /// <summary>Takes in the shop and steel files as they lie on the disk now.</summary>
    public void ShopChanged()
    {
        Turn(() =>
        {
            var work = OpenWork.For(_now.File.Plan, Path);
            ShopFaults = work.Faults;
            _now = work.IsGood ? new PlanState(_now.File, work.Value, WorkUp(work.Value), _now.Version + 1) : _now.Again();
        });
        Tell();
    }

    /// <inheritdoc/>
    public void Dispose() => _watch.Dispose();

    /// <summary>Opens a plan.</summary>
    /// <param name="path">Its file.</param>
    /// <param name="slower">Added to every calculation: to try how the desk feels on a slow computer.</param>
    internal static Checked<PlanOnDesk> Open(string path, TimeSpan slower = default)
        => PlanOnDisk.Open(path)
            .Then(disk => PlanReader.Read(disk.LastText, path)
            .Then(file => OpenWork.For(file.Plan, path)
            .Then(work => Checked<PlanOnDesk>.Good(new PlanOnDesk(disk, file, work, slower)))));

    private HeldMove? MoveOf(object? by)
    {
        lock (_lock) return _move is { } move && move.IsOf(by) ? move : null;
    }

    private HeldMove? Ask(PlanChange change, object? by)
    {
        lock (_lock)
        {
            if (!(_move ??= new HeldMove(by)).IsOf(by)) return null;
            _move.Wanted = change;
            return _move;
        }
    }

    /// <summary>Works up the last step asked for, unless that is done already.</summary>
    private ImmutableArray<Fault> WorkOff(HeldMove move)
    {
        ImmutableArray<Fault> faults = [];
        var done = false;
        Turn(() =>
        {
            PlanChange? change;
            lock (_lock)
            {
                (change, move.Wanted) = (move.Wanted, null);
                if (_move != move || change is null) return;
            }

            move.From ??= _now.File;
            var changed = change.Of(move.From);
            faults = changed.IsGood ? Show(changed.Value) : changed.Faults;
            done = faults.IsEmpty;
        });
        if (done) Changed?.Invoke();
        return faults;
    }

    private bool LetGo(HeldMove move)
    {
        lock (_lock)
        {
            if (_move != move) return false;
            _move = null;
            return true;
        }
    }

    private void Turn(Action act)
    {
        _turn.Wait();
        try
        {
            act();
        }
        finally
        {
            _turn.Release();
        }
    }

    private void Turned(History<PlanFile>.Way way)
    {
        if (IsHeld) return;
        Turn(() =>
        {
            if (IsHeld || !way(_now.File, out var there)) return;
            Show(there);
            Save();
        });
        Tell();
    }

    private Results WorkUp(OpenedWork work)
    {
        if (_slower > TimeSpan.Zero) Thread.Sleep(_slower);
        return work.WorkUp();
    }

    private ImmutableArray<Fault> Show(PlanFile file)
    {
        var work = file.Plan.Stock.Steel == _now.Work.Plan.Stock.Steel ? Checked<OpenedWork>.Good(_now.Work with { Plan = file.Plan }) : OpenWork.For(file.Plan, Path);
        if (!work.IsGood) return work.Faults;
        _now = new PlanState(file, work.Value, WorkUp(work.Value), _now.Version + 1);
        return [];
    }

    /// <summary>Writes the file. When it was changed elsewhere meanwhile, or lies there so that it cannot be used, ours goes beside it, so that neither is lost.</summary>
    private void Save()
    {
        var theirs = _disk.ReadAgain(remember: false);
        var broken = _disk.IsThere && (!theirs.IsGood || FileFaults.Length > 0);
        if (broken || (theirs.IsGood && theirs.Value != _disk.LastText))
        {
            BothChanged(theirs);
            return;
        }

        var faults = _disk.Write(_now.File.Text);
        IsUnsaved = faults.Length > 0;
        Notice = faults.IsEmpty ? "" : $"Not saved: {faults[0].Message}. {faults[0].Remedy}. What you did stays here and is tried again until it can be written.";
        if (faults.Length > 0) return;
        (Pale, FileFaults) = (null, []);
        _disk.LeaveBeside();
    }

    /// <summary>Puts ours beside the file and takes theirs in.</summary>
    private void BothChanged(Checked<string> theirs)
    {
        var (ours, drawn) = (_now.File.Text, _now.Results);
        var beside = _disk.WriteBeside(ours);
        _disk.ReadAgain();
        TakeIn(theirs);
        IsUnsaved = false;
        var name = beside.IsGood ? System.IO.Path.GetFileName(beside.Value) : "";
        if (FileFaults.Length > 0)
        {
            Notice = beside.IsGood ? $"The file was left alone. What you did here lies beside it as {name}." : "The file was left alone, and what you did here could not be written beside it.";
            return;
        }

        Pale = drawn;
        Notice = beside.IsGood
            ? $"The file was changed elsewhere while you worked here. What you see is the file; what you did here is drawn pale and lies beside it as {name}."
            : "The file was changed elsewhere while you worked here, and what you did here could not be written beside it: undo brings it back.";
    }

    /// <summary>Takes in the file as it lies on the disk; while it cannot be used the last good plan stays.</summary>
    private void TakeIn(Checked<string> text)
    {
        var file = text.Then(t => PlanReader.Read(t, Path));
        FileFaults = file.Faults;
        if (file.IsGood) _disk.LeaveBeside();
        if (file.IsGood && file.Value.Text != _now.File.Text)
        {
            var (before, work) = (_now.File, OpenWork.For(file.Value.Plan, Path));
            FileFaults = work.Faults;
            if (work.IsGood)
            {
                _now = new PlanState(file.Value, work.Value, WorkUp(work.Value), _now.Version + 1);
                _history.Remember(before);
                return;
            }
        }

        _now = _now.Again();
    }

    /// <summary>One look by the clock; a look that takes longer than the clock's step is not joined by another.</summary>
    private void Look()
    {
        if (_turn.CurrentCount == 0) return;
        try
        {
            LookAtFile();
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // nobody waits for the clock: what goes wrong here must not end the desk
            Notice = "The file could not be looked at: " + e.Message;
        }
    }

    private void Tell()
    {
        Changed?.Invoke();
        Settled?.Invoke();
    }
}
