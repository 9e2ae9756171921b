using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>Which way round the sheet stands.</summary>
[JsonConverter(typeof(CamelCaseWord<SheetOrientation>))]
public enum SheetOrientation
{
    /// <summary>The long side is vertical.</summary>
    Upright,

    /// <summary>The long side is horizontal.</summary>
    Level,
}
