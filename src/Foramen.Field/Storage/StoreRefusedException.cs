using Foramen.Field.Texts;

namespace Foramen.Field.Storage;

/// <summary>The store refused; nothing was written. The message is for the user, the detail for a report.</summary>
public sealed class StoreRefusedException(StoreRefusal refusal, string detail) : Exception(SentenceOf(refusal))
{
    /// <summary>Why.</summary>
    public StoreRefusal Refusal { get; } = refusal;

    /// <summary>What the browser said.</summary>
    public string Detail { get; } = detail;

    private static string SentenceOf(StoreRefusal refusal) => refusal switch
    {
        StoreRefusal.Unavailable => Words.Storage.Unavailable,
        StoreRefusal.Full => Words.Storage.Full,
        StoreRefusal.Blocked => Words.Storage.Blocked,
        _ => Words.Storage.Failed,
    };
}
