using System.Text.Json;
using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>An enumeration as a word in camelCase; numbers are refused, because their meaning is not written down anywhere.</summary>
public sealed class CamelCaseWord<T>() : JsonStringEnumConverter<T>(JsonNamingPolicy.CamelCase, allowIntegerValues: false)
    where T : struct, Enum;
