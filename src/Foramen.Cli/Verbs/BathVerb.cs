using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Journals;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Cli.Time;
using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;
using Foramen.Journal.Fold;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen bath</c>: how a bottle of developer stands, the time for the next sheet, and what to do with it.</summary>
internal static class BathVerb
{
    public static Command Create(Page page)
    {
        var journal = new Option<string>("--journal") { Description = "The journal that tells the bottle's life.", HelpName = "FILE", Required = true };
        var bottle = new Option<string?>("--bottle") { Description = "Its id or its name. Not needed while one bottle of developer is in use.", HelpName = "BOTTLE" };
        var temperature = new Option<string?>("--temperature") { Description = "Of the developer now, such as 18C or 65F; as last read where nothing is said.", HelpName = "TEMPERATURE" };
        var at = new Option<string?>("--at") { Description = "The instant, with its offset from universal time; the journal's last entry where nothing is said.", HelpName = "INSTANT" };
        var topUp = new Option<string?>("--top-up") { Description = "As if this much fresh developer were added now, and as much poured away first as must be.", HelpName = "VOLUME" };
        var json = CommonOptions.Json();
        var verb = new Command(
            "bath",
            """
            Says how a bottle of developer stands after all that the journal knows of it: its strength, the time for the next sheet, how many sheets
            it is still good for, and whether to lengthen the time, top it up or replace it. Strength 1 is fresh.

            Try:
              foramen bath --journal demo/canal-basin.foramen.jsonl
              foramen bath --journal demo/canal-basin.foramen.jsonl --temperature 18C --json
              foramen bath --journal demo/canal-basin.foramen.jsonl --top-up 50ml
            """)
        {
            journal, bottle, temperature, at, topUp, json,
        };
        verb.SetAction(parsed =>
        {
            var path = parsed.GetRequiredValue(journal);
            var said = parsed.GetValue(temperature) is { } degrees ? DeveloperWarmth.Check(QuantityText.Temperature(degrees, "the temperature")) : (Temperature?)null;
            var added = parsed.GetValue(topUp) is { } volume ? QuantityText.Volume(volume, "the top-up") : (Volume?)null;
            var instant = parsed.GetValue(at) is { } text ? InstantText.Parse(text, "The instant") : (DateTimeOffset?)null;
            var ledger = JournalInput.Read(path, page);
            RefuseUnusable(ledger, path);
            var chosen = Choose(ledger, parsed.GetValue(bottle), path);
            var account = DeveloperAccount.Of(ledger, chosen, instant ?? LastOf(ledger));
            if (instant is not null && account.IsBeforeTheLast)
            {
                throw new RefusalException(
                    $"At {InstantText.Of(account.At)} not all that the journal says of this bottle had happened; ask for an instant from {InstantText.Of(chosen.Happenings[^1].At)} on.");
            }

            var now = added is { } fresh ? account.Now.After(TopUp.Of(account.Now, fresh).Events) : account.Now;
            var report = BathReporting.Report(
                ledger, account, now, said ?? account.Temperature, said is not null ? "said" : account.TemperatureAt is null ? "assumed" : "read");
            return page.Show(parsed.GetValue(json), report, ReportJson.Default.BathReport, () => Write(page, report));
        });
        return verb;
    }

    private static DateTimeOffset LastOf(Ledger ledger) => ledger.Entries.InOrder is [.., var last] ? last.Entry.At : DateTimeOffset.UnixEpoch;

    // A bottle is a sum of what happened to it: with an entry missing the sum is wrong, so none is given.
    private static void RefuseUnusable(Ledger ledger, string path)
    {
        foreach (var unused in ledger.Unused)
        {
            if (ledger.Entries.Find(unused.Entry) is { } entry
                && (entry.Kind.StartsWith("bottle.", StringComparison.Ordinal) || entry.Kind is EntryKind.SheetDeveloped or EntryKind.SheetFixed))
            {
                throw new RefusalException($"{path}, entry {entry.Id} ({entry.Kind}): {unused.Sentence}");
            }
        }
    }

    private static Bottle Choose(Ledger ledger, string? wanted, string path)
    {
        var developers = ledger.Bottles.All.Where(bottle => bottle.Mixed?.Body.Contents == BottleContents.Developer).ToList();
        if (wanted is not null)
        {
            var byId = Ulid.TryParse(wanted, out var id) ? developers.Find(bottle => bottle.Id == id) : null;
            return byId
                ?? developers.FindLast(bottle => string.Equals(bottle.Mixed!.Body.Name, wanted, StringComparison.OrdinalIgnoreCase))
                ?? throw new RefusalException($"There is no bottle of developer “{wanted}” in {path}; {List(developers)}");
        }

        var inUse = developers.FindAll(bottle => bottle.InUse);
        return inUse is [var only] ? only : throw new RefusalException(
            inUse.Count == 0
                ? $"No bottle of developer is in use in {path}; {List(developers)}"
                : $"{inUse.Count} bottles of developer are in use in {path}, so say which with --bottle; {List(inUse)}");
    }

    private static string List(List<Bottle> bottles) => bottles.Count == 0
        ? "mix one in the app first."
        : $"it has {string.Join(", ", bottles.Take(10).Select(bottle => $"“{bottle.Mixed!.Body.Name}” ({bottle.Id})"))}.";

    private static void Write(Page page, BathReport report)
    {
        var culture = CultureInfo.CurrentCulture;
        page.Line($"{report.Name}, {report.At}");
        var time = report.DevelopSeconds is { } seconds
            ? string.Create(culture, $"{seconds.Middle:0} s at {report.TemperatureCelsius:0.#} °C, could be {seconds.Low:0} to {seconds.High:0} s; first tone after about {report.FirstToneSeconds:0} s")
            : "none: see below";
        var left = report.SheetsLeft;
        page.Table(["", ""],
        [
            ["strength", string.Create(culture, $"{report.Activity.Middle:0.00} of fresh, could be {report.Activity.Low:0.00} to {report.Activity.High:0.00}")],
            ["next sheet", time],
            ["sheets left", left.Low >= SheetsLeft.Horizon ? Many(left.Low) : $"{Many(left.Middle)}, could be {Many(left.Low)} to {Many(left.High)}"],
            ["so far", string.Create(culture, $"{report.SheetsDeveloped} sheets, {report.SquareMetresDeveloped * 1e4:0} cm², {report.AgeHours:0.0} h old, {(report.Open ? "open" : "closed")}")],
            ["volume", string.Create(culture, $"{report.Volume.NowMl:0.#} ml of {report.Volume.CapacityMl:0.#}: {report.Volume.FilledMl:0.#} filled + {report.Volume.AddedMl:0.#} added − {report.Volume.LostMl:0.#} lost − {report.Volume.PouredMl:0.#} poured away")],
            ["learned", report.Developer.Says],
            ["to do", Advice(report.Advice, culture)],
        ]);
        page.Line(report.Advice.LeadsTo);
        if (report.Sheets.Count > 0)
        {
            page.Line();
            page.Table(
                ["sheet", "cm²", "density", "from", "°C", "strength", "asked", "given"],
                report.Sheets.Select(sheet => (IReadOnlyList<string>)
                [
                    sheet.Name ?? sheet.Sheet,
                    sheet.AreaCm2.ToString("0", culture),
                    sheet.MeanDensity.ToString("0.00", culture),
                    sheet.DensityFrom,
                    sheet.TemperatureCelsius.ToString("0.#", culture),
                    sheet.ActivityBefore.ToString("0.00", culture),
                    sheet.DevelopSeconds is { } asked ? string.Create(culture, $"{asked:0} s") : "–",
                    sheet.DevelopedSeconds is { } given ? string.Create(culture, $"{given:0} s") : "–",
                ]));
        }

        foreach (var fixer in report.Fixers)
        {
            page.Line(string.Create(culture, $"{fixer.Name}: fix for {fixer.TimeSeconds:0} s; {fixer.SheetsFixed} sheets, {fixer.SilverGramsPerLitre:0.00} g/l silver; {(fixer.Spent ? "spent, replace it" : $"about {fixer.SheetsLeft} more")}"));
        }

        page.Line();
        foreach (var caution in report.Cautions)
        {
            page.Line(caution);
        }

        foreach (var note in report.Warnings.Concat(report.Remarks))
        {
            page.Note(note);
        }
    }

    private static string Many(int sheets) => sheets >= SheetsLeft.Horizon ? $"{SheetsLeft.Horizon} or more" : sheets.ToString(CultureInfo.CurrentCulture);

    private static string Advice(BathAdviceReport advice, CultureInfo culture) => advice.Action switch
    {
        "use" => "use it: " + advice.Reason,
        "extend" => "lengthen the time: " + advice.Reason,
        "topUp" => string.Create(culture, $"pour {advice.PourMl:0} ml to waste and add {advice.FreshMl:0} ml fresh: {advice.Reason}"),
        _ => "keep it for disposal and mix a fresh one: " + advice.Reason,
    };
}
