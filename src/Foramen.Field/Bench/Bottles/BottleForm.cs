using Foramen.Field.Components;
using Foramen.Field.Texts;
using Foramen.Field.Units;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Kit;

namespace Foramen.Field.Bench.Bottles;

/// <summary>A bottle as it is mixed: texts until they are read, a message beside each that cannot be.</summary>
public sealed class BottleForm(UnitSystem units)
{
    /// <summary>Whether it is fixer rather than developer.</summary>
    public BottleContents Contents { get; set; }

    /// <summary>Which fixer, as the journal says it (<see cref="FixerDefinition.Kind"/>).</summary>
    public string FixerKind { get; set; } = "ammoniumPaper";

    /// <summary>The name; a usual one where empty.</summary>
    public string Name { get; set; } = "";

    /// <summary>Working solution, ml.</summary>
    public string Volume { get; set; } = "500";

    /// <summary>What covers a sheet in the tank, ml.</summary>
    public string Covering { get; set; } = "150";

    /// <summary>Parts of water to one of concentrate.</summary>
    public string Water { get; set; } = "9";

    /// <summary>Temperature in the user's scale.</summary>
    public string Temperature { get; set; } = units == UnitSystem.Imperial ? "68" : "20";

    /// <summary>Development time of the fresh bottle at 20 °C, s.</summary>
    public string AtTwenty { get; set; } = "75";

    /// <summary>What is wrong, by field.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    /// <summary>What to write down; null where something is wrong, and then <see cref="Messages"/> says what.</summary>
    public BottleMixed? Read(Ulid bottle)
    {
        Messages.Clear();
        var isDeveloper = Contents == BottleContents.Developer;
        var volume = Number(nameof(Volume), Volume, 10, 100_000, "what is in the bottle", "ml");
        var covering = Number(nameof(Covering), Covering, 1, 100_000, "what covers a sheet", "ml");
        var water = Number(nameof(Water), Water, 0, 1000, "the parts of water", "");
        var celsius = WarmthText.Read(Temperature, units, Messages, nameof(Temperature));
        var twenty = isDeveloper ? Number(nameof(AtTwenty), AtTwenty, 10, 600, "the time at 20 °C", "s") : 0;
        if (!Messages.ContainsKey(nameof(Volume)) && !Messages.ContainsKey(nameof(Covering)) && volume < covering)
        {
            Messages[nameof(Volume)] = Words.Bottles.TooLittle(volume, covering);
        }

        if (Messages.Count > 0)
        {
            return null;
        }

        return new BottleMixed
        {
            Bottle = bottle,
            Contents = Contents,
            Name = Name.Trim().Length > 0 ? Name.Trim() : Words.Bottles.UsualName(Contents),
            VolumeMillilitres = volume,
            CoveringMillilitres = covering,
            WaterParts = water,
            TemperatureCelsius = celsius,
            Developer = isDeveloper ? new DeveloperDefinition { TimeSeconds = twenty, MinimumSeconds = Math.Min(70, twenty) } : null,
            Fixer = isDeveloper ? null : new FixerDefinition { Kind = FixerKind },
        };
    }

    private double Number(string field, string text, double min, double max, string what, string unit)
        => Messages.Try(field, () => NumberText.Read(text, min, max, what, unit));
}
