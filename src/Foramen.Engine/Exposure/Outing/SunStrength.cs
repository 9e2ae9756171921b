using Foramen.Engine.Light;

namespace Foramen.Engine.Exposure;

/// <summary>The sun's light above the air through a search, held for thirty days at a time, in which its distance changes it by up to 1.8 %.</summary>
internal sealed class SunStrength
{
    private const double MonthDays = 30;

    private readonly DateTimeOffset from;

    public SunStrength(DateTimeOffset from, DateTimeOffset to)
    {
        this.from = from;
        var count = Math.Max(1, (int)Math.Ceiling((to - from).TotalDays / MonthDays));
        Months = [.. Enumerable.Range(0, count).Select(month =>
        {
            var (begin, end) = (from.AddDays(month * MonthDays), from.AddDays((month + 1) * MonthDays));
            end = end < to ? end : to;
            var distance = Sun.DistanceAstronomicalUnits(begin + ((end - begin) / 2));
            return (begin, end, SkyLight.SolarConstantLux / (distance * distance));
        })];
    }

    /// <summary>The months one after the other.</summary>
    public IReadOnlyList<(DateTimeOffset Begin, DateTimeOffset End, double AboveAirLux)> Months { get; }

    /// <summary>At an instant.</summary>
    public double At(DateTimeOffset instant) => Months[Math.Clamp((int)((instant - from).TotalDays / MonthDays), 0, Months.Count - 1)].AboveAirLux;
}
