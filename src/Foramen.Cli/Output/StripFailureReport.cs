namespace Foramen.Cli.Output;

/// <summary>What strips say of failure.</summary>
/// <param name="Assumed">Whether it still is an assumption.</param>
/// <param name="Law">The law, in words.</param>
/// <param name="Exponent">Schwarzschild's p where the strips say.</param>
/// <param name="SdPerDoubling">Standard deviation of the exponent.</param>
internal sealed record StripFailureReport(bool Assumed, string Law, double? Exponent, double SdPerDoubling);
