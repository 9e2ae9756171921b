using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene.Motion;

/// <summary>What moves at the invented canal basin.</summary>
internal static class MotionExamples
{
    /// <summary>The organ's crank wheel: one turn in 20 s, 0.3 m to the rim, 6 m away, six pale spokes that fill a quarter of the circle.</summary>
    public static Turning Crank { get; } = new()
    {
        TurnTime = Duration.FromSeconds(20), Radius = Length.FromMetres(0.3), Distance = Length.FromMetres(6), Spokes = 6, Fill = 0.25, LuminanceRatio = 3,
    };
}
