using Foramen.Journal.Bodies;

namespace Foramen.Journal.Fold;

/// <summary>A day out.</summary>
public sealed record Outing
{
    /// <summary>Its id.</summary>
    public required Ulid Id { get; init; }

    /// <summary>How it began; null where it was withdrawn.</summary>
    public Stamped<OutingStarted>? Started { get; init; }

    /// <summary>Whether its beginning was declared void and not said again.</summary>
    public bool Withdrawn => Started is null;
}
