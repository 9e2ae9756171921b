namespace Foramen.Engine.Light;

/// <summary>Something that happens in the sky.</summary>
/// <param name="Kind">What.</param>
/// <param name="Instant">When, with the offset the day was asked for with; to about half a minute, for the real horizon and air differ.</param>
public readonly record struct SkyEvent(SkyEventKind Kind, DateTimeOffset Instant);
