using System.Text;
using Foramen.Field.Storage;
using Foramen.Field.Tests.TestKit;
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

        Assert.Equal(3, await DemoOuting.TakeInAsync(field.Session, field.Platform));
        Assert.Single(field.Session.Ledger.Sheets.All);
        Assert.Equal(0, await DemoOuting.TakeInAsync(field.Session, field.Platform));

        using var used = new FieldContext();
        await used.LoadedSheetAsync();
        used.Platform.Demo = field.Platform.Demo;
        Assert.Equal(0, await DemoOuting.TakeInAsync(used.Session, used.Platform));
    }

    [Fact]
    public async Task What_is_no_journal_is_left_alone()
    {
        field.Platform.Demo = "<!DOCTYPE html>";
        Assert.Equal(0, await DemoOuting.TakeInAsync(field.Session, field.Platform));
        Assert.True(field.Session.IsOpen);
    }
}
