using Microsoft.AspNetCore.Components.Server.Circuits;
using Tangwright.UseCases;

namespace Tangwright.Desk;

/// <summary>The hand of one open page: a plan moved by it is let go where it was shown last when the page is closed or its connection is lost, so that no other page waits for it.</summary>
internal sealed class PageHand : CircuitHandler
{
    private PlanOnDesk? _held;

    /// <summary>Begins a move.</summary>
    public void Take(PlanOnDesk plan)
    {
        if (plan.Begin(this)) _held = plan;
    }

    /// <inheritdoc/>
    public override Task OnConnectionDownAsync(Circuit circuit, CancellationToken cancellationToken) => LetGo();

    /// <inheritdoc/>
    public override Task OnCircuitClosedAsync(Circuit circuit, CancellationToken cancellationToken) => LetGo();

    private Task LetGo() => Task.Run(() => _held?.End(this), CancellationToken.None);
}
