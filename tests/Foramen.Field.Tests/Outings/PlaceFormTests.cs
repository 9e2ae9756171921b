using Foramen.Field.Outings;
using Foramen.Field.Texts;
using Foramen.Journal;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Tests.Outings;

public sealed class PlaceFormTests
{
    private static readonly Ulid Id = Ulid.From(DateTimeOffset.UnixEpoch, [1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);

    [Fact]
    public void A_name_alone_is_a_place_to_be_completed_later()
    {
        var place = new PlaceForm { Name = " Canal basin " }.Read(Id);
        Assert.NotNull(place);
        Assert.Equal("Canal basin", place.Name);
        Assert.Null(place.LatitudeDegrees);
        Assert.Null(place.FacesDegrees);
    }

    [Fact]
    public void What_was_kept_can_be_changed_without_losing_anything()
    {
        var typed = new PlaceForm { Name = "Weir", Latitude = "52,5", Longitude = "−5.25", Faces = "320", FacadeFaces = "95", Reflectance = "40", Note = "Mind the edge." };
        var place = typed.Read(Id)!;
        place.Check();
        Assert.Equal((52.5, -5.25, 320.0), (place.LatitudeDegrees!.Value, place.LongitudeDegrees!.Value, place.FacesDegrees!.Value));
        Assert.Equal(place, new PlaceForm().Fill(place).Read(Id));
    }

    [Theory]
    [InlineData("91", "5", "10", nameof(PlaceForm.Latitude))]
    [InlineData("52", "181", "10", nameof(PlaceForm.Longitude))]
    [InlineData("52", "5", "361", nameof(PlaceForm.Faces))]
    [InlineData("fifty", "5", "10", nameof(PlaceForm.Latitude))]
    [InlineData("NaN", "5", "10", nameof(PlaceForm.Latitude))]
    [InlineData("52", "", "10", nameof(PlaceForm.Longitude))]
    public void What_cannot_be_is_said_beside_its_field_and_kept(string latitude, string longitude, string faces, string field)
    {
        var form = new PlaceForm { Name = "Weir", Latitude = latitude, Longitude = longitude, Faces = faces };
        Assert.Null(form.Read(Id));
        Assert.Equal([field], form.Messages.Keys);
        Assert.Equal(latitude, form.Latitude);
    }

    // Great-circle bearings worked by hand: due east along a parallel and due north along a meridian, over a distance where the Earth's curve is nothing.
    [Theory]
    [InlineData(52.5, 5.26, 90)]
    [InlineData(52.51, 5.25, 0)]
    [InlineData(52.49, 5.25, 180)]
    [InlineData(52.5, 5.24, 270)]
    public void The_bearing_follows_from_two_spots(double latitude, double longitude, double bearing)
    {
        var form = new PlaceForm { Name = "Weir" };
        form.StandAt(52.5, 5.25);
        form.LookAt(latitude, longitude);
        Assert.Equal(bearing, form.Read(Id)!.FacesDegrees!.Value, 0.5);
    }

    [Fact]
    public void Two_spots_across_the_date_line_are_near()
    {
        var form = new PlaceForm { Name = "Pier" };
        form.StandAt(-17, 179.9995);
        form.LookAt(-17, -179.9995);
        Assert.Equal(90, form.Read(Id)!.FacesDegrees!.Value, 0.5);
    }

    [Fact]
    public void A_second_spot_too_near_or_with_no_first_gives_no_bearing()
    {
        var form = new PlaceForm { Name = "Weir" };
        form.LookAt(52.5, 5.25);
        Assert.Contains(nameof(PlaceForm.Faces), form.Messages.Keys);
        form.StandAt(52.5, 5.25);
        form.LookAt(52.50002, 5.25);
        Assert.Contains(nameof(PlaceForm.Faces), form.Messages.Keys);
        Assert.Equal("", form.Faces);
    }

    [Fact]
    public void What_hides_the_sun_is_kept_and_can_be_changed()
    {
        var typed = new PlaceForm { Name = "Weir" };
        typed.Shades.Add(new ShadeForm { Name = " row of poplars ", Left = "350", Right = "20,5", Top = "15", Falls = ShadeFalls.OnBoth });
        typed.Shades.Add(new ShadeForm { Left = "100", Right = "140", Top = "8" });
        var place = typed.Read(Id)!;
        place.Check();
        Assert.Equal(
            [
                new PlaceShade { Name = "row of poplars", LeftDegrees = 350, RightDegrees = 20.5, TopDegrees = 15, Falls = ShadeFalls.OnBoth },
                new PlaceShade { LeftDegrees = 100, RightDegrees = 140, TopDegrees = 8, Falls = ShadeFalls.OnFacade },
            ],
            place.Shades!);
        Assert.Equal(place.Shades, new PlaceForm().Fill(place).Read(Id)!.Shades);
        typed.Shades.Clear();
        Assert.Null(typed.Read(Id)!.Shades);
    }

    [Theory]
    [InlineData("", "20", "10", nameof(ShadeForm.Left))]
    [InlineData("10", "west", "10", nameof(ShadeForm.Right))]
    [InlineData("10", "20", "90", nameof(ShadeForm.Top))]
    [InlineData("20", "10", "30", nameof(ShadeForm.Right))]
    public void What_cannot_hide_the_sun_is_said_beside_its_field_and_the_place_waits(string left, string right, string top, string field)
    {
        var form = new PlaceForm { Name = "Weir" };
        form.Shades.Add(new ShadeForm { Left = left, Right = right, Top = top });
        Assert.Null(form.Read(Id));
        Assert.Equal([field], form.Shades[0].Messages.Keys);
        Assert.Equal((left, right, top), (form.Shades[0].Left, form.Shades[0].Right, form.Shades[0].Top));
    }

    // Another program may have written a name of blanks.
    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("  ")]
    public void What_has_no_name_is_still_said(string? name)
        => Assert.Equal(
            "Something in its way shades the facade while the sun is between 100° and 140° and lower than 8.5°.",
            Words.Shades.Line(new PlaceShade { Name = name, LeftDegrees = 100, RightDegrees = 140, TopDegrees = 8.5 }));
}
