using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Exchange.Paper;
using Foramen.Exchange.Places;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using static Foramen.Exchange.Tests.Examples;

namespace Foramen.Exchange.Tests.Paper;

public class DaySheetPdfTests
{
    // Read by PdfPig, a library of its own: one page of A4 (210 × 297 mm) with the words that matter, all within the page.
    [Fact]
    [Source("pdfpig", Basis.Library)]
    public void One_page_of_a4_that_another_library_reads()
    {
        using var document = PdfDocument.Open(Written(stream => DaySheetPdf.Write(stream, Sheet(3))));
        var page = Assert.Single(document.GetPages());
        Assert.Equal(210, page.Width / 72 * 25.4, 0.1);
        Assert.Equal(297, page.Height / 72 * 25.4, 0.1);
        var words = string.Join(' ', page.GetWords().Select(word => word.Text));
        Assert.Contains("grain elevator", words, StringComparison.Ordinal);
        Assert.Contains("Windows:", words, StringComparison.Ordinal);
        Assert.Contains("Schedule", words, StringComparison.Ordinal);
        Assert.Contains("expose sheet 1", words, StringComparison.Ordinal);
        Assert.Contains("a (bracketed) \\ thing", words, StringComparison.Ordinal);
        Assert.Contains("Never look at the sun", words, StringComparison.Ordinal);
        Assert.All(page.Letters, Inside);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(9)]
    public void Any_number_of_places_leaves_one_readable_page(int places)
    {
        using var document = PdfDocument.Open(Written(stream => DaySheetPdf.Write(stream, Sheet(places))));
        Assert.All(Assert.Single(document.GetPages()).Letters, Inside);
    }

    private static void Inside(Letter letter)
    {
        Assert.InRange(letter.Location.X, 14 / 25.4 * 72, 196.5 / 25.4 * 72);
        Assert.InRange(letter.Location.Y, 4 / 25.4 * 72, 285 / 25.4 * 72);
    }

    private static DaySheet Sheet(int count)
    {
        var day = new DateTimeOffset(2024, 6, 20, 0, 0, 0, TimeSpan.FromHours(2));
        var demo = PlaceFile.Read(Demo);
        var places = Enumerable.Range(0, count).Select(i =>
        {
            var record = demo[i % demo.Count];
            var place = record.ToPlace();
            var windows = WindowFinder.Find(place, new WindowWish { LongestExposure = null }, null, day, day.AddDays(1));
            return new DaySheetPlace(place, windows, DayChart.Of(place, null, SkyCover.Clear, day, day.AddDays(1)), record.Note);
        }).ToList();
        var plan = count == 0 ? null : OutingPlan.For(
            [.. places.Take(3).Select(place => new OutingStop(place.Place.Name, place.Place.Position, [.. place.Windows.Select(one => one.Window)], _ => Duration.FromMinutes(2), 2))],
            new SheetTimes(),
            CloudChance.Of(Probability.FromFraction(0.3)),
            day.AddHours(7),
            day.AddHours(20),
            6);
        return new DaySheet(
            "20 June 2024",
            "clear sky",
            places,
            plan,
            ["a (bracketed) \\ thing", .. Enumerable.Range(0, 30).Select(i => $"thing {i} with a long description that takes more than one line of the narrow column")],
            [.. Enumerable.Range(0, 20).Select(i => $"caution {i} of some length, so that it fills a line and a little more of the next one")],
            instant => instant.ToOffset(TimeSpan.FromHours(2)));
    }
}
