namespace Foramen.Journal.Bodies;

/// <summary>A place was described. Described again, the last description counts.</summary>
public sealed record PlaceDefined() : EntryBody(EntryKind.PlaceDefined)
{
    /// <summary>Most things that may stand in the sun's way.</summary>
    public const int MostShades = 20;

    /// <summary>The place.</summary>
    public required Ulid Place { get; init; }

    /// <summary>What its finder calls it.</summary>
    public required string Name { get; init; }

    /// <summary>Latitude, degrees, north positive. Removed from exports without places.</summary>
    public double? LatitudeDegrees { get; init; }

    /// <summary>Longitude, degrees, east positive. Removed from exports without places.</summary>
    public double? LongitudeDegrees { get; init; }

    /// <summary>What the camera looks towards there: bearing from true north, degrees clockwise, 0 to 360.</summary>
    public double? FacesDegrees { get; init; }

    /// <summary>What the photographed facade itself faces: bearing from true north, degrees clockwise, 0 to 360; back at the camera where nothing is said.</summary>
    public double? FacadeFacesDegrees { get; init; }

    /// <summary>How much of the light the facade sends back, percent, 1 to 100.</summary>
    public double? ReflectancePercent { get; init; }

    /// <summary>What stands in the sun's way there; at most <see cref="MostShades"/>.</summary>
    public IReadOnlyList<PlaceShade>? Shades { get; init; }

    /// <summary>Anything else worth remembering.</summary>
    public string? Note { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Required(Name, "the place's name");
        BodyCheck.Optional(LatitudeDegrees, -90, 90, "the latitude", "degrees");
        BodyCheck.Optional(LongitudeDegrees, -180, 180, "the longitude", "degrees");
        BodyCheck.Optional(FacesDegrees, 0, 360, "the bearing", "degrees");
        BodyCheck.Optional(FacadeFacesDegrees, 0, 360, "the facade's bearing", "degrees");
        BodyCheck.Optional(ReflectancePercent, 1, 100, "the facade's reflectance", "%");
        BodyCheck.Count(Shades, MostShades, "things that hide the sun");
        foreach (var shade in Shades ?? [])
        {
            shade.Check();
        }

        BodyCheck.Note(Note);
    }
}
