using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Field.Components;
using Foramen.Field.Texts;
using Foramen.Field.Units;
using Foramen.Journal;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Outings;

/// <summary>A place as it is typed in: texts until they are read, a message beside each that cannot be. A place may be kept unfinished, with a name alone.</summary>
public sealed class PlaceForm
{
    private const double NearestMetres = 10;

    /// <summary>The name.</summary>
    public string Name { get; set; } = "";

    /// <summary>Degrees, north positive.</summary>
    public string Latitude { get; set; } = "";

    /// <summary>Degrees, east positive.</summary>
    public string Longitude { get; set; } = "";

    /// <summary>Bearing of what the camera looks towards.</summary>
    public string Faces { get; set; } = "";

    /// <summary>Bearing that the facade faces; empty for back at the camera.</summary>
    public string FacadeFaces { get; set; } = "";

    /// <summary>Percent of the light that the facade sends back; empty for middle grey.</summary>
    public string Reflectance { get; set; } = "";

    /// <summary>What stands in the sun's way.</summary>
    public IList<ShadeForm> Shades { get; } = [];

    /// <summary>Anything else.</summary>
    public string Note { get; set; } = "";

    /// <summary>What is wrong, by field.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    /// <summary>Fills the form from a place.</summary>
    public PlaceForm Fill(PlaceDefined place)
    {
        Name = place.Name;
        Latitude = Text(place.LatitudeDegrees, 5);
        Longitude = Text(place.LongitudeDegrees, 5);
        Faces = Text(place.FacesDegrees, 1);
        FacadeFaces = Text(place.FacadeFacesDegrees, 1);
        Reflectance = Text(place.ReflectancePercent, 1);
        Note = place.Note ?? "";
        foreach (var shade in place.Shades ?? [])
        {
            Shades.Add(new ShadeForm().Fill(shade));
        }

        return this;
    }

    /// <summary>The device says where the camera stands.</summary>
    public void StandAt(double latitude, double longitude) => (Latitude, Longitude) = (Text(latitude, 5), Text(longitude, 5));

    /// <summary>The device was aimed at what the camera looks towards.</summary>
    /// <param name="bearingDegrees">From north, whole degrees.</param>
    public void LookTowards(double bearingDegrees)
    {
        Messages.Remove(nameof(Faces));
        Faces = Text(bearingDegrees, 0);
    }

    /// <summary>The bearing from where the camera stands to a second spot becomes what it looks towards.</summary>
    /// <param name="latitude">Of the second spot, degrees.</param>
    /// <param name="longitude">Of the second spot, degrees.</param>
    public void LookAt(double latitude, double longitude)
    {
        Messages.Remove(nameof(Faces));
        try
        {
            var here = GeographicPosition.FromDegrees(
                NumberText.Read(Latitude, -90, 90, "the latitude", "degrees"), NumberText.Read(Longitude, -180, 180, "the longitude", "degrees"));
            var there = GeographicPosition.FromDegrees(latitude, longitude);
            if (here.MetresTo(there) < NearestMetres)
            {
                Messages[nameof(Faces)] = Words.Spots.TooNear;
                return;
            }

            Faces = Text(here.BearingTo(there).Degrees, 1);
        }
        catch (RefusalException)
        {
            Messages[nameof(Faces)] = Words.Spots.SetFirst;
        }
    }

    /// <summary>The place; null where something is wrong, and then <see cref="Messages"/> says what.</summary>
    public PlaceDefined? Read(Ulid id)
    {
        Messages.Clear();
        if (Name.Trim().Length == 0)
        {
            Messages[nameof(Name)] = Words.Spots.EmptyName;
        }

        var latitude = Number(nameof(Latitude), Latitude, -90, 90, "the latitude", "degrees");
        var longitude = Number(nameof(Longitude), Longitude, -180, 180, "the longitude", "degrees");
        if (latitude.HasValue != longitude.HasValue && Messages.Count == 0)
        {
            var missing = latitude.HasValue ? nameof(Longitude) : nameof(Latitude);
            Messages[missing] = $"The {missing.ToLowerInvariant()} is missing; a place needs both.";
        }

        var faces = Number(nameof(Faces), Faces, 0, 360, "the bearing", "degrees");
        var facade = Number(nameof(FacadeFaces), FacadeFaces, 0, 360, "the facade's bearing", "degrees");
        var reflectance = Number(nameof(Reflectance), Reflectance, 1, 100, "the light it sends back", "%");
        // Each says its own messages, so all are read.
        var shades = Shades.Select(shade => shade.Read()).ToList();
        return Messages.Count > 0 || shades.Contains(null)
            ? null
            : new PlaceDefined
            {
                Place = id,
                Name = Name.Trim(),
                LatitudeDegrees = latitude,
                LongitudeDegrees = longitude,
                FacesDegrees = faces,
                FacadeFacesDegrees = facade,
                ReflectancePercent = reflectance,
                Shades = shades.Count == 0 ? null : [.. shades.OfType<PlaceShade>()],
                Note = Note.Trim().Length == 0 ? null : Note.Trim(),
            };
    }

    private static string Text(double? value, int decimals) => value is { } number ? NumberText.Show(number, decimals) : "";

    private double? Number(string field, string text, double min, double max, string what, string unit)
    {
        if (text.Trim().Length == 0)
        {
            return null;
        }

        var value = Messages.Try(field, () => NumberText.Read(text, min, max, what, unit));
        return double.IsNaN(value) ? null : value;
    }
}
