namespace Foramen.Field.Components;

/// <summary>One of a few choices.</summary>
/// <param name="Value">What is chosen.</param>
/// <param name="Label">Its word.</param>
/// <param name="Detail">A few words more.</param>
public sealed record Option<T>(T Value, string Label, string? Detail = null);
