using Foramen.Engine.Quantities;
using Foramen.Rehearsal.Lines;
using Foramen.Rehearsal.Outside;
using Foramen.Rehearsal.Photographers;
using Foramen.Rehearsal.Worlds;

namespace Foramen.Rehearsal.Runs;

/// <summary>Plays outings.</summary>
public static class RehearsalRun
{
    // The streams up to here are the worlds'.
    private const int OfInsider = 9;

    /// <summary>Plays one photographer in many worlds of the repository, on all processors. The result depends on the seed alone.</summary>
    /// <param name="policy">Who decides.</param>
    /// <param name="family">Which worlds.</param>
    /// <param name="seed">Where they come from.</param>
    /// <param name="worlds">How many.</param>
    /// <param name="sheets">Sheets in each.</param>
    /// <param name="progress">From 0 to 1.</param>
    /// <param name="cancellation">Stops it between two worlds.</param>
    public static IReadOnlyList<RehearsedSheet> Play(
        Policy policy, WorldFamily family, long seed, int worlds, int sheets, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        var results = new RehearsedSheet[worlds][];
        var done = 0;
        Parallel.For(0, worlds, new ParallelOptions { CancellationToken = cancellation }, index =>
        {
            var world = WorldMaker.Make(seed, index + 1, family);
            var photographer = PhotographerOf(policy, world, family, WorldMaker.SeedOf(seed, index + 1));
            results[index] = [.. Play(world, photographer, sheets)];
            progress?.Report(Interlocked.Increment(ref done) / (double)worlds);
        });
        return [.. results.SelectMany(each => each)];
    }

    /// <summary>Plays worlds one after the other where photographer or world, or both, are outside.</summary>
    /// <param name="channel">The lines to and from outside.</param>
    /// <param name="policy">Who decides; null for a photographer outside.</param>
    /// <param name="family">Which worlds; null for a world outside.</param>
    /// <param name="seed">Where worlds come from.</param>
    /// <param name="worlds">How many.</param>
    /// <param name="sheets">Sheets in each.</param>
    /// <param name="progress">From 0 to 1.</param>
    /// <param name="cancellation">Stops it between two sheets.</param>
    /// <exception cref="RefusalException">The program outside says something that cannot be used, or the policy is the insider's and the world is outside.</exception>
    public static IReadOnlyList<RehearsedSheet> PlayOutside(
        LineChannel channel, Policy? policy, WorldFamily? family, long seed, int worlds, int sheets, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        if (policy == Policy.Insider && family is null)
        {
            throw new RefusalException("Nobody here knows how worlds outside are made, so the policy insider cannot be played in one; rule-of-thumb, foramen and oracle can.");
        }

        var results = new List<RehearsedSheet>();
        for (var number = 1; number <= worlds; number++)
        {
            channel.Say(new BeginLine(number, WorldMaker.SeedOf(seed, number), sheets));
            var world = family is { } known ? WorldMaker.Make(seed, number, known) : new OutsideWorld(channel);
            var photographer = policy is { } decided ? PhotographerOf(decided, world, family, WorldMaker.SeedOf(seed, number)) : new OutsidePhotographer(channel);
            foreach (var sheet in Play(world, photographer, sheets))
            {
                cancellation.ThrowIfCancellationRequested();
                results.Add(sheet);
            }

            progress?.Report(number / (double)worlds);
        }

        channel.Say(new EndLine());
        return results;
    }

    /// <summary>Plays one photographer in one world.</summary>
    public static IEnumerable<RehearsedSheet> Play(IWorld world, IPhotographer photographer, int sheets)
    {
        for (var sheet = 1; sheet <= sheets; sheet++)
        {
            var seen = world.Next();
            var done = photographer.Decide(seen);
            var judged = world.Expose(done);
            photographer.Learn(seen with { Oracle = null }, done, judged);
            yield return new RehearsedSheet(sheet, judged.Keeper, done.Odds);
        }
    }

    private static IPhotographer PhotographerOf(Policy policy, IWorld world, WorldFamily? family, long seed) => policy switch
    {
        Policy.RuleOfThumb => new RuleOfThumb(),
        Policy.Foramen => new ForamenPhotographer(),
        Policy.Oracle => new Oracle(world),
        Policy.Insider => new Insider(
            family ?? throw new ArgumentNullException(nameof(family)),
            new Chance(seed, OfInsider)),
        _ => throw new ArgumentOutOfRangeException(nameof(policy)),
    };
}
