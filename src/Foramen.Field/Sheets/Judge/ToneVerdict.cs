using Foramen.Engine.Exposure;
using Foramen.Engine.Print;
using Foramen.Journal;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Sheets.Judge;

/// <summary>The verdict on one tone while it is being made.</summary>
public sealed class ToneVerdict(Ulid? tone, string name, WantedRendering? wanted)
{
    /// <summary>Most that can be said, stops.</summary>
    public const double MaxStops = 6;

    /// <summary>One touch, stops.</summary>
    public const double StepStops = 0.5;

    /// <summary>What “burnt” or “blocked” stands for at least until more is said, stops; our choice.</summary>
    public const double LostStops = 2;

    private double? sdStops;

    /// <summary>The tone; null for the print as a whole.</summary>
    public Ulid? Tone { get; } = tone;

    /// <summary>What it is.</summary>
    public string Name { get; } = name;

    /// <summary>How it was wanted; null for the print as a whole.</summary>
    public WantedRendering? Wanted { get; } = wanted;

    /// <summary>How much lighter than wanted, stops of light; negative is darker.</summary>
    public double LighterByStops { get; private set; }

    /// <summary>Burnt or blocked, where detail is gone; null where it is not.</summary>
    public ToneFate? Lost { get; private set; }

    /// <summary>Density measured on a picture of the print; null where it was judged by eye.</summary>
    public double? MeasuredDensity { get; private set; }

    /// <summary>Whether it says something about the time: not where it was allowed to burn or block.</summary>
    public bool Counts => Wanted is not (WantedRendering.MayBurn or WantedRendering.MayBlock);

    /// <summary>Takes up what was said before.</summary>
    public ToneVerdict Taking(JudgedTone? said)
    {
        LighterByStops = said?.LighterByStops ?? 0;
        Lost = said?.Fate;
        (MeasuredDensity, sdStops) = (said?.MeasuredDensity, said?.SdStops);
        return this;
    }

    /// <summary>Takes what was measured; a tone that may burn or block keeps what was said of it.</summary>
    public void TakeMeasured(MeasuredTone measured)
    {
        if (measured is { FromAim: { } off, FromAimSd: { } sd })
        {
            LighterByStops = Math.Clamp(Math.Round(off.Value, 1), -MaxStops, MaxStops);
            Lost = measured.Outcome switch
            {
                ToneOutcome.Burnt => ToneFate.Burnt,
                ToneOutcome.Blocked => ToneFate.Blocked,
                _ => null,
            };
            (MeasuredDensity, sdStops) = (Math.Round(measured.Density.Value, 3), Math.Round(sd.Value, 3));
        }
    }

    /// <summary>Half a stop lighter or darker; what was measured no longer counts.</summary>
    /// <param name="steps">1 lighter, −1 darker.</param>
    public void Move(int steps)
    {
        ByEye();
        LighterByStops = Math.Clamp(LighterByStops + (steps * StepStops), -MaxStops, MaxStops);
        if ((Lost == ToneFate.Burnt && LighterByStops <= 0) || (Lost == ToneFate.Blocked && LighterByStops >= 0))
        {
            Lost = null;
        }
    }

    /// <summary>Says that its detail is gone, or takes that back.</summary>
    public void Lose(ToneFate fate)
    {
        ByEye();
        if (Lost == fate)
        {
            (Lost, LighterByStops) = (null, 0);
            return;
        }

        Lost = fate;
        LighterByStops = fate == ToneFate.Burnt ? Math.Max(LighterByStops, LostStops) : Math.Min(LighterByStops, -LostStops);
    }

    /// <summary>As the journal keeps it.</summary>
    public JudgedTone ToJudged() => new() { Tone = Tone, LighterByStops = LighterByStops, Fate = Lost, MeasuredDensity = MeasuredDensity, SdStops = sdStops };

    private void ByEye() => (MeasuredDensity, sdStops) = (null, null);
}
