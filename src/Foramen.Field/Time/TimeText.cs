using System.Globalization;

namespace Foramen.Field.Time;

/// <summary>Times as numerals on the screen and as words for a screen reader.</summary>
public static class TimeText
{
    /// <summary>“0:07”, “3:20”, “1:02:05”: whole seconds, rounded up while counting down so that zero means done.</summary>
    public static string Clock(double seconds)
    {
        var whole = (long)Math.Ceiling(Math.Max(0, seconds) - 1e-6);
        return whole >= 3600
            ? string.Create(CultureInfo.InvariantCulture, $"{whole / 3600}:{whole / 60 % 60:00}:{whole % 60:00}")
            : string.Create(CultureInfo.InvariantCulture, $"{whole / 60}:{whole % 60:00}");
    }

    /// <summary>“0:07” while counting up: whole seconds, rounded down.</summary>
    public static string Elapsed(double seconds) => Clock(Math.Floor(Math.Max(0, seconds)));

    /// <summary>“7 s”, “3 min 20 s”, “1 h 2 min”: for sentences and screen readers.</summary>
    public static string Spoken(double seconds)
    {
        var whole = (long)Math.Round(Math.Max(0, seconds));
        return whole switch
        {
            < 60 => string.Create(CultureInfo.InvariantCulture, $"{whole} s"),
            < 3600 when whole % 60 == 0 => string.Create(CultureInfo.InvariantCulture, $"{whole / 60} min"),
            < 3600 => string.Create(CultureInfo.InvariantCulture, $"{whole / 60} min {whole % 60} s"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{whole / 3600} h {whole / 60 % 60} min"),
        };
    }
}
