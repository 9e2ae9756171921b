using Foramen.Engine.Scene;
using Foramen.Field.Sheets.Frame;
using Foramen.Field.Sheets.Motions;
using Foramen.Field.Texts;
using Foramen.Field.Units;
using Foramen.Journal.Kit;

namespace Foramen.Field.Tests.Sheets.Motions;

public class MotionFormTests
{
    private static MotionForm Marked(string how, UnitSystem units = UnitSystem.Metric)
        => new(units) { Name = "thing", How = how, Place = MarkedArea.Between((0.2, 0.3), (0.4, 0.6)) };

    [Fact]
    public void A_cyclist_is_kept_in_the_journals_units()
    {
        var form = Marked(MotionHow.Passes);
        (form.Width, form.Speed, form.Distance, form.Stops, form.Number) = ("1,7", "15", "20", -3, "4");
        var said = form.Work()!;
        Assert.Equal(15 / 3.6, said.SpeedMetresPerSecond!.Value, 1e-9);
        Assert.Equal(0.125, said.LuminanceRatio!.Value, 1e-9);
        Assert.Equal((1.7, 20, 4), (said.WidthMetres, said.DistanceMetres, said.Number));
        Assert.Equal((0.2, 0.3), (said.Left, said.Top));
        Assert.Equal(0.2, said.Width, 1e-9);
        Assert.Null(said.MovesFrom);
    }

    // 1 mile is 1609.344 m and 1 ft 0.3048 m, exactly.
    [Fact]
    public void Miles_and_feet_are_read_where_they_are_used()
    {
        var form = Marked(MotionHow.Passes, UnitSystem.Imperial);
        (form.Width, form.Speed, form.Distance) = ("5", "10", "60");
        var said = form.Work()!;
        Assert.Equal(4.4704, said.SpeedMetresPerSecond!.Value, 1e-9);
        Assert.Equal(18.288, said.DistanceMetres!.Value, 1e-9);
    }

    [Theory]
    [InlineData(MotionHow.Turns)]
    [InlineData(MotionHow.Sways)]
    [InlineData(MotionHow.Flows)]
    [InlineData(MotionHow.Passes)]
    [InlineData(MotionHow.GoesAway)]
    [InlineData(MotionHow.Lamp)]
    public void What_was_kept_is_found_again_as_it_was_typed(string how)
    {
        var form = Marked(how);
        (form.TurnSeconds, form.Anticlockwise, form.Reach, form.SwingSeconds, form.CrossingSeconds, form.Upright) = ("20", true, "7.5", "2.5", "90", true);
        (form.Width, form.Speed, form.Distance, form.Stops, form.Number, form.Candelas, form.From, form.To) = ("0.5", "5", "12", 1.5, "3", "50", "25", "80");
        var said = form.Work()!;
        Assert.Empty(form.Messages);
        Assert.Equal((0.25, 0.8), (said.MovesFrom, said.MovesTo));
        Assert.Equal(said, MotionForm.Of(default, said, UnitSystem.Metric).Work());
    }

    [Theory]
    [InlineData("", "0", "The speed is missing; type a number.")]
    [InlineData("fast", "0", "The speed should be a number, such as 5.")]
    [InlineData("900", "0", "The speed is 900 km/h; it should be between 0 and 300 km/h.")]
    public void What_cannot_be_read_is_said_beside_its_field_and_stays(string speed, string from, string sentence)
    {
        var form = Marked(MotionHow.Passes);
        (form.Width, form.Speed, form.Distance, form.From) = ("1", speed, "20", from);
        Assert.Null(form.Work());
        Assert.Equal(sentence, form.Message(nameof(MotionForm.Speed)));
        Assert.Null(form.Message(nameof(MotionForm.Distance)));
        Assert.Equal(speed, form.Speed);
    }

    [Fact]
    public void A_name_a_mark_and_an_order_of_times_are_needed()
    {
        var form = new MotionForm(UnitSystem.Metric) { From = "60", To = "40" };
        Assert.Null(form.Work());
        Assert.Equal(Words.Motions.NameMissing, form.Message(nameof(MotionForm.Name)));
        Assert.Equal(Words.Motions.PlaceMissing, form.Message(nameof(MotionForm.Place)));
        Assert.Equal(Words.Motions.EndsBefore, form.Message(nameof(MotionForm.To)));
    }

    // Somebody who stands still is no mistake: they stay in the picture.
    [Fact]
    public void Speed_zero_is_taken()
    {
        var form = Marked(MotionHow.Passes);
        (form.Width, form.Speed, form.Distance) = ("1", "0", "20");
        Assert.True(((PassesThrough)form.Work()!.ToRegion().Motion).Passers.StandStill);
    }
}
