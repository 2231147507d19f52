using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Another plan laid behind the open one.</summary>
/// <param name="Says">What it is: "revision A".</param>
/// <param name="Results">The other plan, worked up in the same shop.</param>
public sealed record LaidBehind(string Says, Results Results);

/// <content>Trying a change, and another plan laid behind to compare with.</content>
public sealed partial class PlanOnDesk
{
    /// <summary>The other plan drawn pale behind this one; null when there is none.</summary>
    public LaidBehind? Compared { get; private set; }

    /// <summary>What would come of a change; the open plan is not touched.</summary>
    public Checked<Results> Trial(PlanChange change) => change.Of(_now.File).Then(changed => InSameShop(changed.Plan));

    /// <summary>Another plan worked up in the shop of this one, wherever it lies.</summary>
    /// <param name="text">Its text.</param>
    /// <param name="fileName">Its name, for the faults.</param>
    public Checked<Results> InSameShop(string text, string fileName) => PlanReader.Read(text, fileName).Then(other => InSameShop(other.Plan));

    /// <summary>Lays another plan behind.</summary>
    public void Compare(LaidBehind other) => LayBehind(other);

    /// <summary>Puts the other plan away.</summary>
    public void StopComparing() => LayBehind(null);

    private void LayBehind(LaidBehind? other)
    {
        Turn(() => (Compared, _now) = (other, _now.Again()));
        Tell();
    }

    private Checked<Results> InSameShop(Plan plan)
    {
        var work = _now.Work;
        return (plan.Stock.Steel == work.Plan.Stock.Steel ? Checked<OpenedWork>.Good(work with { Plan = plan }) : OpenWork.For(plan, Path)).Then(w => Checked<Results>.Good(w.WorkUp()));
    }
}
