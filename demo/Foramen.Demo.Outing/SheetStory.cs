using System.Security.Cryptography;
using Foramen.Engine.Bath;
using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Kit;

namespace Foramen.Demo.Outing;

/// <summary>One sheet's life, told step by step; times and odds come from the Engine, the rest is invented.</summary>
internal sealed class SheetStory
{
    private readonly Notebook notebook;
    private readonly PaperDefinition paper;
    private readonly LightColour light;
    private readonly List<(DemoTone Tone, Ulid Id)> tones = [];
    private readonly PaperResponse response;
    private readonly PinholeCamera camera;
    private ExposureForecast? forecast;

    public SheetStory(Notebook notebook, SheetStarted beginning, CameraDefinition camera, PaperDefinition paper, LightColour light)
    {
        this.notebook = notebook;
        this.paper = paper;
        this.light = light;
        this.camera = camera.ToCamera();
        response = PaperResponse.Of(paper.ToPaper(), light);
        Id = beginning.Sheet;
        notebook.Write(beginning);
    }

    public Ulid Id { get; }

    public Ulid this[string tone] => tones.Single(one => one.Tone.Name == tone).Id;

    public void Photograph(string file, PhotographedHow facts)
    {
        var bytes = File.ReadAllBytes(file);
        Say(120, new PhotographAdded
        {
            Sheet = Id, ContentHash = Convert.ToHexStringLower(SHA256.HashData(bytes)), WidthPixels = 4032, HeightPixels = 3024, MediaType = "image/jpeg",
            ByteCount = bytes.Length, Facts = facts,
        });
    }

    public void Frame(FrameChosen frame) => Say(70, frame);

    public void Meter(params DemoTone[] scene)
    {
        foreach (var tone in scene)
        {
            var id = notebook.Name($"{Id} {tone.Name}");
            tones.Add((tone, id));
            Say(15, tone.Read(Id, id, Math.Round(light.Temperature.Kelvin)));
        }
    }

    /// <summary>Plans with the Engine; with a flash at a surface of this luminance, if there is one.</summary>
    public void Plan(double? flashAt = null, string? note = null)
    {
        var flash = flashAt is { } luminance
            ? FlashSetup.AtSurface(camera.ImageIlluminance(Luminance.FromCandelasPerSquareMetre(luminance), SheetPoint.FromMillimetres(0, 0)))
            : FlashSetup.None;
        var known = response.Paper;
        var errors = new ExposureErrors { Paper = known.SpeedSpread, Colour = known.ColourSpread(light), Hole = Stops.FromRatio(Math.Pow(1 + camera.Hole.DiameterRelativeSd, 2)) };
        forecast = new ExposurePlanner(response, [.. tones.Select(one => one.Tone.PlacedIn(camera))], flash, errors).Recommend();
        Say(40, new PlanMade
        {
            Sheet = Id,
            ExposureSeconds = Math.Round(forecast.Exposure.Time.Seconds, 1),
            FlashSeconds = Math.Round(forecast.Exposure.Flash.Seconds, 1),
            FlashFraction = flash.IsPossible ? Math.Round(forecast.FlashFraction, 3) : null,
            FlashLuminanceCandelasPerSquareMetre = flashAt,
            Odds = Math.Round(forecast.Odds.Fraction, 3),
            LimitedBy = Camel(forecast.LimitedBy.ToString()),
            LightKelvin = Math.Round(light.Temperature.Kelvin),
            Tones =
            [
                .. forecast.Tones.Select((tone, i) => new PlannedTone
                {
                    Tone = tones[i].Id,
                    Density = Math.Round(tone.Density.Value, 2),
                    DensitySd = Math.Round(tone.DensitySpread, 2),
                    FromAimStops = tone.FromAim is { } stops ? Math.Round(stops.Value, 2) : null,
                    ChanceAsWanted = Math.Round(tone.ChanceAsWanted.Fraction, 2),
                    Fate = Enum.Parse<ToneFate>(tone.Outcome.ToString()),
                }),
            ],
            Note = note,
        });
    }

    public void Flash(string pointedAt)
    {
        var seconds = Math.Round(forecast!.Exposure.Flash.Seconds, 1);
        Say(20, new FlashStarted { Sheet = Id, PlannedSeconds = seconds, PointedAt = pointedAt });
        Say(seconds, new FlashFinished { Sheet = Id });
    }

    /// <summary>Opens the hole, lets the light change as told (seconds after the one before), and closes when the Engine's tally is done.</summary>
    public void Expose(double wait, params (double After, double Stops, LightWord Light)[] changes)
    {
        Say(wait, new HoleOpened { Sheet = Id, LightStops = 0, Light = LightWord.Sun });
        foreach (var (after, stops, word) in changes)
        {
            Say(after, new LightChanged { Sheet = Id, LightStops = stops, Light = word });
        }

        var record = notebook.Ledger.Sheets.Find(Id)!.TallyAt(notebook.Now);
        var tally = ExposureTally.For(response.Paper.Failure, Duration.FromSeconds(Math.Round(forecast!.Exposure.Time.Seconds, 1)));
        var left = tally.Remaining(tally.Progress(record.Spans), Stops.FromValue(record.LightStops));
        Say(Math.Round(left.Seconds, 1), new HoleClosed { Sheet = Id });
    }

    /// <summary>Through the baths of the outing; the time in the developer is what the Engine gives for the bottle as it is then.</summary>
    public void Process(Bottles bottles, double celsius, double? appeared = null, double topUp = 0, DeveloperColour? colour = null, string? note = null)
    {
        const double Lost = 1.5;
        var fibre = paper.Kind == "directPositive";
        Say(298, new BottleWarmthRead { Bottle = bottles.Developer, TemperatureCelsius = celsius });
        var seconds = Math.Round(bottles.Account(notebook).Now.TimeAt(Temperature.FromCelsius(celsius)).Time.Middle.Seconds);
        Say(2, new BathStarted { Sheet = Id, TemperatureCelsius = celsius, Bottle = bottles.Developer, Note = note });
        Say(2, new BathStep { Sheet = Id, Step = BathKind.Developer, PlannedSeconds = seconds });
        Say(seconds, new BathStep { Sheet = Id, Step = BathKind.Stop, PlannedSeconds = 20 });
        notebook.Write(new DevelopedIn
        {
            Sheet = Id, Bottle = bottles.Developer, TemperatureCelsius = celsius, DevelopedSeconds = seconds, AppearedAfterSeconds = appeared, LostMillilitres = Lost, Colour = colour,
        });
        Say(20, new BathStep { Sheet = Id, Step = BathKind.Fix, PlannedSeconds = fibre ? 120 : 60 });
        Say(fibre ? 121 : 62, new BathStep { Sheet = Id, Step = BathKind.Wash, PlannedSeconds = fibre ? 300 : 120 });
        notebook.Write(new FixedIn { Sheet = Id, Bottle = bottles.Fixer });
        Say(fibre ? 300 : 120, new BathFinished { Sheet = Id });
        if (topUp > 0)
        {
            var room = TopUp.Of(bottles.Account(notebook).Now, Volume.FromMillilitres(topUp));
            Say(60, new BottleToppedUp { Bottle = bottles.Developer, PouredMillilitres = Math.Round(room.Pour.Millilitres, 1), FreshMillilitres = topUp });
        }
    }

    public void Judge(bool keeper, IReadOnlyList<JudgedTone> how, IReadOnlyList<MishapCause> causes, string note)
        => Say(240, new PrintJudged { Sheet = Id, Keeper = keeper, Tones = how, Causes = causes, Note = note });

    public JudgedTone Came(string tone, double lighterByStops) => new() { Tone = this[tone], LighterByStops = lighterByStops };

    public Entry Say(double after, EntryBody body)
    {
        notebook.Wait(after);
        return notebook.Write(body);
    }

    private static string Camel(string word) => char.ToLowerInvariant(word[0]) + word[1..];
}
