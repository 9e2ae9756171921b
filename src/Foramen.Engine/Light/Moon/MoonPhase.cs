using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>How much of the Moon is lit.</summary>
/// <param name="LitFraction">Lit part of the disc, 0 (new) to 1 (full).</param>
/// <param name="PhaseAngle">Sun, Moon, Earth: 180° at new, 0° at full.</param>
/// <param name="Elongation">How far the Moon is ahead of the Sun in ecliptic longitude: 0° new, 90° first quarter, 180° full, 270° last quarter.</param>
public readonly record struct MoonPhase(double LitFraction, Angle PhaseAngle, Angle Elongation)
{
    /// <summary>Whether the lit part grows.</summary>
    public bool Waxing => Elongation.Degrees < 180;
}
