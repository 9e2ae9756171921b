namespace Foramen.Engine.Print;

/// <summary>Contrast of a print's detail over that predicted, at one fineness.</summary>
/// <param name="CyclesPerMillimetre">Fineness, cycles per mm on the sheet.</param>
/// <param name="Ratio">Contrast over contrast predicted; one at the coarsest.</param>
/// <param name="Coherence">How much of the print's detail there is explained by the prediction, 0 to 1.</param>
public readonly record struct SharpnessPoint(double CyclesPerMillimetre, double Ratio, double Coherence);
