using System.Text.Json.Serialization;

namespace Foramen.Journal.Bodies;

/// <summary>Where a shadow falls.</summary>
[JsonConverter(typeof(CamelCaseWord<ShadeFalls>))]
public enum ShadeFalls
{
    /// <summary>On what is photographed.</summary>
    OnFacade,

    /// <summary>On the camera, whose hole the sun then spares.</summary>
    OnCamera,

    /// <summary>On both: the thing is far away.</summary>
    OnBoth,
}
