using CsCheck;
using Foramen.Journal.Entries;
using Foramen.Journal.Sync;
using Foramen.Journal.Tests.TestKit;

namespace Foramen.Journal.Tests.Sync;

/// <summary>
/// Five devices and Home by any schedule of writing, meeting, cut connections, killed apps, files handed over and stores put back to an earlier day, with
/// clocks days apart. What they must come to is no protocol at all: the union of all that was written.
/// </summary>
public class SyncScheduleTests
{
    private const int DeviceCount = 5;

    private static readonly TimeSpan[] Skews = [TimeSpan.Zero, TimeSpan.FromDays(3), TimeSpan.FromDays(-9), TimeSpan.FromHours(5), TimeSpan.FromDays(200)];

    private static readonly Gen<Step> GenStep = Gen.Select(
        Gen.Int[0, 19], Gen.Int[0, DeviceCount - 1], Gen.Int[0, DeviceCount - 1], Gen.Int[0, 6], Gen.Int[0, 2], Gen.Int[0, 999],
        (what, device, other, at, how, where) => new Step(what, device, other, at, how, where));

    [Fact]
    [Trait("Promise", "J10")]
    public void Ten_thousand_schedules_of_five_devices_end_with_the_same_journal_everywhere()
    {
        var (cut, died, goneBack, doubled) = (0, 0, 0, 0);
        GenStep.Array[0, 60].Sample(
            steps =>
            {
                var run = Play(steps);
                Interlocked.Add(ref cut, Math.Min(1, run.Cut));
                Interlocked.Add(ref died, Math.Min(1, run.Died));
                Interlocked.Add(ref goneBack, Math.Min(1, run.GoneBack));
                Interlocked.Add(ref doubled, Math.Min(1, run.Files));
            },
            iter: Samples.Of(10_000));
        // A run set without the hard cases would prove nothing.
        Assert.All([cut, died, goneBack, doubled], count => Assert.True(count > Samples.Of(1_000), $"{cut} {died} {goneBack} {doubled}"));
    }

    private static Run Play(Step[] steps)
    {
        var home = new ModelHome(page: 4);
        var devices = Enumerable.Range(0, DeviceCount).Select(_ => new ModelDevice()).ToArray();
        var names = Enumerable.Range(0, DeviceCount).Select(i => DeviceId.Parse($"device-{i}")).ToArray();
        var written = new List<Entry>();
        var sequences = new int[DeviceCount];
        var run = new Run();
        foreach (var step in steps)
        {
            var device = devices[step.Device];
            switch (step.What)
            {
                case < 9:
                    var at = Make.Noon.AddSeconds(written.Count) + Skews[step.Device];
                    var entry = Entry.CreateRaw(
                        Make.Id(written.Count + 1), names[step.Device], ++sequences[step.Device], at, step.How == 0 ? "moon.watched" : "sheet.withdrawn", 1, $$"""{"n":{{step.Where}}}""");
                    written.Add(entry);
                    device.Write(entry);
                    break;
                case < 16:
                    run.Cut += Meet(device, new BadLink(home, step.At, step.How, step.Where)) ? 0 : 1;
                    break;
                case < 18:
                    device.DiesAfter = step.At;
                    run.Died += Meet(device, new BadLink(home, 0, 0, 0)) ? 0 : 1;
                    device.DiesAfter = -1;
                    break;
                case 18:
                    run.Files++;
                    device.Import(devices[step.Other]);
                    break;
                default:
                    run.GoneBack++;
                    home.GoBack(step.At, byCopying: step.How == 0);
                    break;
            }
        }

        // The faults are over: every device meets Home twice, for the second time after all the others.
        foreach (var device in devices.Concat(devices))
        {
            Assert.True(Meet(device, new BadLink(home, 0, 0, 0)));
        }

        var expected = Names(written);
        Assert.Equal(expected, Names(home.Entries));
        var order = EntrySet.Of(written).InOrder.Select(item => item.Entry.Hash).ToList();
        foreach (var device in devices)
        {
            Assert.Equal(expected, Names(device.Entries));
            Assert.Equal(order, EntrySet.Of(device.Entries).InOrder.Select(item => item.Entry.Hash));
        }

        return run;
    }

    private static bool Meet(ModelDevice device, BadLink link)
    {
        try
        {
            SyncRound.RunAsync(device, link, batchEntries: 3).GetAwaiter().GetResult();
            return true;
        }
        catch (Exception e) when (e is HomeRefusedException or DeviceDiedException)
        {
            return false;
        }
    }

    private static string[] Names(IEnumerable<Entry> entries) => [.. entries.Select(entry => entry.Hash).Order(StringComparer.Ordinal)];

    private sealed record Step(int What, int Device, int Other, int At, int How, int Where);

    private sealed record Run
    {
        public int Cut { get; set; }

        public int Died { get; set; }

        public int GoneBack { get; set; }

        public int Files { get; set; }
    }
}
