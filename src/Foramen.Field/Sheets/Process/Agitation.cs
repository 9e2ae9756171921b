using Foramen.Journal.Bodies;

namespace Foramen.Field.Sheets.Process;

/// <summary>
/// When a bath is moved: a function of the time in it alone, so that a reload changes nothing. Developer: the first 10 s, then 5 s in every 15 s;
/// stop and rinse: all the time; fixer: 10 s in every 30 s; wash: 10 s after each change of water (common practice, no source; steady,
/// repeatable movement matters more than the exact rhythm).
/// </summary>
public static class Agitation
{
    /// <summary>How long each change of wash water stays, s: “2 min in each of three or four changes” (US War Department, TM 11-2323).</summary>
    public const double WashChangeSeconds = 120;

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

        var (first, every, moving) = Rhythm(bath);
        if (double.IsInfinity(every))
        {
            return new AgitationCue(AgitationAction.Move, left);
        }

        var turn = Math.Floor(elapsedSeconds / every);
        var within = elapsedSeconds - (turn * every);
        var moves = turn == 0 ? first : moving;
        return within >= moves ? new AgitationCue(AgitationAction.Rest, Math.Min(left, every - within))
            : new AgitationCue(bath == BathKind.Wash && turn > 0 ? AgitationAction.FreshWater : AgitationAction.Move, Math.Min(left, moves - within));
    }

    /// <summary>When moving begins again, seconds from the beginning of the bath; without the beginning itself.</summary>
    public static IEnumerable<double> Starts(BathKind bath, double plannedSeconds)
    {
        var every = Rhythm(bath).Every;
        for (var at = every; at < plannedSeconds; at += every)
        {
            yield return at;
        }
    }

    private static (double First, double Every, double Moving) Rhythm(BathKind bath) => bath switch
    {
        BathKind.Developer => (10, 15, 5),
        BathKind.Fix => (10, 30, 10),
        BathKind.Wash => (10, WashChangeSeconds, 10),
        _ => (double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity),
    };
}
