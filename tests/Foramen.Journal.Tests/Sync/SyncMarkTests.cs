using Foramen.Journal.Sync;

namespace Foramen.Journal.Tests.Sync;

public class SyncMarkTests
{
    // This text lies in the stores of devices: another would make each of them compare everything with Home anew.
    [Fact]
    public void A_mark_is_kept_as_it_always_was()
    {
        var mark = new SyncMark("store-1", "9.4", 17, 2);
        Assert.Equal("""{"epoch":"store-1","cursor":"9.4","sentThrough":17,"generation":2}""", mark.ToJson());
        Assert.Equal(mark, SyncMark.FromJson(mark.ToJson()));
        Assert.Equal(mark with { Generation = 0 }, SyncMark.FromJson("""{"epoch":"store-1","cursor":"9.4","sentThrough":17}"""));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("rubbish")]
    [InlineData("{\"epoch\":\"store-1\",\"cur")]
    [InlineData("[1]")]
    [InlineData("{}")]
    [InlineData("""{"cursor":"9.4","sentThrough":17}""")]
    [InlineData("""{"epoch":"store-1","sentThrough":17}""")]
    [InlineData("""{"epoch":null,"cursor":"9.4","sentThrough":17}""")]
    [InlineData("""{"epoch":"store-1","cursor":"9.4","sentThrough":"many"}""")]
    public void What_is_no_mark_means_that_they_never_met(string? text)
    {
        Assert.Equal(SyncMark.Never, SyncMark.FromJson(text));
        Assert.Equal(("", "", 0L, 0), (SyncMark.FromJson(text).Epoch, SyncMark.FromJson(text).Cursor, SyncMark.FromJson(text).SentThrough, SyncMark.FromJson(text).Generation));
    }

    [Fact]
    public void What_came_from_another_store_or_before_the_same_was_put_back_is_of_another_origin()
    {
        SyncMark[] marks = [SyncMark.Never, new("a", "", 0), new("a", "", 0, 1), new("b", "", 0), new("b", "", 0, 1)];
        Assert.Equal(marks.Length, marks.Select(mark => mark.Origin).Distinct().Count());
        Assert.Equal(new SyncMark("a", "7", 9, 1).Origin, new SyncMark("a", "8", 12, 1).Origin);
    }
}
