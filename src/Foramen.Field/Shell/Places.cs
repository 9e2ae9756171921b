namespace Foramen.Field.Shell;

/// <summary>Which place an address belongs to.</summary>
public static class Places
{
    /// <summary>The place of an address below the app's base.</summary>
    public static Place Of(string relative) => relative.Split('?', '#')[0].Split('/')[0] switch
    {
        "" or "outing" => Place.Outing,
        "sheet" => Place.Sheet,
        "bench" => Place.Bench,
        "ledger" => Place.Ledger,
        "settings" or "workshop" => Place.Settings,
        _ => Place.Nowhere,
    };
}
