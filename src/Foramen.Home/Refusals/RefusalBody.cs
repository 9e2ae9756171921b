namespace Foramen.Home.Refusals;

/// <summary>A refusal: what kind, and one sentence.</summary>
internal sealed record RefusalBody(string Refusal, string Sentence, int? Line = null);
