namespace Foramen.Engine.Camera;

/// <summary>Where the sun stands, in a word.</summary>
public enum SunStandingKind
{
    /// <summary>Below the horizon.</summary>
    Down,

    /// <summary>In the picture or at its edge.</summary>
    InPicture,

    /// <summary>On the facade.</summary>
    OnFacade,

    /// <summary>On the facade, raking over it.</summary>
    Grazing,

    /// <summary>Behind the facade, which lies in its own shade.</summary>
    BehindFacade,

    /// <summary>Something hides it from the facade.</summary>
    Shaded,
}
