using Foramen.EndToEnd.Stage;

namespace Foramen.EndToEnd;

/// <summary>
/// The store's module in a real browser, with a factory that fails at the k-th request; k is raised until the scenario ends clean, as SQLite's
/// tests do with memory and disk (sqlite.org/testing.html, sections 3.1 and 3.2).
/// </summary>
public sealed class StoreFaultTests(FieldStage stage)
{
    /// <summary>
    /// Three batches of two entries. At request k the store throws (quota), aborts the transaction, or fails the request. What was acknowledged is
    /// there, nothing is there that was not attempted, batches are whole, and the count fits the lines.
    /// </summary>
    [Theory]
    [InlineData("throw", "full")]
    [InlineData("abort", "failed")]
    public async Task Whatever_request_fails_batches_stay_whole_and_acknowledged_lines_stay(string fault, string refusal)
    {
        await using var context = await stage.DesktopAsync();
        var page = await context.NewPageAsync();
        await page.OpenAsync("/");
        var report = await page.EvaluateAsync<FaultReport>(Scenario, new { fault });
        Assert.True(report.FaultsHit >= 8, $"Only {report.FaultsHit} requests were made to fail.");
        Assert.Empty(report.Broken);
        Assert.Contains(refusal, report.Refusals);
    }

    [Fact]
    public async Task Two_tabs_that_write_at_once_never_share_a_number()
    {
        await using var context = await stage.DesktopAsync();
        var one = await context.NewPageAsync();
        var other = await context.NewPageAsync();
        await one.OpenAsync("/");
        await other.OpenAsync("/");
        const string write = """
            async () => {
              const { createStore } = await import('/js/journal-store.js');
              const store = createStore({ name: 'two-tabs' });
              let { sequence } = JSON.parse(await store.open('device'));
              const mine = [];
              while (mine.length < 40) {
                const answer = JSON.parse(await store.append(sequence + 1, `line ${sequence + 1}`));
                if (answer.refusal) { sequence = JSON.parse(await store.readAfter(0)).sequence; } else { mine.push(++sequence); }
              }
              return mine;
            }
            """;
        var both = await Task.WhenAll(one.EvaluateAsync<int[]>(write), other.EvaluateAsync<int[]>(write));
        var all = both.SelectMany(numbers => numbers).Order().ToList();
        Assert.Equal(Enumerable.Range(1, 80), all);
    }

    private const string Scenario =
        """
        async ({ fault }) => {
          const { createStore } = await import('/js/journal-store.js');
          const report = { faultsHit: 0, broken: [], refusals: [] };
          const methods = ['add', 'put', 'get', 'getAll'];
          for (let k = 1; ; k++) {
            const name = `fault-${fault}-${k}`;
            let count = 0, hit = false;
            const originals = {};
            for (const method of methods) {
              originals[method] = IDBObjectStore.prototype[method];
              IDBObjectStore.prototype[method] = function (...args) {
                if (++count === k) {
                  hit = true;
                  if (fault === 'throw') { throw new DOMException('No room.', 'QuotaExceededError'); }
                  const request = originals[method].apply(this, args);
                  this.transaction.abort();
                  return request;
                }
                return originals[method].apply(this, args);
              };
            }
            const acknowledged = [];
            let attempted = [];
            try {
              const store = createStore({ name });
              const opened = JSON.parse(await store.open('device'));
              if (opened.refusal) { report.refusals.push(opened.refusal); }
              let sequence = opened.sequence ?? 0;
              for (let batch = 0; batch < 3; batch++) {
                const lines = [`b${batch}-1`, `b${batch}-2`];
                attempted.push(...lines);
                const answer = JSON.parse(await store.append(sequence + 1, lines.join('\n')));
                if (answer.refusal) { report.refusals.push(answer.refusal); } else { acknowledged.push(...lines); sequence += 2; }
              }
            } finally {
              for (const method of methods) { IDBObjectStore.prototype[method] = originals[method]; }
            }
            const after = JSON.parse(await createStore({ name }).open('device'));
            const present = after.lines.map(line => line.line);
            if (acknowledged.some(line => !present.includes(line))) { report.broken.push(`k=${k}: an acknowledged line is gone`); }
            if (present.some(line => !attempted.includes(line))) { report.broken.push(`k=${k}: a line nobody wrote`); }
            for (let batch = 0; batch < 3; batch++) {
              const half = [1, 2].filter(i => present.includes(`b${batch}-${i}`)).length;
              if (half === 1) { report.broken.push(`k=${k}: half of batch ${batch}`); }
            }
            if (after.sequence !== present.length) { report.broken.push(`k=${k}: count ${after.sequence} for ${present.length} lines`); }
            indexedDB.deleteDatabase(name);
            if (!hit) { return report; }
            report.faultsHit++;
          }
        }
        """;

    internal sealed class FaultReport
    {
        public int FaultsHit { get; set; }

        public string[] Broken { get; set; } = [];

        public string[] Refusals { get; set; } = [];
    }
}
