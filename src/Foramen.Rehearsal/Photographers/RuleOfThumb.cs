using Foramen.Rehearsal.Lines;

namespace Foramen.Rehearsal.Photographers;

/// <summary>
/// A careful photographer without an engine: meters the middle, trusts the label, adds time when it gets long,
/// flashes where the range is great, and after a sheet that was off by a stop or more goes
/// half of the way back, for as long as the light stays. In another light it begins from the label again.
/// </summary>
internal sealed class RuleOfThumb : IPhotographer
{
    private const double MeterK = 12.5;

    private double correction;
    private string? sky;

    public ExposeLine Decide(SheetLine seen)
    {
        if (seen.Sky != sky)
        {
            (sky, correction) = (seen.Sky, 0);
        }

        // The middle if there is one, or halfway between the ends.
        var counting = seen.Tones.Where(tone => tone.Rendering is "mid" or "openShadow" or "texturedHighlight").ToList();
        var middle = counting.Find(tone => tone.Rendering == "mid")?.Ev ?? counting.Average(tone => tone.Ev);
        var luminance = MeterK * Math.Pow(2, middle) / 100;
        var seconds = MeterK * seen.FNumber * seen.FNumber / (luminance * seen.Label.ExposureIndex) * Math.Pow(2, correction);

        // "Double it beyond four minutes, half as much again beyond two."
        seconds *= seconds > 240 ? 1.5 : seconds > 120 ? 1.2 : seconds < 15 ? 0.8 : 1;
        var range = counting.Max(tone => tone.Ev) - counting.Min(tone => tone.Ev);
        var flash = range > 2.2 && seen.CardEv is { } card ? 0.06 * MeterK * seen.FNumber * seen.FNumber / (MeterK * Math.Pow(2, card) / 100 * seen.Label.ExposureIndex) : 0;
        return new ExposeLine { Seconds = Math.Clamp(seconds, 0.1, 20_000), FlashSeconds = flash };
    }

    public void Learn(SheetLine seen, ExposeLine done, JudgedLine judged)
    {
        if (judged.Tones.Count == 0)
        {
            return;
        }

        var off = judged.Tones.Average(tone => tone.LighterByStops);
        if (Math.Abs(off) >= 1)
        {
            correction -= off / 2;
        }
    }
}
