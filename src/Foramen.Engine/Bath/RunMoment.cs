using System.Globalization;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>One moment of a processing run: where it is, what to do now, and for how long. Immutable.</summary>
public sealed record RunMoment
{
    /// <summary>Place of the step in the plan, from zero; the number of steps when all is done.</summary>
    public required int Index { get; init; }

    /// <summary>The step; null when all is done.</summary>
    public required ProcessingStep? Step { get; init; }

    /// <summary>Time in this step.</summary>
    public required Duration Elapsed { get; init; }

    /// <summary>Time left in this step.</summary>
    public required Duration Left { get; init; }

    /// <summary>How far the step is over its time; zero before.</summary>
    public required Duration Over { get; init; }

    /// <summary>What to do now.</summary>
    public required RunCue Cue { get; init; }

    /// <summary>Until the next change of the cue or the step; zero when all is done.</summary>
    public required Duration CueLeft { get; init; }

    /// <summary>In plain words: "Tilt the box; 34 s left."</summary>
    public string Say()
    {
        var what = Cue switch
        {
            RunCue.Agitate => Step?.Agitation.Motion switch
            {
                AgitationMotion.Rock => "Rock the tray",
                AgitationMotion.Turn => "Turn the tank",
                _ => "Tilt the box",
            },
            RunCue.Still => "Leave it still",
            RunCue.PourOut => "Pour it out",
            RunCue.Done => "All done",
            _ => throw new InvalidOperationException("A cue without words."),
        };
        if (Step is null)
        {
            return what + ".";
        }

        // A countdown shows the second that has begun, so that it ends on zero.
        return Over.Seconds > 0
            ? string.Create(CultureInfo.InvariantCulture, $"{what}; {Math.Floor(Over.Seconds):0} s over.")
            : string.Create(CultureInfo.InvariantCulture, $"{what}; {Math.Ceiling(Left.Seconds):0} s left.");
    }
}
