namespace Foramen.Storage;

/// <summary>The store refused; the message is one sentence for whoever runs Home, without any secret.</summary>
public sealed class StoreException(StoreTrouble trouble, string sentence, Exception? cause = null) : Exception(sentence, cause)
{
    /// <summary>Why.</summary>
    public StoreTrouble Trouble { get; } = trouble;
}
