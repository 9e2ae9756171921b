using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Field.Components;
using Foramen.Field.Storage;
using Foramen.Field.Texts;
using Foramen.Field.Units;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Strips;

namespace Foramen.Field.Bench.Strips.Flashes;

/// <summary>A strip made with flash alone: the flash that first shows, what any flash gains and takes on this paper, and how long to flash at a white surface in a light.</summary>
public sealed class FlashStripState
{
    private readonly JournalSession session;
    private readonly Ulid id;

    /// <summary>A strip of the journal; what was read on it before is filled in.</summary>
    public FlashStripState(JournalSession session, Ulid id)
    {
        (this.session, this.id) = (session, id);
        if (Made is not { } made)
        {
            return;
        }

        Paper = session.Ledger.Papers.Find(made.Paper)?.Current.Body.ToPaper();
        Light = StripLights.Nearest(StripReading.LightOf(made));
        FirstTone = Record?.Read?.Body.FirstTone is { } known ? NumberText.Show(known, 0) : "";
        var cameras = session.Ledger.Cameras.All.ToList();
        Camera = cameras.Count > 0 ? cameras[^1].Id : default;
        Look();
    }

    /// <summary>The strip as it was made; null where the journal knows none of this id that was made for the flash.</summary>
    public StripMade? Made => Record?.Made?.Body is { Purpose: StripPurpose.Flash } made ? made : null;

    /// <summary>The box of paper.</summary>
    public PhotographicPaper? Paper { get; }

    /// <summary>The first patch that shows, as typed.</summary>
    public string FirstTone { get; private set; } = "";

    /// <summary>A meter's reading of the white surface the flash will be pointed at; empty for the strip's own light.</summary>
    public string Target { get; private set; } = "";

    /// <summary>The colour of the light there.</summary>
    public LightColour Light { get; private set; } = LightColour.Noon;

    /// <summary>The camera the flash will be given in.</summary>
    public Ulid Camera { get; private set; }

    /// <summary>The threshold; null until it was read.</summary>
    public FlashStrip? Threshold { get; private set; }

    /// <summary>The effective exposure that first showed.</summary>
    public LuminousExposure Shown { get; private set; }

    /// <summary>How much more light it took than the paper's curve says, stops.</summary>
    public double AgainstCurve => Math.Log2(Shown.LuxSeconds / FlashEffect.Threshold(Paper!.Curve).LuxSeconds);

    /// <summary>The flash to give; null until there is a threshold and a light.</summary>
    public FlashAdvice? Advice { get; private set; }

    /// <summary>What is wrong, by field.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    private StripRecord? Record => session.Ledger.Strips.Find(id);

    /// <summary>Takes the first patch that shows.</summary>
    public void SayFirstTone(string text) => Look(() => FirstTone = text);

    /// <summary>Takes a reading of the white surface.</summary>
    public void SayTarget(string text) => Look(() => Target = text);

    /// <summary>Takes the colour of the light there.</summary>
    public void SayLight(LightColour light) => Look(() => Light = light);

    /// <summary>Takes the camera.</summary>
    public void SayCamera(Ulid camera) => Look(() => Camera = camera);

    /// <summary>Writes down what was read; false where something is wrong, and then <see cref="Messages"/> says what.</summary>
    /// <exception cref="StoreRefusedException">It could not be kept.</exception>
    public async Task<bool> KeepAsync()
    {
        if (FirstTone.Trim().Length == 0)
        {
            Messages[nameof(FirstTone)] = Words.FlashStrips.Nothing;
        }

        if (Messages.ContainsKey(nameof(FirstTone)) || Threshold is null)
        {
            return false;
        }

        await session.AppendAsync(new StripRead { Strip = id, By = StripReader.Eye, FirstTone = FirstVisible() });
        return true;
    }

    private void Look(Action change)
    {
        change();
        Look();
    }

    private void Look()
    {
        (Threshold, Advice) = (null, null);
        Messages.Clear();
        if (Made is not { } made || Paper is not { } paper)
        {
            return;
        }

        var onStrip = Illuminance.FromLux(made.OnStripLux);
        if (FirstTone.Trim().Length > 0)
        {
            Messages.Try(nameof(FirstTone), () =>
            {
                Threshold = FlashStrip.Read([.. made.Seconds.Select(Duration.FromSeconds)], FirstVisible(), onStrip, StripReading.LightOf(made));
                Shown = Threshold.Effective(paper.Sensitivity, paper.Failure);
                return 0;
            });
        }

        var onSheet = onStrip;
        if (Target.Trim().Length > 0)
        {
            Messages.Try(nameof(Target), () =>
            {
                var box = session.Ledger.Cameras.Find(Camera)?.Current.Body.ToCamera() ?? throw new RefusalException(Words.FlashStrips.NoCamera);
                onSheet = box.ImageIlluminance(ReadingText.Luminance(Target, LightMeter.Usual, "the white surface"), box.HoleOffset);
                return 0;
            });
        }

        if (Threshold is not null && !Messages.ContainsKey(nameof(Target)))
        {
            Messages.Try(nameof(Target), () =>
            {
                Advice = FlashAdvice.For(PaperResponse.Of(paper, Light), onSheet, Shown);
                return 0;
            });
        }
    }

    private int FirstVisible() => (int)Math.Round(NumberText.Read(FirstTone, 1, Made!.Seconds.Count + 1, "the first patch that shows"));
}
