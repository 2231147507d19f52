using Microsoft.AspNetCore.Components;
using Tangwright.UseCases;

namespace Tangwright.Desk;

/// <summary>A part of a page that shows an open plan and is drawn anew when the plan changes.</summary>
public abstract class FollowsPlan : ComponentBase, IDisposable
{
    private PlanOnDesk? _followed;

    /// <summary>The plan.</summary>
    [Parameter]
    [EditorRequired]
    public required PlanOnDesk Desk { get; set; }

    /// <inheritdoc/>
    public void Dispose()
    {
        Leave();
        GC.SuppressFinalize(this);
    }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (ReferenceEquals(_followed, Desk)) return;
        Leave();
        _followed = Desk;
        _followed.Changed += DrawAnew;
        _followed.Settled += Settle;
    }

    /// <summary>What is done when a move has ended, for what is too dear at every step of it.</summary>
    protected virtual void WhenSettled()
    {
    }

    private void Leave()
    {
        if (_followed is not null)
        {
            _followed.Changed -= DrawAnew;
            _followed.Settled -= Settle;
        }

        _followed = null;
    }

    private void DrawAnew() => _ = InvokeAsync(StateHasChanged);

    private void Settle() => _ = InvokeAsync(WhenSettled);
}
