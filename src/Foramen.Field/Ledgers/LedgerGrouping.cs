namespace Foramen.Field.Ledgers;

/// <summary>What stands together in the ledger.</summary>
public enum LedgerGrouping
{
    /// <summary>Nothing; newest first.</summary>
    None,

    /// <summary>Sheets of one box of paper.</summary>
    Paper,

    /// <summary>Sheets of one place, or of one outing where no place is known.</summary>
    Place,

    /// <summary>Sheets in one kind of light.</summary>
    Light,
}
