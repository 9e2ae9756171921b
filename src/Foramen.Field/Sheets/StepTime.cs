using Foramen.Journal.Fold;

namespace Foramen.Field.Sheets;

/// <summary>How a timed step stands at an instant, by the wall clock alone.</summary>
/// <param name="Since">When it began.</param>
/// <param name="PlannedSeconds">How long it is to take, s.</param>
/// <param name="ElapsedSeconds">How long it has taken so far, s.</param>
/// <param name="ClockWentBack">Whether the clock stands before its beginning, so that the time so far is not known.</param>
public sealed record StepTime(DateTimeOffset Since, double PlannedSeconds, double ElapsedSeconds, bool ClockWentBack)
{
    /// <summary>How the bath that a sheet is in stands; null where it is in none.</summary>
    public static StepTime? OfBath(Sheet sheet, DateTimeOffset now)
    {
        if (sheet.Bath?.PositionAt(now) is not { } position)
        {
            return null;
        }

        var step = sheet.Bath.Steps[^1];
        return new StepTime(step.At.AddSeconds(-(step.Body.SecondsAgo ?? 0)), step.Body.PlannedSeconds, position.ElapsedSeconds, position.ClockWentBack);
    }

    /// <summary>Time left, s; zero when done.</summary>
    public double LeftSeconds => Math.Max(0, PlannedSeconds - ElapsedSeconds);

    /// <summary>Time beyond the plan, s.</summary>
    public double OverSeconds => Math.Max(0, ElapsedSeconds - PlannedSeconds);

    /// <summary>Whether the planned time is over.</summary>
    public bool IsDone => !ClockWentBack && ElapsedSeconds >= PlannedSeconds;

    /// <summary>Whether it has stood so long that someone was probably away.</summary>
    public bool IsLongOver => IsDone && OverSeconds >= 5;

    /// <summary>What a screen reader hears: seldom at first, often at the end; the text changes only when something should be said.</summary>
    public string Speak(string whenDone)
    {
        if (IsDone)
        {
            return whenDone;
        }

        var step = LeftSeconds switch { > 120 => 60.0, > 30 => 30, > 10 => 10, _ => 5 };
        return Texts.Words.Timed.Announce(Time.TimeText.Spoken(Math.Ceiling(LeftSeconds / step) * step));
    }
}
