using System.Text.Json.Serialization;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>What an entry says, by kind. Members that a body does not know are ignored here and kept in the entry's raw text.</summary>
public abstract record EntryBody
{
    /// <summary>A body of this kind, in this version of its schema.</summary>
    private protected EntryBody(string kind, int schemaVersion = 1)
    {
        Kind = kind;
        SchemaVersion = schemaVersion;
    }

    /// <summary>The kind of entry this is the body of.</summary>
    [JsonIgnore]
    public string Kind { get; }

    /// <summary>The newest version of the body's schema that this version knows, and the one it writes.</summary>
    [JsonIgnore]
    public int SchemaVersion { get; }

    /// <summary>Checks every value.</summary>
    /// <exception cref="RefusalException">A value outside its range.</exception>
    public abstract void Check();
}
