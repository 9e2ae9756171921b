namespace Foramen.Engine.Learning;

/// <summary>What first tones can tell of a developer.</summary>
public enum DeveloperParameter
{
    /// <summary>Development time over the time of first appearance.</summary>
    AppearanceFactor,

    /// <summary>Area per litre that would bring it to nothing, m²/l.</summary>
    Capacity,

    /// <summary>Part of the strength lost per hour in the open at 20 °C; the loss in a closed bottle goes with it.</summary>
    OpenLoss,

    /// <summary>How many times faster it works 10 °C warmer.</summary>
    Q10,
}
