using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// A function of wavelength on the 10 nm grid from 300 to 830 nm: a light's power, an eye's or a paper's sensitivity.
/// Values are relative; only ratios of integrals over two spectra mean anything. Immutable.
/// </summary>
public sealed class Spectrum
{
    /// <summary>First wavelength of the grid, nm.</summary>
    public const int FirstNanometres = 300;

    /// <summary>Last wavelength of the grid, nm.</summary>
    public const int LastNanometres = 830;

    /// <summary>Step of the grid, nm.</summary>
    public const int StepNanometres = 10;

    /// <summary>Number of samples.</summary>
    public const int Count = ((LastNanometres - FirstNanometres) / StepNanometres) + 1;

    private readonly double[] values;

    private Spectrum(string name, double[] values)
    {
        Name = name;
        this.values = values;
    }

    /// <summary>What the spectrum is of, in plain words.</summary>
    public string Name { get; }

    /// <summary>The samples, one for each 10 nm from 300 nm.</summary>
    public ReadOnlySpan<double> Values => values;

    /// <summary>A spectrum sampled from a function of the wavelength in nanometres.</summary>
    /// <exception cref="RefusalException">A sample is negative or not finite.</exception>
    public static Spectrum FromFunction(string name, Func<double, double> atNanometres)
    {
        var samples = new double[Count];
        for (var i = 0; i < Count; i++)
        {
            samples[i] = Guard.Within(atNanometres(Wavelength(i)), 0, 1e12, $"the spectrum \"{name}\" at {Wavelength(i)} nm");
        }

        return new Spectrum(name, samples);
    }

    /// <summary>The wavelength of sample <paramref name="index"/>, nm.</summary>
    public static int Wavelength(int index) => FirstNanometres + (index * StepNanometres);

    /// <summary>The product of two spectra at each wavelength: a light seen through a sensitivity.</summary>
    public static Spectrum Multiply(Spectrum left, Spectrum right)
        => new($"{left.Name} × {right.Name}", [.. left.values.Zip(right.values, (a, b) => a * b)]);

    /// <summary>The integral over the grid, in units of value times nm (rectangle rule on the 10 nm grid, as CIE 15 sums).</summary>
    public double Integral() => values.Sum() * StepNanometres;
}
