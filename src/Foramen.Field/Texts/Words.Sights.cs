using Foramen.Field.Units;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>Sighting with the device.</summary>
    public static class Sights
    {
        public const string HowTo = "Hold the device upright, its back to what you sight, and touch.";
        public const string Compass = "By the device’s compass, from magnetic north: some degrees off the map’s north, and more beside iron, a car or a magnet.";
        public const string NoCompass = "This device does not say where north is, or looks too steeply; type the bearings.";
        public const string Done = "Done";

        public static string Looking(double? bearing, double tilt) => bearing is { } towards
            ? $"Towards {NumberText.Show(towards, 0)}°, {Height(tilt)}"
            : Height(tilt);

        public static string Take(string name, double? degrees) => degrees is { } value ? $"{name}: {NumberText.Show(value, 0)}°" : name;

        private static string Height(double tilt) => tilt switch
        {
            >= 0.5 => $"{NumberText.Show(tilt, 0)}° up",
            <= -0.5 => $"{NumberText.Show(-tilt, 0)}° down",
            _ => "level",
        };
    }
}
