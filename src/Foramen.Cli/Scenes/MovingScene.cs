using Foramen.Cli.Kit;
using Foramen.Cli.Output;
using Foramen.Engine.Exposure;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Cli.Scenes;

/// <summary>What moves before the camera, out of a file.</summary>
internal static class MovingScene
{
    /// <summary>The image with the motion, and what is left to be seen of it.</summary>
    /// <param name="path">The file; null for a scene in which nothing moves.</param>
    /// <param name="still">The light if nothing moved.</param>
    /// <param name="setup">Camera, paper and light.</param>
    /// <param name="exposure">Times by the clock.</param>
    /// <param name="spot">Diameter of the hole's spot.</param>
    /// <exception cref="RefusalException">A file, or a region in it, that cannot be used.</exception>
    public static (SheetImage Image, IReadOnlyList<MovingReport> Regions) Of(
        string? path, SheetImage still, SceneSetup setup, SheetExposure exposure, Length spot)
    {
        if (path is null)
        {
            return (still, []);
        }

        try
        {
            var moving = KitFile.Moving(path).Moving;
            var motion = MotionOnSheet.Of(still, [.. moving.Select(one => one.ToRegion())], spot);
            var courses = moving.Select(one => one.Expected(exposure.Time)).ToList();
            var traces = motion.Traces(courses, setup.Response, exposure, setup.Flash);
            return (motion.Expose(courses, setup.Response, exposure.Time), [.. traces.Select((trace, i) => MovingReport.Of(moving[i].Name, trace))]);
        }
        catch (RefusalException refusal) when (!refusal.Message.Contains(path, StringComparison.Ordinal))
        {
            throw new RefusalException($"{path}: {refusal.Message}", refusal);
        }
    }
}
