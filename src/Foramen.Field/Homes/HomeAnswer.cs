using System.Text.Json.Serialization;

namespace Foramen.Field.Homes;

/// <summary>What Home answered.</summary>
/// <param name="Status">The status of HTTP; 0 where nobody answered.</param>
/// <param name="Kind">The media type.</param>
/// <param name="Text">The body.</param>
public sealed record HomeAnswer(int Status, string Kind, string Text)
{
    /// <summary>Whether it is a good answer of this kind: a host that is no Home answers with a page.</summary>
    public bool Is(string kind) => Status == 200 && Kind == kind;
}

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(HomeAnswer))]
[JsonSerializable(typeof(HomeWords))]
[JsonSerializable(typeof(HomeRefusalWords))]
[JsonSerializable(typeof(PairWish))]
[JsonSerializable(typeof(PairedWords))]
[JsonSerializable(typeof(PairingCode))]
[JsonSerializable(typeof(IReadOnlyList<HomeDevice>))]
[JsonSerializable(typeof(WorkshopWish))]
[JsonSerializable(typeof(Workshop))]
[JsonSerializable(typeof(IReadOnlyList<Workshop>))]
[JsonSerializable(typeof(PictureHashes))]
[JsonSerializable(typeof(KeptTie))]
internal sealed partial class HomeAnswers : JsonSerializerContext;
