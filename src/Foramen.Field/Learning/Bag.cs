namespace Foramen.Field.Learning;

/// <summary>What is left today, as the user says it after a judged sheet; remembered while the app is open.</summary>
public sealed class Bag
{
    /// <summary>Sheets left; null until said.</summary>
    public int? SheetsLeft { get; set; }

    /// <summary>Other subjects still wanted today.</summary>
    public int SubjectsLeft { get; set; }

    /// <summary>A sheet was taken out.</summary>
    public void TakeOne() => SheetsLeft = SheetsLeft is > 0 and { } left ? left - 1 : SheetsLeft;
}
