using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;

namespace Foramen.Demo.Outing;

/// <summary>The outing's bottles.</summary>
internal sealed record Bottles(Ulid Developer, Ulid Fixer)
{
    /// <summary>Mixes both: half a litre of each, for a tray that takes 150 ml.</summary>
    public static Bottles Mix(Notebook notebook)
    {
        var bottles = new Bottles(notebook.Name("developer"), notebook.Name("fixer"));
        notebook.Write(new BottleMixed
        {
            Bottle = bottles.Developer, Contents = BottleContents.Developer, Name = "Half a litre of paper developer", VolumeMillilitres = 500, CoveringMillilitres = 150, WaterParts = 9,
            TemperatureCelsius = 20, Note = "Invented. Mixed at home with tap water.",
        });
        notebook.Wait(120);
        notebook.Write(new BottleMixed
        {
            Bottle = bottles.Fixer, Contents = BottleContents.Fixer, Name = "Half a litre of fixer", VolumeMillilitres = 500, CoveringMillilitres = 150, WaterParts = 4, TemperatureCelsius = 20,
        });
        return bottles;
    }

    /// <summary>The developer as it is now.</summary>
    public DeveloperAccount Account(Notebook notebook)
    {
        var ledger = notebook.Ledger;
        return DeveloperAccount.Of(ledger, ledger.Bottles.Find(Developer)!, notebook.Now);
    }
}
