using System.Text;
using Bunit;
using Foramen.Field.Outings;
using Foramen.Field.Shell;
using Foramen.Field.Storage;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal.Bodies;
using Foramen.Journal.Exchange;

namespace Foramen.Field.Tests.Storage;

public sealed class DemoOutingTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task An_empty_journal_takes_it_in_and_one_in_use_does_not()
    {
        using var other = new FieldContext();
        await other.LoadedSheetAsync();
        field.Platform.Demo = Encoding.UTF8.GetString(JournalFile.Write(other.Session.Ledger.Entries));

        Assert.Equal(3, await DemoOuting.TakeInAsync(field.Session, field.Platform, field.Pictures));
        Assert.Single(field.Session.Ledger.Sheets.All);
        Assert.Equal(0, await DemoOuting.TakeInAsync(field.Session, field.Platform, field.Pictures));

        using var used = new FieldContext();
        await used.LoadedSheetAsync();
        used.Platform.Demo = field.Platform.Demo;
        Assert.Equal(0, await DemoOuting.TakeInAsync(used.Session, used.Platform, used.Pictures));
    }

    [Fact]
    public async Task Its_photographs_are_fetched_by_what_they_hold_before_its_sheets_stand_in_the_journal()
    {
        using var other = new FieldContext();
        var sheet = await other.LoadedSheetAsync();
        var hash = new string('a', 64);
        await other.Session.AppendAsync(new PhotographAdded
        {
            Sheet = sheet.Id, ContentHash = hash, MediaType = "image/jpeg", WidthPixels = 40, HeightPixels = 30, ByteCount = 1000,
        });
        field.Platform.Demo = Encoding.UTF8.GetString(JournalFile.Write(other.Session.Ledger.Entries));
        var fetchedAtChange = -1;
        field.Session.Changed += () => fetchedAtChange = field.Session.Ledger.Entries.Count == 0 ? -1 : field.Pictures.Fetched.Count;

        await DemoOuting.TakeInAsync(field.Session, field.Platform, field.Pictures);

        Assert.Equal(1, fetchedAtChange);
        Assert.Equal(($"demo/photographs/{hash}", hash), Assert.Single(field.Pictures.Fetched));
    }

    [Fact]
    public async Task A_page_that_was_opened_before_it_came_is_made_anew()
    {
        using var other = new FieldContext();
        await other.PlannedSheetAsync(600);
        field.Platform.Demo = Encoding.UTF8.GetString(JournalFile.Write(other.Session.Ledger.Entries));
        var shell = field.Render<MainLayout>(p => p.Add(layout => layout.Body, body =>
        {
            body.OpenComponent<DayPlanPage>(0);
            body.CloseComponent();
        }));
        Assert.Equal("2", shell.Find("#wait-needs").GetAttribute("value"));

        await DemoOuting.TakeInAsync(field.Session, field.Platform, field.Pictures);

        shell.WaitForAssertion(() => Assert.Equal("10", shell.Find("#wait-needs").GetAttribute("value")));
    }

    [Fact]
    public async Task What_is_no_journal_is_left_alone()
    {
        field.Platform.Demo = "<!DOCTYPE html>";
        Assert.Equal(0, await DemoOuting.TakeInAsync(field.Session, field.Platform, field.Pictures));
        Assert.True(field.Session.IsOpen);
    }
}
