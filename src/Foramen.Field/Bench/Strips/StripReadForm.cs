using Foramen.Field.Components;
using Foramen.Field.Units;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Bench.Strips;

/// <summary>A strip as it is read: densities typed, or readings by eye, or both; empty is not read.</summary>
public sealed class StripReadForm(int patches)
{
    /// <summary>How densities were read.</summary>
    public StripReader By { get; set; } = StripReader.Eye;

    /// <summary>Density of each patch, least exposed first.</summary>
    public IList<string> Densities { get; } = [.. Enumerable.Repeat("", patches)];

    /// <summary>Density of the masked patch.</summary>
    public string Masked { get; set; } = "";

    /// <summary>The first patch that differs from unexposed paper.</summary>
    public string FirstTone { get; set; } = "";

    /// <summary>The last patch that can be told from the next.</summary>
    public string LastTone { get; set; } = "";

    /// <summary>The patch that matches the grey.</summary>
    public string MatchStep { get; set; } = "";

    /// <summary>The grey's density.</summary>
    public string MatchDensity { get; set; } = "0.75";

    /// <summary>What is wrong, by field; a patch's field is its number.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    /// <summary>Whether nothing was typed at all.</summary>
    public bool IsEmpty => Densities.All(string.IsNullOrWhiteSpace) && FirstTone.Trim().Length + LastTone.Trim().Length + MatchStep.Trim().Length == 0;

    /// <summary>Fills the form from an earlier reading.</summary>
    public void Fill(StripRead read)
    {
        By = read.By;
        for (var i = 0; i < Math.Min(patches, read.Densities?.Count ?? 0); i++)
        {
            Densities[i] = Show(read.Densities![i]);
        }

        Masked = Show(read.MaskedDensity);
        FirstTone = Show(read.FirstTone);
        LastTone = Show(read.LastTone);
        MatchStep = Show(read.Match?.Step);
        MatchDensity = read.Match is { } match ? Show(match.Density) : MatchDensity;
    }

    /// <summary>What to write down; null where something is wrong, and then <see cref="Messages"/> says what.</summary>
    public StripRead? Read(Journal.Ulid strip)
    {
        Messages.Clear();
        var densities = Densities.Select((text, i) => Optional(PatchField(i), text, 0, 4, $"the density of patch {i + 1}")).ToList();
        var masked = Optional(nameof(Masked), Masked, 0, 4, "the density of the masked patch");
        var first = Optional(nameof(FirstTone), FirstTone, 1, patches + 1, "the patch of the first tone");
        var last = Optional(nameof(LastTone), LastTone, 1, patches, "the patch of the last tone");
        var step = Optional(nameof(MatchStep), MatchStep, 1, patches, "the patch that matched");
        var grey = step is null ? null : Optional(nameof(MatchDensity), MatchDensity, 0, 4, "the density of the grey");
        return Messages.Count > 0
            ? null
            : new StripRead
            {
                Strip = strip,
                By = By,
                Densities = densities.Exists(density => density is not null) ? densities : null,
                MaskedDensity = masked,
                FirstTone = (int?)first,
                LastTone = (int?)last,
                Match = step is { } at && grey is { } density ? new StripMatch { Step = (int)at, Density = density } : null,
            };
    }

    /// <summary>The name under which a patch's message stands.</summary>
    public static string PatchField(int index) => $"patch {index + 1}";

    private static string Show(double? value) => value is { } number ? NumberText.Show(number) : "";

    private double? Optional(string field, string text, double min, double max, string what)
        => string.IsNullOrWhiteSpace(text) ? null : Messages.Try(field, () => NumberText.Read(text, min, max, what));
}
