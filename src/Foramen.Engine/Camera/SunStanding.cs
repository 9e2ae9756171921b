using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>Where the sun stands against frame and facade.</summary>
/// <param name="Position">In the sky.</param>
/// <param name="OffAxis">From the hole's axis.</param>
/// <param name="RakingAngle">Between its light and the facade's surface; negative from behind.</param>
/// <param name="IsUp">Whether it is above the horizon.</param>
/// <param name="InPicture">Whether it is in the picture or within a degree of it.</param>
/// <param name="OnFacade">Whether it shines on the facade.</param>
/// <param name="OnHole">Whether it shines on the hole: flare, unless something shades it.</param>
public readonly record struct SunStanding(
    SkyPosition Position, Angle OffAxis, Angle RakingAngle, bool IsUp, bool InPicture, bool OnFacade, bool OnHole)
{
    /// <summary>Below this angle to the surface light rakes and shows every unevenness (common practice, no source).</summary>
    public const double GrazingDegrees = 20;

    /// <summary>Whether its light grazes the facade.</summary>
    public bool IsGrazing => OnFacade && RakingAngle.Degrees < GrazingDegrees;

    /// <summary>In words, the weightiest first.</summary>
    public SunStandingKind Kind => !IsUp ? SunStandingKind.Down
        : InPicture ? SunStandingKind.InPicture
        : OnFacade ? (IsGrazing ? SunStandingKind.Grazing : SunStandingKind.OnFacade)
        : RakingAngle.Degrees <= 0 ? SunStandingKind.BehindFacade
        : SunStandingKind.Shaded;
}
