
namespace Foramen.Field.Homes;

/// <summary>What Home says of itself.</summary>
/// <param name="ForamenHome">Its protocol; 1.</param>
/// <param name="Access">own, paired, needed, or none where it keeps no journal.</param>
/// <param name="ServesOthers">Whether other devices can reach it.</param>
/// <param name="Workshop">The workshop this device is a member of; null for none.</param>
internal sealed record HomeWords(int ForamenHome, string Access, bool ServesOthers = false, string? Workshop = null);

/// <summary>A refusal of Home's.</summary>
/// <param name="Refusal">What kind.</param>
/// <param name="Sentence">For the user.</param>
/// <param name="Line">Which entry of a batch.</param>
internal sealed record HomeRefusalWords(string? Refusal, string? Sentence, int? Line);

/// <summary>The wish to be paired.</summary>
internal sealed record PairWish(string Code, string Name);

/// <summary>The wish to open a workshop.</summary>
internal sealed record WorkshopWish(string Name);

/// <summary>The answer to it.</summary>
internal sealed record PairedWords(string Token, int Device, string Name, string? Workshop = null);

/// <summary>Hashes of pictures.</summary>
internal sealed record PictureHashes(IReadOnlyList<string> Hashes);

/// <summary>What this device keeps about its Home.</summary>
/// <param name="Token">Its token; empty where it needs none.</param>
/// <param name="Device">Its number there; 0 where it has none.</param>
/// <param name="Mark">How far they have got.</param>
/// <param name="LastMet">When they last held the same; null for never.</param>
internal sealed record KeptTie(string Token, int Device, string Mark, DateTimeOffset? LastMet);
