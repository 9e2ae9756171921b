using System.Diagnostics;
using System.Globalization;
using System.Text;
using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Benchmarks;

/// <summary>A year of minutes of the Sun against the npm package astronomy-engine in the same run, and a year's windows of one place.</summary>
internal static class SunYear
{
    private const int Minutes = 525_600;

    private const int Rounds = 7;

    private static readonly DateTimeOffset Start = new(2023, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private static readonly GeographicPosition Place = GeographicPosition.FromDegrees(52.5, 5.25, -2);

    public static string Measure(string repository)
    {
        var positions = new SkyPosition[Minutes];
        var ours = Median(() => SunTrack.Over(Start, Start.AddDays(366)).Fill(Start, TimeSpan.FromMinutes(1), Place, positions));
        var (theirs, worst, compared) = Peer(repository, positions);
        var oursAgain = Median(() => SunTrack.Over(Start, Start.AddDays(366)).Fill(Start, TimeSpan.FromMinutes(1), Place, positions));
        var mean = (ours + oursAgain) / 2;
        var windows = 0;
        var year = Median(() => windows = Windows());
        var text = new StringBuilder();
        text.AppendLine("# Sun: measured");
        text.AppendLine();
        text.AppendLine(CultureInfo.InvariantCulture, $"{DateTime.UtcNow:yyyy-MM-dd}, {Environment.ProcessorCount} logical processors, .NET {Environment.Version}, `bench/run sun`; ours before and after the peer, medians of {Rounds} rounds, the peer's of 3; only the ratio means anything elsewhere.");
        text.AppendLine();
        text.AppendLine("| what | ours | against | ratio | should be |");
        text.AppendLine("| --- | --- | --- | --- | --- |");
        text.AppendLine(CultureInfo.InvariantCulture, $"| {Minutes} positions of the Sun, a year of minutes, against npm `astronomy-engine` 2.1.19 | {mean * 1000:0} ms (with refraction) | {theirs * 1000:0} ms (without) | {mean / theirs:0.000} | 0.1 at most |");
        text.AppendLine(CultureInfo.InvariantCulture, $"| largest distance between the two, {compared} positions, without refraction | {worst:0.0000}° | | | 0.01° at most |");
        text.AppendLine(CultureInfo.InvariantCulture, $"| a year's {windows} windows of one place (sun on the facade, not in the picture, one obstacle, exposure under four minutes) | {year * 1000:0.0} ms | | | |");
        var marks = new MarkRows(MarkRows.Machine, MarkRows.Load);
        marks.Add("sun.year", $"{Minutes} positions, with refraction against without", $"{mean * 1000:0} ms", $"{theirs * 1000:0} ms", $"{mean / theirs:0.000}");
        marks.Add("sun.distance", $"{compared} positions, without refraction", $"", $"", $"{worst:0.0000} °");
        return text.Append(marks).ToString();
    }

    private static int Windows()
    {
        var camera = PinholeCamera.Create(
            "box", Hole.FromDiameter(Length.FromMillimetres(0.35)), Length.FromMillimetres(63), SheetSize.FromMillimetres(127, 102));
        var paper = PhotographicPaper.FromSpeed(
            "paper", PaperKind.DirectPositive, Density.FromValue(0.08), Density.FromValue(1.98), 86,
            ExposureIndex.Found(3, Duration.FromSeconds(120), LightColour.Noon, MeterConstants.Usual), PaperSensitivity.BlueSensitive, SchwarzschildFailure.Assumed);
        var place = new OutingPlace
        {
            Name = "grain elevator",
            Position = Place,
            Facade = Facade.Facing(Angle.FromDegrees(150)),
            Aim = FrameAim.Towards(camera, Angle.FromDegrees(320)),
            ShadeOnFacade = [Obstacle.Of("crane", Angle.FromDegrees(120), Length.FromMetres(40), Length.FromMetres(6), Length.FromMetres(22))],
        };
        var exposure = new FacadeExposure(camera, PaperResponse.Of(paper, LightColour.Noon), Rendering.Mid);
        return WindowFinder.Find(place, new WindowWish { LongestExposure = Duration.FromMinutes(4) }, exposure, Start, Start.AddDays(365)).Count;
    }

    private static double Median(Action work)
    {
        work();
        work();
        var times = new double[Rounds];
        for (var i = 0; i < Rounds; i++)
        {
            var begun = Stopwatch.GetTimestamp();
            work();
            times[i] = Stopwatch.GetElapsedTime(begun).TotalSeconds;
        }

        Array.Sort(times);
        return times[Rounds / 2];
    }

    private static (double Seconds, double WorstDegrees, int Compared) Peer(string repository, SkyPosition[] ours)
    {
        var start = new ProcessStartInfo("node") { RedirectStandardOutput = true, WorkingDirectory = Path.Combine(repository, "tools", "sky-oracle") };
        foreach (var argument in new[] { "year.mjs", "52.5", "5.25", "-2", Start.ToUnixTimeMilliseconds().ToString(CultureInfo.InvariantCulture), Minutes.ToString(CultureInfo.InvariantCulture) })
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start) ?? throw new InvalidOperationException("node did not start.");
        var seconds = double.Parse(process.StandardOutput.ReadLine() ?? throw new InvalidOperationException("The peer said nothing; run npm ci in tools/sky-oracle."), CultureInfo.InvariantCulture);
        var (worst, compared) = (0.0, 0);
        while (process.StandardOutput.ReadLine() is { } line)
        {
            var cells = line.Split(' ');
            var here = ours[int.Parse(cells[0], CultureInfo.InvariantCulture)];
            var (azimuth, elevation) = (double.Parse(cells[1], CultureInfo.InvariantCulture), double.Parse(cells[2], CultureInfo.InvariantCulture));
            var aside = Math.IEEERemainder(here.Azimuth.Degrees - azimuth, 360) * Math.Cos(elevation * (Math.PI / 180));
            worst = Math.Max(worst, double.Hypot(aside, here.TrueElevation.Degrees - elevation));
            compared++;
        }

        process.WaitForExit();
        return process.ExitCode == 0 && compared > 500 ? (seconds, worst, compared) : throw new InvalidOperationException("The peer did not finish.");
    }
}
