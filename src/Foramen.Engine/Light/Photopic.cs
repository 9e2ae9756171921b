namespace Foramen.Engine.Light;

/// <summary>The eye by day, and every light meter: V(λ) of CIE 1924.</summary>
public static class Photopic
{
    private static readonly Lazy<Spectrum> Lazy = new(() =>
    {
        var table = SpectralTable.Read("cie_photopic_efficiency.csv");
        return Spectrum.FromFunction("photopic efficiency", nanometres => table.At((int)nanometres, 0));
    });

    /// <summary>V(λ), largest near 555 nm; zero below 360 nm.</summary>
    public static Spectrum Efficiency => Lazy.Value;
}
