namespace Foramen.Engine.Learning;

/// <summary>What a belief is about. Each acts on the exposure of a tone, in stops; more means that the sheet comes out lighter.</summary>
public enum BeliefKind
{
    /// <summary>Speed of one box of paper against its label.</summary>
    Speed,

    /// <summary>Failure exponent of one box against its label: stops for each doubling of the time from the one the speed was found at.</summary>
    Failure,

    /// <summary>How much lighter open shadows come out on one box than its curve says: contrast at the dark end.</summary>
    ShadowEnd,

    /// <summary>How much lighter textured highlights come out on one box than its curve says: contrast at the light end.</summary>
    HighlightEnd,

    /// <summary>What one camera passes against its description: the hole's true area.</summary>
    Camera,

    /// <summary>The user's meter, and their way with it.</summary>
    Meter,

    /// <summary>What one kind of sky does beyond its reading: colour, and how the light tends to go on.</summary>
    Light,

    /// <summary>What each ten sheets in the bottle do to the next: negative where a tired developer costs speed.</summary>
    Ageing,

    /// <summary>What a flash does against what was planned for it.</summary>
    Flash,
}
