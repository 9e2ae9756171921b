using Foramen.Field.Settings;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;

namespace Foramen.Field.Tests.Settings;

public sealed class SettingsPageTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    // An installation that was copied goes on with the same numbers.
    [Fact]
    public async Task What_cannot_all_be_right_is_said_where_the_journal_is_kept()
    {
        await field.Session.OpenAsync();
        Assert.DoesNotContain("cannot all be right", field.Render<SettingsPage>().Markup, StringComparison.Ordinal);
        var device = DeviceId.Parse("other");
        Entry Opened() => Entry.Create(field.Session.NewId(), device, 7, field.Time.GetUtcNow(), new HoleOpened { Sheet = field.Session.NewId() });
        await field.Session.TakeInAsync([Opened(), Opened()]);
        var page = field.Render<SettingsPage>();
        Assert.Contains("One thing in the journal cannot all be right. Nothing was dropped.", page.Markup, StringComparison.Ordinal);
        Assert.Contains("Device other used its number 7 more than once", page.Markup, StringComparison.Ordinal);
    }
}
