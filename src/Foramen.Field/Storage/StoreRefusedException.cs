using Foramen.Field.Texts;

namespace Foramen.Field.Storage;

/// <summary>The store refused; nothing was written. The message is for the user; where nothing better is known, it says what the browser said.</summary>
public sealed class StoreRefusedException(StoreRefusal refusal, string detail) : Exception(SentenceOf(refusal, detail))
{
    /// <summary>Why.</summary>
    public StoreRefusal Refusal { get; } = refusal;

    private static string SentenceOf(StoreRefusal refusal, string detail) => refusal switch
    {
        StoreRefusal.Unavailable => Words.Storage.Unavailable,
        StoreRefusal.Full => Words.Storage.Full,
        StoreRefusal.Blocked => Words.Storage.Blocked,
        _ => Words.Storage.FailedAs(detail),
    };
}
