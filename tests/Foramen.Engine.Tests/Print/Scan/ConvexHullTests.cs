using CsCheck;
using Foramen.Engine.Print;

namespace Foramen.Engine.Tests.Print.Scan;

public class ConvexHullTests
{
    private static readonly Gen<PixelPlace[]> AnyPlaces = Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9]).Select(one => new PixelPlace(one.Item1, one.Item2)).Array[5, 14];

    [Fact]
    public void Of_a_square_with_places_in_it_and_on_its_sides_the_corners_are_left_clockwise_with_rows_counted_downwards()
    {
        var hull = ConvexHull.Of([new(2, 2), new(0, 0), new(4, 4), new(1, 3), new(4, 0), new(0, 4), new(2, 0), new(0, 2), new(4, 2)]);
        Assert.Equal([new(0, 0), new(4, 0), new(4, 4), new(0, 4)], hull.Places);
    }

    // What a hull is: its corners are some of the places, it turns to the same side at each of them, and no place lies outside.
    [Fact]
    public void It_bends_one_way_at_places_that_are_there_and_holds_all_of_them() => AnyPlaces.Sample(places =>
    {
        var hull = ConvexHull.Of(places).Places;
        Assert.All(hull, corner => Assert.Contains(corner, places));
        if (hull.Length < 3)
        {
            Assert.All(places, place => Assert.Equal(0, CrossProduct(places.MinBy(Key), places.MaxBy(Key), place)));
            return;
        }

        for (var i = 0; i < hull.Length; i++)
        {
            var (a, b) = (hull[i], hull[(i + 1) % hull.Length]);
            Assert.True(CrossProduct(a, b, hull[(i + 2) % hull.Length]) > 0);
            Assert.All(places, place => Assert.True(CrossProduct(a, b, place) >= 0));
        }
    });

    [Fact]
    public void The_area_is_that_of_triangles_and_does_not_ask_where_one_begins_or_which_way_one_goes()
    {
        PixelPlace[] kite = [new(3, 1), new(9, 4), new(3, 11), new(1, 4)];
        Assert.Equal(10 * 8 / 2, ConvexHull.AreaOf(kite));
        Assert.Equal(40, ConvexHull.AreaOf([.. kite.Reverse()]));
        Assert.Equal(40, ConvexHull.AreaOf([kite[2], kite[3], kite[0], kite[1]]));
        Assert.Equal(6, ConvexHull.AreaOf([new(5, 5), new(9, 5), new(5, 8)]));
    }

    // All choices of four are gone through.
    [Fact]
    public void No_other_four_corners_hold_a_larger_area() => AnyPlaces.Sample(places =>
    {
        var hull = ConvexHull.Of(places);
        if (hull.Places.Length < 4)
        {
            return;
        }

        var n = hull.Places.Length;
        var largest = 0.0;
        for (var i = 0; i < n; i++)
        {
            for (var j = i + 1; j < n; j++)
            {
                for (var k = j + 1; k < n; k++)
                {
                    for (var l = k + 1; l < n; l++)
                    {
                        PixelPlace[] four = [hull.Places[i], hull.Places[j], hull.Places[k], hull.Places[l]];
                        largest = Math.Max(largest, (CrossProduct(four[0], four[1], four[2]) + CrossProduct(four[0], four[2], four[3])) / 2);
                    }
                }
            }
        }

        var found = hull.LargestFour();
        Assert.Equal(largest, ConvexHull.AreaOf(found), 1e-9);
        Assert.All(found, corner => Assert.Contains(corner, hull.Places));
    });

    // The largest four-sided figure in a circle is its square, 2 r²: some corners of many are enough.
    [Fact]
    public void In_a_circle_of_many_places_the_square_is_found()
    {
        var hull = ConvexHull.Of([.. Enumerable.Range(0, 720).Select(i => new PixelPlace(100 + (100 * Math.Cos(i * Math.PI / 360)), 100 + (100 * Math.Sin(i * Math.PI / 360))))]);
        Assert.Equal(720, hull.Places.Length);
        Assert.Equal(20_000, ConvexHull.AreaOf(hull.LargestFour()), 100.0);
    }

    private static (double, double) Key(PixelPlace place) => (place.X, place.Y);

    private static double CrossProduct(PixelPlace a, PixelPlace b, PixelPlace c) => ((b.X - a.X) * (c.Y - b.Y)) - ((c.X - b.X) * (b.Y - a.Y));
}
