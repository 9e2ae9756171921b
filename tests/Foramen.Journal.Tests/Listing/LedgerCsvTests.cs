using System.Globalization;
using CsvHelper;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Journal.Fold;
using Foramen.Journal.Listing;

namespace Foramen.Journal.Tests.Listing;

/// <summary>The table is read back by another library (CsvHelper), not by our own code.</summary>
public sealed class LedgerCsvTests
{
    [Fact]
    [Source("csvhelper", Basis.Library)]
    public void Another_library_reads_back_what_was_written()
    {
        var row = new LedgerRow
        {
            Sheet = Ulid.Parse("01KQPP9PE0000000000000000R"),
            Number = 7,
            Name = "Elevator, \"tall\"",
            LoadedAt = new DateTimeOffset(2026, 5, 9, 11, 30, 5, TimeSpan.FromHours(2)),
            Note = "two\nlines",
            PlannedSeconds = 95.25,
            OpenSeconds = 96,
            Odds = 0.62,
            Keeper = false,
            LighterByStops = -0.5,
            Causes = [MishapCause.Frame, MishapCause.Light],
        };
        var read = Assert.Single(Read(LedgerCsv.Write([row])));
        Assert.Equal("7", read["number"]);
        Assert.Equal(row.Name, read["name"]);
        Assert.Equal("two\nlines", read["note"]);
        Assert.Equal("2026-05-09T11:30:05+02:00", read["loadedAt"]);
        Assert.Equal("95.25", read["plannedSeconds"]);
        Assert.Equal("no", read["keeper"]);
        Assert.Equal("-0.5", read["lighterByStops"]);
        Assert.Equal("frame light", read["causes"]);
        Assert.Equal("", read["paper"]);
    }

    /// <summary>Text that a spreadsheet would run is text there too; the apostrophe is what spreadsheets hide (common practice, no source).</summary>
    [Theory]
    [InlineData("=1+1")]
    [InlineData("+31")]
    [InlineData("-2")]
    [InlineData("@sum")]
    [Source("common-practice")]
    public void A_name_is_never_a_formula(string name)
        => Assert.Equal("'" + name, Assert.Single(Read(LedgerCsv.Write([new LedgerRow { Sheet = default, Number = 1, Name = name }])))["name"]);

    // Written out by hand from RFC 4180: quotes only where a comma, a quote or a line break asks for them, and lines that end in CR LF.
    [Fact]
    public void The_file_is_as_its_format_says_to_the_byte()
    {
        var row = new LedgerRow
        {
            Sheet = Ulid.Parse("01KQPP9PE0000000000000000R"), Number = 12, Outing = "May, 3", Place = "basin", Camera = "\tbox", Paper = "=1", Light = "noon",
            FlashSeconds = 0.12345, Odds = 1, Keeper = true, Note = "a \"b\"",
        };
        Assert.Equal(
            "number,sheet,name,loadedAt,outing,place,camera,paper,light,plannedSeconds,flashSeconds,odds,openSeconds,keeper,lighterByStops,causes,note\r\n"
            + "12,01KQPP9PE0000000000000000R,,,\"May, 3\",basin,'\tbox,'=1,noon,,0.1235,1,,yes,,,\"a \"\"b\"\"\"\r\n"
            + "1,01KQPP9PE0000000000000000R,\"'\rx\",,,,,,,,,,,,,,\r\n",
            System.Text.Encoding.UTF8.GetString(LedgerCsv.Write([row, new LedgerRow { Sheet = row.Sheet, Number = 1, Name = "\rx" }])));
    }

    [Fact]
    public void Every_sheet_of_a_ledger_is_a_row_whatever_the_culture()
    {
        var ledger = Ledger.Of(EntrySet.Of(JournalFile.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "canal-basin.foramen.jsonl"))).Entries));
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            var rows = LedgerRow.All(ledger);
            var read = Read(LedgerCsv.Write(rows));
            Assert.Equal(ledger.Sheets.All.Count(sheet => !sheet.Withdrawn), read.Count);
            Assert.Equal(rows.Select(row => row.OpenSeconds), read.Select(row => row["openSeconds"] is { Length: > 0 } text ? Math.Round(double.Parse(text, CultureInfo.InvariantCulture), 4) : (double?)null), Close);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        static bool Close(double? one, double? other) => one is null ? other is null : other is { } value && Math.Abs(one.Value - value) < 1e-3;
    }

    private static List<IDictionary<string, string>> Read(byte[] file)
    {
        using var reader = new CsvReader(new StreamReader(new MemoryStream(file)), CultureInfo.InvariantCulture);
        return [.. reader.GetRecords<dynamic>().Cast<IDictionary<string, object>>()
            .Select(row => (IDictionary<string, string>)row.ToDictionary(cell => cell.Key, cell => (string)cell.Value))];
    }
}
