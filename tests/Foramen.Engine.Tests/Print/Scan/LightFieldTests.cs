using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print.Scan;

public class LightFieldTests
{
    private const int Width = 400;
    private const int Height = 300;
    private static readonly Gen<double[]> AnyTerms = Gen.Double[-0.5, 0.5].Array[6];
    private static readonly (double X, double Y)[] Sheet = [(100, 80), (310, 70), (320, 230), (90, 220)];

    [Fact]
    public void A_surface_of_the_second_degree_comes_back_though_a_sixth_of_the_places_are_no_ground() => Gen.Select(AnyTerms, Gen.Int[1, 1000]).Sample((terms, seed) =>
    {
        var chance = new Random(seed);
        var points = Points().Select(at => (at.X, at.Y, Surface(terms, at.X, at.Y) + (chance.Next(6) == 0 ? 1 + (2 * chance.NextDouble()) : 0))).ToList();
        var field = LightField.Fit(points, Width, Height);
        foreach (var (x, y) in new[] { (0.0, 0.0), (400, 0), (13, 290), (200, 150), (390, 280) })
        {
            Assert.Equal(Surface(terms, x, y), field.LnAt(x, y), 0.005);
        }

        Assert.Equal(terms[0], field.LnInTheMiddle, 0.005);
    }, iter: Samples.Of(25));

    // Normal noise, by Box and Muller; a median of 1200 distances knows the spread to about 4 %.
    [Theory]
    [InlineData(0.01)]
    [InlineData(0.05)]
    public void The_spread_is_the_noises_standard_deviation(double deviation)
    {
        var chance = new Random(3);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
        var field = LightField.Fit([.. Points().Select(at => (at.X, at.Y, -0.5 + (0.2 * at.X / Width) + (deviation * Normal())))], Width, Height);
        Assert.Equal(deviation, field.Spread, 0.15 * deviation);
    }

    [Fact]
    public void The_ground_around_a_sheet_tells_the_light_whatever_the_sheets_own_tones() => Gen.Select(AnyTerms, Gen.Double[0, 1]).Sample((terms, tone) =>
    {
        var all = terms.Select((term, i) => i == 0 ? -0.7 : 0.3 * term).ToArray();
        var scan = ScanPictures.DrawSheet(Width, Height, Sheet, (x, y) => Math.Exp(Surface(all, x, y)), (x, _) => x > 200 ? tone : 0.3);
        var field = LightField.Around(scan, ScanPictures.Named(Sheet));
        foreach (var (x, y) in new[] { (10.0, 10.0), (390, 10), (10, 290), (390, 290), (200, 30), (200, 150), (30, 150) })
        {
            Assert.Equal(Surface(all, x, y), field.LnAt(x, y), 0.015);
        }
    }, iter: Samples.Of(15));

    // Over the whole scan the light changes by two to four codes of 256: most of the ground has one and the same.
    [Theory]
    [InlineData(-0.007, 0, 0.007)]
    [InlineData(0.007, 0, 0.007)]
    [InlineData(0, -0.007, 0.007)]
    [InlineData(0.008, -0.007, 0)]
    [InlineData(0.015, 0, 0)]
    public void Light_that_is_nearly_even_keeps_its_slope(double across, double down, double twist)
    {
        double[] terms = [-0.7, across, down, 0, twist, 0];
        var scan = ScanPictures.DrawSheet(Width, Height, Sheet, (x, y) => Math.Exp(Surface(terms, x, y)), (_, _) => 0);
        var field = LightField.Around(scan, ScanPictures.Named(Sheet));
        foreach (var (x, y) in new[] { (10.0, 10.0), (390, 10), (10, 290), (390, 290), (200, 30), (200, 150), (30, 150) })
        {
            // Half a code, as whole codes are all that is to be seen.
            Assert.Equal(Surface(terms, x, y), field.LnAt(x, y), 0.5 / (255 * Math.Exp(-0.7)));
        }
    }

    [Theory]
    [InlineData(2, false)]
    [InlineData(3, true)]
    public void Ground_that_is_nearly_black_says_nothing(int code, bool says)
    {
        var scan = ScanPictures.DrawSheet(Width, Height, Sheet, (_, _) => code / 255.0, (_, _) => 0.8);
        if (says)
        {
            Assert.Equal(Math.Log(code / 255.0), LightField.Around(scan, ScanPictures.Named(Sheet)).LnInTheMiddle, 0.01);
        }
        else
        {
            Assert.Contains("black", Refused(scan, Sheet), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_sheet_that_fills_the_picture_leaves_no_ground()
        => Assert.Contains("Hardly any", Refused(ScanPictures.Draw(Width, Height, (_, _) => 0.5), [(4, 4), (396, 4), (396, 296), (4, 296)]), StringComparison.Ordinal);

    // All on one row: nothing is known of how the light falls downwards.
    [Fact]
    public void Ground_on_one_side_only_says_too_little()
        => Assert.Contains(
            "too little",
            Assert.Throws<RefusalException>(() => LightField.Fit([.. Enumerable.Range(0, 100).Select(i => (4.0 * i, 10.0, -0.5))], Width, Height)).Message,
            StringComparison.Ordinal);

    private static IEnumerable<(double X, double Y)> Points() => Enumerable.Range(0, 1200).Select(i => ((i % 40 * 10) + 5.0, (i / 40 * 10) + 5.0));

    // In parts of half the size from the middle.
    private static double Surface(double[] terms, double x, double y)
    {
        var (u, v) = ((x - (Width / 2)) / (Width / 2), (y - (Height / 2)) / (Height / 2));
        return terms[0] + (terms[1] * u) + (terms[2] * v) + (terms[3] * u * u) + (terms[4] * u * v) + (terms[5] * v * v);
    }

    private static string Refused(ScanImage scan, (double X, double Y)[] corners)
        => Assert.Throws<RefusalException>(() => LightField.Around(scan, ScanPictures.Named(corners))).Message;
}
