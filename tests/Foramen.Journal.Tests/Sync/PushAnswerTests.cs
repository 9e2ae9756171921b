using System.Text;
using Foramen.Journal.Sync;

namespace Foramen.Journal.Tests.Sync;

public class PushAnswerTests
{
    // A device of today must understand a Home of tomorrow, and the other way about.
    [Fact]
    public void An_answer_is_written_as_devices_know_it()
    {
        var answer = new PushAnswer("store-1", 3, 2, "", "5.1");
        Assert.Equal("""{"epoch":"store-1","taken":3,"known":2,"before":"","after":"5.1"}""", answer.ToJson());
        Assert.Equal(answer, Read(answer.ToJson()));
        Assert.Equal(answer, Read("""{"epoch":"store-1","taken":3,"known":2,"before":"","after":"5.1","moon":[1]}"""));
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("<html>sign in</html>")]
    [InlineData("{}")]
    [InlineData("""{"taken":3,"known":2,"before":"","after":"5.1"}""")]
    [InlineData("""{"epoch":"store-1","taken":3,"known":2,"after":"5.1"}""")]
    [InlineData("""{"epoch":"store-1","taken":3,"known":2,"before":""}""")]
    [InlineData("""{"epoch":"store-1","taken":3,"known":2,"before":"","after":null}""")]
    [InlineData("""{"epoch":"store-1","taken":"three","known":2,"before":"","after":"5.1"}""")]
    public void What_is_no_answer_counts_as_a_connection_that_was_cut(string text)
    {
        var refused = Assert.Throws<HomeRefusedException>(() => Read(text));
        Assert.Equal(HomeRefusal.CutShort, refused.Why);
        Assert.Null(refused.Line);
    }

    [Fact]
    public void An_answer_cut_at_any_byte_is_none()
    {
        var whole = Encoding.UTF8.GetBytes(new PushAnswer("store-1", 3, 2, "", "5.1").ToJson());
        for (var length = 0; length < whole.Length; length++)
        {
            Assert.Equal(HomeRefusal.CutShort, Assert.Throws<HomeRefusedException>(() => PushAnswer.FromJson(whole.AsSpan(0, length))).Why);
        }
    }

    private static PushAnswer Read(string text) => PushAnswer.FromJson(Encoding.UTF8.GetBytes(text));
}
