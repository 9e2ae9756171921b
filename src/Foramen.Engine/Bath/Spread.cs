namespace Foramen.Engine.Bath;

/// <summary>
/// A best guess between two bounds. The bounds are not a probability: they are what the gentlest and the harshest model make of the ends of
/// the ranges found in handbooks, so the truth should lie between them.
/// </summary>
/// <typeparam name="T">What is guessed.</typeparam>
/// <param name="Low">The lower bound.</param>
/// <param name="Middle">The best guess.</param>
/// <param name="High">The upper bound.</param>
public readonly record struct Spread<T>(T Low, T Middle, T High);
