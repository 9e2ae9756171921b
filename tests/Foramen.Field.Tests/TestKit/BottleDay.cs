using Foramen.Field.Sheets;
using Foramen.Field.Sheets.Process;
using Foramen.Field.Time;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;
using Foramen.Journal.Kit;

namespace Foramen.Field.Tests.TestKit;

/// <summary>A day of sheets of 127 × 102 mm through one bottle of developer that nothing but sheets weakens, by the states that the pages use.</summary>
internal sealed class BottleDay
{
    private readonly FieldContext context;
    private readonly Ulid camera;

    private BottleDay(FieldContext context, Ulid camera, Ulid bottle) => (this.context, this.camera, Bottle) = (context, camera, bottle);

    public Ulid Bottle { get; }

    public DeveloperAccount Account => DeveloperAccount.Of(context.Session.Ledger, context.Session.Ledger.Bottles.Find(Bottle)!, context.Time.GetUtcNow());

    /// <summary>Mixes the bottle.</summary>
    /// <param name="field">Field without a browser.</param>
    /// <param name="capacity">m²/l; the handbooks' where null.</param>
    /// <param name="millilitres">In the bottle.</param>
    public static async Task<BottleDay> BeginAsync(FieldContext field, double? capacity = null, double millilitres = 300)
    {
        await field.LoadedSheetAsync();
        var bottle = field.Session.NewId();
        await field.Session.AppendAsync(new BottleMixed
        {
            Bottle = bottle, Contents = BottleContents.Developer, Name = "the day's bottle", VolumeMillilitres = millilitres, TemperatureCelsius = 20,
            Developer = new DeveloperDefinition { CapacitySquareMetresPerLitre = capacity, OpenLossPerHour = 0, ClosedLossPerDay = 0 },
        });
        return new BottleDay(field, field.Session.Ledger.Cameras.All.First().Id, bottle);
    }

    /// <summary>A new sheet, not processed yet.</summary>
    public async Task<SheetState> SheetAsync()
    {
        var id = context.Session.NewId();
        await context.Session.AppendAsync(new SheetStarted { Sheet = id, Camera = camera, Name = "one more" });
        var state = new SheetState(context.Session, new Clock(context.Time, context.Platform));
        state.Show(id);
        return state;
    }

    /// <summary>A sheet through all its baths, each for its time; false where the bottle had none for it.</summary>
    public async Task<(ProcessState State, bool Developed)> ProcessAsync()
    {
        var state = new ProcessState(await SheetAsync());
        if (!await state.StartAsync())
        {
            return (state, false);
        }

        for (var bath = 0; bath < 4; bath++)
        {
            context.Time.Advance(TimeSpan.FromSeconds(state.Run!.Steps[^1].Body.PlannedSeconds));
            Assert.True(await state.GoOnAsync());
        }

        return (state, true);
    }

    /// <summary>Tops up as the card at the end suggests.</summary>
    public static async Task TopUpAsync(ProcessState state)
    {
        var bottle = state.Developing!;
        var read = new TopUpForm(bottle.TopUpDue!).Read(bottle.Account!.Now);
        Assert.True(await bottle.TopUpAsync(read!.Value.Lost, null, read.Value.TopUp));
    }
}
