namespace Foramen.Engine.Exposure;

/// <summary>What is done in a part of the day.</summary>
public enum OutingStepKind
{
    /// <summary>Walking to the place.</summary>
    Walk,

    /// <summary>Setting up there.</summary>
    SetUp,

    /// <summary>Waiting for the light.</summary>
    Wait,

    /// <summary>Loading and flashing a sheet.</summary>
    Flash,

    /// <summary>The hole is open.</summary>
    Expose,

    /// <summary>Developing, fixing, washing.</summary>
    Process,
}
