namespace Foramen.Rehearsal.Worlds;

/// <summary>A kind of sky.</summary>
/// <param name="Name">As the photographer calls it.</param>
/// <param name="MidStops">lg2 of a usual mid-tone's luminance, cd/m².</param>
/// <param name="Actinic">What a blue-sensitive paper makes of it against noon, stops.</param>
/// <param name="Restless">How much the light wanders, stops.</param>
internal sealed record SkyTruth(string Name, double MidStops, double Actinic, double Restless)
{
    /// <summary>The skies of the rehearsal. Actinic stops after box sensitivities from 380 to 500 nm; luminances are rough.</summary>
    public static IReadOnlyList<SkyTruth> All { get; } =
    [
        new("noon", 11.6, 0, 0.08),
        new("broken cloud", 11.0, 0.1, 0.45),
        new("overcast", 9.6, 0.28, 0.15),
        new("open shade", 8.8, 0.78, 0.10),
        new("low sun", 9.8, -1.07, 0.15),
    ];
}
