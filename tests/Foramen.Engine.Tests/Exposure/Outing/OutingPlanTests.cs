using CsCheck;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Exposure;

public class OutingPlanTests
{
    private static readonly DateTimeOffset Morning = new(2024, 6, 20, 7, 0, 0, TimeSpan.FromHours(2));

    private static readonly Gen<OutingStop> GenStop = Gen.Select(
        Gen.Int[0, 1000],
        Gen.Select(Gen.Double[-0.02, 0.02], Gen.Double[-0.02, 0.02]),
        Gen.Select(Gen.Double[0, 12], Gen.Double[0.1, 3]).List[0, 3],
        Gen.Double[10, 1200],
        Gen.Int[1, 4]).Select((number, at, spans, exposure, wanted) => new OutingStop(
            $"place {number}", GeographicPosition.FromDegrees(52.3 + at.Item1, 5.1 + at.Item2), InOrder(spans), instant => Duration.FromSeconds(exposure + instant.Minute), wanted));

    private static readonly Gen<IReadOnlyList<OutingStop>> GenStops = GenStop.List[1, 4]
        .Select(stops => (IReadOnlyList<OutingStop>)[.. stops.DistinctBy(stop => stop.Name)]);

    [Fact]
    public void A_plan_can_be_followed() => Gen.Select(GenStops, Gen.Int[1, 8], Gen.Double[0, 1]).Sample(
        (stops, most, chance) =>
        {
            var plan = Plan(stops, most, CloudChance.Of(Probability.FromFraction(chance)));
            Assert.All(plan.Steps, step => Assert.True(step.End > step.Start && step.Start >= Morning && step.End <= Morning.AddHours(14)));
            Assert.All(plan.Steps.Zip(plan.Steps.Skip(1)), pair => Assert.Equal(pair.First.End, pair.Second.Start));
            Assert.InRange(plan.Sheets, 0, most);
            Assert.Equal(plan.Sheets * (1 - chance), plan.SheetsHopedFor, 1e-9);
            foreach (var group in plan.Steps.Where(step => step.Kind == OutingStepKind.Expose).GroupBy(step => step.Place))
            {
                var stop = stops.Single(one => one.Name == group.Key);
                Assert.InRange(group.Count(), 1, stop.SheetsWanted);
                Assert.All(group, step =>
                {
                    Assert.Equal(stop.ExposureAt(step.Start).Seconds, (step.End - step.Start).TotalSeconds, 1e-6);
                    Assert.Contains(stop.Windows, window => window.Start <= step.Start && window.End >= step.End);
                });
            }

            var visited = plan.Steps.Select(step => step.Place).Distinct().ToList();
            Assert.Equal(stops.Count, visited.Count + plan.LeftOut.Count);
        },
        iter: Samples.Of(300));

    // Each sheet is loaded, exposed and processed, in that order and no other's between.
    [Fact]
    public void Sheets_are_made_one_after_the_other() => GenStops.Sample(
        stops =>
        {
            var kinds = Plan(stops, 8).Steps.Where(step => step.Sheet > 0).ToList();
            Assert.Equal(0, kinds.Count % 3);
            for (var i = 0; i < kinds.Count; i++)
            {
                Assert.Equal((i / 3) + 1, kinds[i].Sheet);
                Assert.Equal(OutingStepKind.Flash + (i % 3), kinds[i].Kind);
            }
        },
        iter: Samples.Of(200));

    [Fact]
    public void The_order_in_which_places_are_given_does_not_matter() => GenStops.Sample(
        stops => Assert.Equal(Plan(stops, 6).SheetsHopedFor, Plan([.. stops.Reverse()], 6).SheetsHopedFor, 1e-9), iter: Samples.Of(200));

    [Fact]
    public void One_place_more_never_means_fewer_sheets() => Gen.Select(GenStops, GenStop).Sample(
        (stops, extra) => Assert.True(Plan([.. stops, extra with { Name = "one more" }], 8).SheetsHopedFor >= Plan(stops, 8).SheetsHopedFor - 1e-9), iter: Samples.Of(200));

    // The elevator has sun until noon, the bridge from noon on: whoever is listed first, the elevator comes first, and both are done.
    [Fact]
    public void Morning_light_comes_before_afternoon_light()
    {
        OutingStop Stop(string name, int from, int to) => new(
            name, GeographicPosition.FromDegrees(52.3, 5.1), [new LightWindow(Morning.AddHours(from), Morning.AddHours(to))], _ => Duration.FromMinutes(2), 2);
        var plan = Plan([Stop("lift bridge", 5, 9), Stop("elevator", 1, 4)], 10);
        Assert.Equal(["elevator", "lift bridge"], plan.Steps.Select(step => step.Place).Distinct());
        Assert.Equal(4, plan.Sheets);
    }

    // A forecast that clears at ten: a sheet at eleven is surer than one at nine.
    [Fact]
    public void A_forecast_is_asked_at_the_hour_of_each_sheet()
    {
        var cloud = CloudChance.Forecast([(Morning, Probability.FromFraction(0.9)), (Morning.AddHours(3), Probability.FromFraction(0.2))]);
        Assert.Equal(0.9, cloud.At(Morning.AddHours(-1)).Fraction);
        Assert.Equal(0.9, cloud.At(Morning.AddHours(2.9)).Fraction);
        Assert.Equal(0.2, cloud.At(Morning.AddHours(30)).Fraction);
        Assert.Throws<RefusalException>(() => CloudChance.Forecast([(Morning, default), (Morning, default)]));
    }

    // A hundredth of a degree on the equator is 1111.95 m, at 4 km an hour 1000.75 s. Ten minutes to set up: 07:26:40.75. Sun from eight, so the flash of two minutes
    // begins at 07:58; five minutes of exposure, ten of processing, and again.
    [Fact]
    public void A_day_at_one_place_is_told_step_by_step()
    {
        var plan = Day(Morning.AddHours(5), Morning.AddHours(5));
        (OutingStepKind, double, int)[] told =
        [
            (OutingStepKind.Walk, 1000.75, 0), (OutingStepKind.SetUp, 1600.75, 0), (OutingStepKind.Wait, 3480, 0),
            (OutingStepKind.Flash, 3600, 1), (OutingStepKind.Expose, 3900, 1), (OutingStepKind.Process, 4500, 1),
            (OutingStepKind.Flash, 4620, 2), (OutingStepKind.Expose, 4920, 2), (OutingStepKind.Process, 5520, 2),
        ];
        Assert.Equal(told, plan.Steps.Select(step => (step.Kind, Math.Round((step.End - Morning).TotalSeconds, 2), step.Sheet)));
        Assert.Equal(Morning, plan.Steps[0].Start);

        // It clears at 07:59, after the flash has begun and before the hole opens.
        Assert.All(plan.Steps.Where(step => step.Kind == OutingStepKind.Expose), step => Assert.Equal(0.8, step.SunOdds.Fraction, 1e-12));
        Assert.Equal(1.6, plan.SheetsHopedFor, 1e-12);
        Assert.Empty(plan.LeftOut);
    }

    // The second sheet is exposed until 08:22 and processed until 08:32: a second less of sun or of day leaves one.
    [Theory]
    [InlineData(4920, 5520, 2)]
    [InlineData(4919, 5520, 1)]
    [InlineData(4920, 5519, 1)]
    [InlineData(3899, 5520, 0)]
    public void A_sheet_fits_to_the_second_or_is_not_made(double sunUntil, double dayUntil, int sheets)
    {
        var plan = Day(Morning.AddSeconds(sunUntil), Morning.AddSeconds(dayUntil));
        Assert.Equal(sheets, plan.Sheets);
        Assert.Equal(sheets == 0 ? ["weir"] : [], plan.LeftOut);
        Assert.Equal(sheets == 0, plan.Steps.Count == 0);
    }

    // A place whose sheets lie under sure cloud is not worth the way.
    [Fact]
    public void Where_no_sun_can_be_hoped_for_nothing_is_planned()
        => Assert.Empty(Plan([Weir(Morning.AddHours(5))], 3, CloudChance.Of(Probability.FromFraction(1))).Steps);

    [Fact]
    public void Absurd_days_are_refused()
    {
        var stop = Weir(Morning.AddHours(5));
        OutingPlan For(IReadOnlyList<OutingStop> stops, int most = 2, double hours = 10)
            => OutingPlan.For(stops, new SheetTimes(), CloudChance.Of(default), Morning, Morning.AddHours(hours), most);
        Assert.Equal(2, For([stop]).Sheets);
        Assert.Throws<RefusalException>(() => For([]));
        Assert.Throws<RefusalException>(() => For([.. Enumerable.Range(0, 8).Select(i => stop with { Name = $"{i}" })]));
        Assert.Throws<RefusalException>(() => For([stop], 0));
        Assert.Throws<RefusalException>(() => For([stop], 101));
        Assert.Throws<RefusalException>(() => For([stop], hours: -1));
        Assert.Throws<RefusalException>(() => For([stop], hours: 37));
        Assert.Throws<RefusalException>(() => For([stop with { SheetsWanted = 0 }]));
        Assert.Throws<RefusalException>(() => For([stop with { SheetsWanted = 21 }]));
        Assert.Equal(4 * 3600, new SheetTimes { SetUp = Duration.FromMinutes(240) }.SetUp.Seconds);
        Assert.Throws<RefusalException>(() => new SheetTimes { SetUp = Duration.FromMinutes(241) });
        Assert.Throws<RefusalException>(() => CloudChance.Forecast([]));
    }

    // Two places a degree of longitude apart on the equator: 1/360 of 2π·6371 km.
    [Fact]
    public void The_way_is_the_way_on_a_sphere()
        => Assert.Equal(2 * Math.PI * 6371000 / 360, GeographicPosition.FromDegrees(0, 179.5).MetresTo(GeographicPosition.FromDegrees(0, -179.5)), 1);

    private static OutingStop Weir(DateTimeOffset sunUntil) => new(
        "weir", GeographicPosition.FromDegrees(0, 0.01), [new LightWindow(Morning.AddHours(1), sunUntil)], _ => Duration.FromMinutes(5), 2);

    private static OutingPlan Day(DateTimeOffset sunUntil, DateTimeOffset until) => OutingPlan.For(
        [Weir(sunUntil)],
        new SheetTimes(),
        CloudChance.Forecast([(Morning, Probability.FromFraction(0.9)), (Morning.AddMinutes(59), Probability.FromFraction(0.2))]),
        Morning,
        until,
        10,
        GeographicPosition.FromDegrees(0, 0));

    private static OutingPlan Plan(IReadOnlyList<OutingStop> stops, int most, CloudChance? cloud = null)
        => OutingPlan.For(stops, new SheetTimes(), cloud ?? CloudChance.Of(default), Morning, Morning.AddHours(14), most);

    private static List<LightWindow> InOrder(List<(double At, double Length)> spans)
    {
        var windows = new List<LightWindow>();
        foreach (var (at, length) in spans.OrderBy(span => span.At))
        {
            var start = Morning.AddHours(at);
            if (windows.Count == 0 || windows[^1].End < start)
            {
                windows.Add(new LightWindow(start, start.AddHours(length)));
            }
        }

        return windows;
    }
}
