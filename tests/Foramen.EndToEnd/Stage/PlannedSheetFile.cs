using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Exchange;
using Foramen.Journal.Kit;

namespace Foramen.EndToEnd.Stage;

/// <summary>A journal file with Box A, a direct-positive paper, and one sheet that is planned.</summary>
internal static class PlannedSheetFile
{
    private static readonly DateTimeOffset Morning = new(2026, 5, 3, 9, 0, 0, TimeSpan.FromHours(2));

    public static (string Sheet, byte[] File) Create(double exposureSeconds)
    {
        var (camera, paper, sheet) = (Id(1), Id(2), Id(3));
        EntryBody[] bodies =
        [
            new CameraDefined
            {
                Camera = camera,
                Definition = new CameraDefinition
                {
                    Name = "Box A", HoleDiameterMillimetres = 0.35, FocalDistanceMillimetres = 63, SheetWidthMillimetres = 127, SheetHeightMillimetres = 102,
                    PaperShape = "flat",
                },
            },
            new PaperDefined { Paper = paper, Definition = PaperReading.Unknown("Positive", "directPositive") },
            new SheetStarted { Sheet = sheet, Camera = camera, Paper = paper, Name = "Elevator" },
            new PlanMade { Sheet = sheet, ExposureSeconds = exposureSeconds },
        ];
        var device = DeviceId.Parse("journey");
        var entries = bodies.Select((body, i) => Entry.Create(Id(10 + i), device, i + 1, Morning, body));
        return (sheet.ToString(), JournalFile.Write(entries));
    }

    private static Ulid Id(int number) => Ulid.From(Morning, [0, 0, 0, 0, 0, 0, 0, 0, 0, (byte)number]);
}
