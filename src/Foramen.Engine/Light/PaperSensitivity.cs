using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// What wavelengths a paper answers to. Makers seldom publish it, so the two kinds here are boxes: an even answer to equal energy between
/// two wavelengths and none outside. Treat what follows from them as good to about a quarter.
/// </summary>
/// <param name="Name">As a user would say it.</param>
/// <param name="Sensitivity">Relative response to equal energy.</param>
/// <param name="Assumption">What was assumed, in one sentence for the user.</param>
public sealed record PaperSensitivity(string Name, Spectrum Sensitivity, string Assumption)
{
    /// <summary>Graded paper and direct-positive paper: 380 to 500 nm. An assumption.</summary>
    public static PaperSensitivity BlueSensitive { get; } = FromBox("blue-sensitive", 380, 500);

    /// <summary>Variable-contrast paper, which sees green too: 380 to 560 nm. An assumption.</summary>
    public static PaperSensitivity VariableContrast { get; } = FromBox("variable-contrast", 380, 560);

    /// <summary>An even answer between two wavelengths. A sample stands for the 10 nm around it, so one on the border counts half.</summary>
    /// <param name="name">As a user would say it.</param>
    /// <param name="fromNanometres">300 to 820 nm.</param>
    /// <param name="toNanometres">At least 10 nm more, up to 830 nm.</param>
    /// <exception cref="RefusalException">The limits are out of range or the wrong way round.</exception>
    public static PaperSensitivity FromBox(string name, double fromNanometres, double toNanometres)
    {
        Guard.Within(fromNanometres, Spectrum.FirstNanometres, Spectrum.LastNanometres - Spectrum.StepNanometres, "the paper's shortest wavelength", "nm");
        Guard.Within(toNanometres, fromNanometres + Spectrum.StepNanometres, Spectrum.LastNanometres, "the paper's longest wavelength", "nm");
        return new PaperSensitivity(
            name,
            Spectrum.FromFunction($"{name} paper", nanometres => Overlap(nanometres, fromNanometres, toNanometres)),
            FormattableString.Invariant($"An even response from {fromNanometres:0} to {toNanometres:0} nm is assumed; a real paper may differ by a quarter."));
    }

    private static double Overlap(double nanometres, double from, double to)
    {
        const double Half = Spectrum.StepNanometres / 2.0;
        return Math.Max(0, Math.Min(nanometres + Half, to) - Math.Max(nanometres - Half, from)) / Spectrum.StepNanometres;
    }
}
