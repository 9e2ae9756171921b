namespace Foramen.Engine.Light;

/// <summary>A chromaticity in the CIE 1931 diagram.</summary>
/// <param name="X">x, 0 to 1.</param>
/// <param name="Y">y, 0 to 1.</param>
public readonly record struct Chromaticity(double X, double Y);
