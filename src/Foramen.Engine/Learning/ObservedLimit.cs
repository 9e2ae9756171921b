namespace Foramen.Engine.Learning;

/// <summary>Whether what was seen of a tone is a value or only a bound.</summary>
public enum ObservedLimit
{
    /// <summary>A value.</summary>
    Exact,

    /// <summary>It was lighter by at least so much: burnt.</summary>
    AtLeast,

    /// <summary>It was lighter by at most so much, that is, darker by at least so much: blocked.</summary>
    AtMost,
}
