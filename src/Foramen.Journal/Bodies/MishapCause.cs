using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>What went wrong.</summary>
[JsonConverter(typeof(CamelCaseWord<MishapCause>))]
public enum MishapCause
{
    /// <summary>The frame: cut off, tilted, not what was wanted.</summary>
    Frame,

    /// <summary>Something moved.</summary>
    Motion,

    /// <summary>The light changed or was read wrongly.</summary>
    Light,

    /// <summary>Processing.</summary>
    Process,

    /// <summary>Stray light.</summary>
    Leak,

    /// <summary>Something else; see the note.</summary>
    Other,
}
