using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Sync;
using Foramen.Journal.Tests.TestKit;

namespace Foramen.Journal.Tests.Sync;

/// <summary>Home shares and hides entries by what they are about, so this must hold for any body that an entry can have.</summary>
public class EntryTopicTests
{
    private static readonly Ulid Sheet = Make.Id(901);
    private static readonly Ulid Other = Make.Id(902);

    [Fact]
    public void Every_body_of_a_sheet_is_about_its_sheet_and_no_other_is()
    {
        foreach (var body in OneOfEach.Bodies.Where(body => body is not (EntryVoided or EntryAmended)))
        {
            Assert.Equal(body is SheetBody of ? of.Sheet : (Ulid?)null, EntryTopic.Of(Make.By(Make.Phone, 1, 0, body)));
        }
    }

    [Fact]
    public void A_voiding_and_an_amendment_are_about_the_entry_that_they_correct()
    {
        Assert.Equal(Other, EntryTopic.Of(Make.By(Make.Phone, 1, 0, new EntryVoided { Entry = Other })));
        Assert.Equal(Other, Of(EntryKind.EntryVoided, $$"""{"sheet":"{{Sheet}}","entry":"{{Other}}"}"""));
        Assert.Equal(Other, Of(EntryKind.EntryAmended, Filled("""{"entry":"{1}","body":{"entry":"{0}","sheet":"{0}"}}""")));
        Assert.Null(Of(EntryKind.EntryAmended, $$"""{"sheet":"{{Sheet}}"}"""));
    }

    [Theory]
    [InlineData("""{"sheet":"{0}"}""")]
    [InlineData("""{ "phase" : [1, {"sheet":"{1}"}], "sheet" : "{0}" }""")]
    [InlineData("""{"sheet":"{0}","again":{"sheet":"{1}","deep":[{"sheet":"{1}"}]}}""")]
    [InlineData("""{"what":"sheet","sheet":"{0}"}""")]
    public void A_kind_of_the_future_is_about_the_sheet_that_it_names_at_its_top(string body) => Assert.Equal(Sheet, Of("moon.watched", Filled(body)));

    [Theory]
    [InlineData("""{"sh\u0065et":"{0}"}""")]
    [InlineData("""{"\u0073heet":"{0}","note":"é"}""")]
    public void A_name_that_is_written_with_escapes_is_the_same_name(string body) => Assert.Equal(Sheet, Of("moon.watched", Filled(body)));

    // RFC 8259, section 4: many readers take the last of two members with one name. Those of bodies do, so this must.
    [Theory]
    [InlineData("""{"sheet":"{1}","sheet":"{0}"}""", true)]
    [InlineData("""{"sheet":"{0}","sheet":7}""", false)]
    [InlineData("""{"sheet":"{0}","sheet":"nothing"}""", false)]
    public void Said_twice_the_last_counts(string body, bool found) => Assert.Equal(found ? Sheet : (Ulid?)null, Of("moon.watched", Filled(body)));

    [Theory]
    [InlineData("{}")]
    [InlineData("""{"note":"no \"sheet\" here"}""")]
    [InlineData("""{"sheet":7}""")]
    [InlineData("""{"sheet":null}""")]
    [InlineData("""{"sheet":["{0}"]}""")]
    [InlineData("""{"sheet":"no id"}""")]
    [InlineData("""{"entry":"{0}"}""")]
    [InlineData("""{"\u0073heets":"{0}"}""")]
    public void What_names_no_sheet_is_about_none(string body) => Assert.Null(Of("moon.watched", Filled(body)));

    // An entry may hold half a character pair, written as an escape. It must not stop the batch it comes in.
    [Theory]
    [InlineData("""{"sheet":"\ud800"}""", false)]
    [InlineData("""{"\ud800":1,"sheet":"{0}"}""", true)]
    [InlineData("""{"\ud800heet":"x","sheet":"{0}"}""", true)]
    [InlineData("""{"note":"\udc00","sheet":"{0}"}""", true)]
    public void Half_a_character_pair_does_no_harm(string body, bool found) => Assert.Equal(found ? Sheet : (Ulid?)null, Of("moon.watched", Filled(body)));

    private static string Filled(string body)
        => body.Replace("{0}", Sheet.ToString(), StringComparison.Ordinal).Replace("{1}", Other.ToString(), StringComparison.Ordinal);

    private static Ulid? Of(string kind, string body) => EntryTopic.Of(Entry.CreateRaw(Make.Id(1), Make.Phone, 1, Make.Noon, kind, 7, body));
}
