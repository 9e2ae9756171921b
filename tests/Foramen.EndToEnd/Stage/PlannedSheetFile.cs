using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Journal.Kit;

namespace Foramen.EndToEnd.Stage;

/// <summary>A journal file of another device with Box A, a direct-positive paper nobody has measured, and planned sheets; one may have its hole open.</summary>
internal sealed class PlannedSheetFile
{
    private static readonly DateTimeOffset Morning = new(2026, 5, 3, 9, 0, 0, TimeSpan.FromHours(2));

    private readonly List<Entry> entries = [];
    private readonly byte person;
    private readonly Ulid camera;
    private readonly Ulid paper;

    /// <param name="person">Whose file it is: different people's name different things.</param>
    public PlannedSheetFile(byte person = 0)
    {
        this.person = person;
        (camera, paper) = (Id(1), Id(2));
        Add(Morning, new CameraDefined
        {
            Camera = camera,
            Definition = new CameraDefinition
            {
                Name = "Box A", HoleDiameterMillimetres = 0.35, FocalDistanceMillimetres = 63, SheetWidthMillimetres = 127, SheetHeightMillimetres = 102,
                PaperShape = "flat",
            },
        });
        Add(Morning, new PaperDefined { Paper = paper, Definition = PaperReading.Unknown("Positive", "directPositive") });
    }

    /// <summary>A sheet that is planned.</summary>
    public PlannedSheetFile With(string name, double exposureSeconds, double flashSeconds = 0)
    {
        var sheet = Id(100 + entries.Count);
        Add(Morning, new SheetStarted { Sheet = sheet, Camera = camera, Paper = paper, Name = name });
        Add(Morning, new PlanMade { Sheet = sheet, ExposureSeconds = exposureSeconds, FlashSeconds = flashSeconds });
        return this;
    }

    /// <summary>The sheet added last has had its hole open since an instant, in sun.</summary>
    public PlannedSheetFile OpenSince(DateTimeOffset instant)
    {
        Add(instant, new HoleOpened { Sheet = Id(98 + entries.Count), Light = LightWord.Sun, LightStops = 0 });
        return this;
    }

    /// <summary>The file.</summary>
    public byte[] Write() => JournalFile.Write(entries);

    private Ulid Id(int number) => Ulid.From(Morning, [person, 0, 0, 0, 0, 0, 0, 0, (byte)(number / 256), (byte)number]);

    private void Add(DateTimeOffset at, EntryBody body) => entries.Add(Entry.Create(Id(1000 + entries.Count), DeviceId.Parse($"journey{person}"), entries.Count + 1, at, body));
}
