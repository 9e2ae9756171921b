using Foramen.Journal.Entries;

namespace Foramen.Journal.Fold;

/// <summary>What an entry says, with the entry it comes from and when that was.</summary>
/// <param name="Order">Where the entry stands; <see cref="EntryOrder.Id"/> is the entry.</param>
/// <param name="At">When, by the clock of the device that wrote it, with its local offset.</param>
/// <param name="Body">What it says, amendments included.</param>
public sealed record Stamped<T>(EntryOrder Order, DateTimeOffset At, T Body);
