namespace Foramen.Home.Tests.Faults;

/// <summary>What was found after the kills.</summary>
/// <param name="Kills">How many.</param>
/// <param name="Acknowledged">Entries that Home had acknowledged.</param>
/// <param name="Lost">Of these, not found.</param>
/// <param name="Torn">Batches of which a part was found.</param>
/// <param name="Recovered">Entries found whose acknowledgement never arrived.</param>
/// <param name="Unexpected">Entries found that nobody sent.</param>
/// <param name="Corrupt">1 where the database or an entry was damaged.</param>
internal sealed record KillResult(int Kills, int Acknowledged, int Lost, int Torn, int Recovered, int Unexpected, int Corrupt);
