using Foramen.Storage;

namespace Foramen.Home.Access;

/// <summary>Who asks: this machine's own user, or a paired device.</summary>
/// <param name="Device">The device; null for this machine.</param>
internal sealed record Caller(PairedDevice? Device)
{
    public bool IsOwner => Device is null;

    /// <summary>Whether it leads workshops: this machine's own user, or a device of the household.</summary>
    public bool Leads => Device is null or { WorkshopId: null };

    /// <summary>Who asks, as the gate found out.</summary>
    public static Caller Of(HttpContext context) => (Caller)context.Items[typeof(Caller)]!;

    public void Enter(HttpContext context) => context.Items[typeof(Caller)] = this;
}
