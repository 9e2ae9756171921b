using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Sheets.Process;

/// <summary>
/// When a bath is moved, in the Engine's usual rhythm: a function of the time in it alone, so that a reload changes nothing. The wash is
/// one bath of several changes of water, each with the rhythm anew.
/// </summary>
public static class BathCues
{
    /// <summary>How long each change of wash water stays, s: “2 min in each of three or four changes” (US War Department, TM 11-2323).</summary>
    public const double WashChangeSeconds = 120;

    private const double FreshWaterSeconds = 10;

    /// <summary>What to do now.</summary>
    /// <param name="bath">Which bath.</param>
    /// <param name="elapsedSeconds">Time in it, s, zero or more.</param>
    /// <param name="plannedSeconds">Time planned, s.</param>
    public static AgitationCue At(BathKind bath, double elapsedSeconds, double plannedSeconds)
    {
        var left = plannedSeconds - elapsedSeconds;
        if (left <= 0)
        {
            return new AgitationCue(AgitationAction.Drain, 0);
        }

        var change = bath == BathKind.Wash ? Math.Floor(elapsedSeconds / WashChangeSeconds) : 0;
        var within = elapsedSeconds - (change * WashChangeSeconds);
        if (change > 0 && within < FreshWaterSeconds)
        {
            return new AgitationCue(AgitationAction.FreshWater, Math.Min(left, FreshWaterSeconds - within));
        }

        var (move, goesOn) = RhythmOf(bath).At(Duration.FromSeconds(within));
        var untilChange = bath == BathKind.Wash ? Math.Min(left, WashChangeSeconds - within) : left;
        return new AgitationCue(move ? AgitationAction.Move : AgitationAction.Rest, Math.Min(untilChange, goesOn.Seconds));
    }

    /// <summary>When the hands are called, seconds from the beginning of the bath; without the beginning itself. In the wash only for fresh water.</summary>
    public static IEnumerable<double> Starts(BathKind bath, double plannedSeconds)
    {
        var rhythm = RhythmOf(bath);
        if (bath != BathKind.Wash && rhythm.Stroke.Seconds >= rhythm.Every.Seconds)
        {
            yield break;
        }

        var (first, every) = bath == BathKind.Wash
            ? (WashChangeSeconds, WashChangeSeconds)
            : (rhythm.Continuous.Seconds + rhythm.Every.Seconds, rhythm.Every.Seconds);
        for (var at = first; at < plannedSeconds; at += every)
        {
            yield return at;
        }
    }

    private static Agitation RhythmOf(BathKind bath) => Agitation.Usual(bath switch
    {
        BathKind.Developer => ProcessingBath.Developer,
        BathKind.Rinse or BathKind.Stop => ProcessingBath.Stop,
        BathKind.Fix => ProcessingBath.Fix,
        _ => ProcessingBath.Wash,
    });
}
