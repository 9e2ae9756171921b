namespace Foramen.Engine.Quantities;

/// <summary>
/// Input that cannot be used. The message is one sentence for the person who typed it: what was wrong, where, and
/// what would be right. The prompt shows it and ends with exit code 2; the app shows it beside the field.
/// </summary>
public sealed class RefusalException : Exception
{
    /// <summary>A refusal without a sentence; serializers and frameworks only.</summary>
    public RefusalException()
        : base("This input cannot be used.")
    {
    }

    /// <summary>A refusal in one clear sentence.</summary>
    public RefusalException(string message)
        : base(message)
    {
    }

    /// <summary>A refusal in one clear sentence, with the failure that lies behind it.</summary>
    public RefusalException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
