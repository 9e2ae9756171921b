using System.Text;
using System.Text.Json;
using Foramen.Field.Device;
using Foramen.Field.Storage;
using Foramen.Field.Texts;
using Foramen.Field.Time;
using Foramen.Journal.Bodies;
using Foramen.Journal.Exchange;
using Foramen.Journal.Fold;
using Foramen.Journal.Sync;

namespace Foramen.Field.Homes;

/// <summary>
/// Keeps this device and the Home behind its address in step, in the background: soon after something was written, when the page is shown again, and every
/// half minute. Never while a hole is open or a bath is running, and no page waits for it.
/// </summary>
public sealed class HomeTie(JournalSession session, IJournalStore store, IHomeLink link, IPlatform platform, Clock clock, TimeProvider time) : IDisposable
{
    private const string Note = "home";
    private const int MostPicturesAtOnce = 20;
    private static readonly TimeSpan Soon = TimeSpan.FromSeconds(2);
    private static readonly TimeSpan Often = TimeSpan.FromSeconds(30);

    private readonly SyncDevice device = new(session);

    // Pictures that Home had not when it was last asked; they must not keep it from being asked for others.
    private readonly HashSet<string> notThere = new(StringComparer.Ordinal);
    private (Ledger Ledger, IReadOnlyList<string> Hashes)? pictures;
    private ITimer? timer;
    private KeptTie tie = new("", 0, "", null);
    private bool started;
    private bool meeting;

    /// <summary>How this device stands with Home.</summary>
    public HomeAccess Access { get; private set; }

    /// <summary>Whether other devices can reach this Home.</summary>
    public bool ServesOthers { get; private set; }

    /// <summary>The workshop this device is a member of; null for none.</summary>
    public string? Workshop { get; private set; }

    /// <summary>Whether workshops may be led from here.</summary>
    public bool Leads => ServesOthers && Workshop is null && Access is HomeAccess.Own or HomeAccess.Paired;

    /// <summary>When both last held the same; null for never.</summary>
    public DateTimeOffset? LastMet => tie.LastMet;

    /// <summary>Why the last meeting ended early; null where it did not.</summary>
    public HomeRefusedException? Trouble { get; private set; }

    /// <summary>Whether they are meeting now.</summary>
    public bool IsMeeting => meeting;

    /// <summary>Entries of this device that Home could not read.</summary>
    public int Unsendable { get; private set; }

    /// <summary>Something of this has changed.</summary>
    public event Action? Changed;

    private bool MayAsk => Access is HomeAccess.Own or HomeAccess.Paired;

    /// <summary>How many entries Home has not acknowledged, and how many sheets they speak of.</summary>
    public (int Entries, int Sheets) NotAtHome()
    {
        var unsent = session.Unsent(device.Mark.Origin, device.Mark.SentThrough);
        return (unsent.Count, unsent.Select(one => one.Entry.ReadBody().Body).OfType<SheetBody>().Select(body => body.Sheet).Distinct().Count());
    }

    /// <summary>Begins, once; where the store refuses, as soon as it opens after all. Does not throw and nothing needs to wait for it.</summary>
    public async Task StartAsync()
    {
        if (started)
        {
            return;
        }

        started = true;
        await session.OpenAsync();
        session.Changed -= OnOpened;
        if (!session.IsOpen)
        {
            // The store may open at a later try.
            session.Changed += OnOpened;
            started = false;
            return;
        }

        device.Kept = KeepAsync;
        tie = Read(await store.ReadNoteAsync(Note)) ?? tie;
        device.Mark = SyncMark.FromJson(tie.Mark);
        session.Changed += OnWritten;
        platform.Returned += OnReturned;
        timer = time.CreateTimer(_ => _ = MeetAsync(), null, Often, Often);
        // While something runs they do not meet; what is known from before is said at once.
        Changed?.Invoke();
        await MeetAsync();
    }

    /// <summary>Meets Home now, if it is there and nothing is running. Does not throw: see <see cref="Trouble"/>.</summary>
    public async Task MeetAsync()
    {
        if (meeting || !started || !link.MayMeet || Running.Any(session.Ledger))
        {
            return;
        }

        meeting = true;
        Changed?.Invoke();
        try
        {
            await AskAsync();
            if (MayAsk)
            {
                var report = await SyncRound.RunAsync(device, new HomeMeeting(link, tie.Token));
                Unsendable += report.Unsendable;
                tie = tie with { LastMet = clock.Now };
                await KeepAsync(device.Mark);
                await PicturesAsync();
            }

            Trouble = null;
        }
        catch (HomeRefusedException e)
        {
            Trouble = e;
            Access = e.Why == HomeRefusal.NotPaired ? HomeAccess.Needed : Access;
        }
        catch (Exception e) when (e is StoreRefusedException or JsonException)
        {
            Trouble = new HomeRefusedException(HomeRefusal.Failed, e.Message, cause: e);
        }
        finally
        {
            meeting = false;
            Changed?.Invoke();
        }
    }

    /// <summary>Pairs this device by a code shown at home.</summary>
    /// <exception cref="HomeRefusedException">It did not come to that.</exception>
    public async Task PairAsync(string code, string name)
    {
        var answer = HomeMeeting.Good(
            await link.AskAsync("POST", "api/pair", "", "application/json", JsonSerializer.Serialize(new PairWish(code, name), HomeAnswers.Default.PairWish)), "application/json");
        var paired = JsonSerializer.Deserialize(answer, HomeAnswers.Default.PairedWords)!;
        tie = tie with { Token = paired.Token, Device = paired.Device };
        // What it is a member of is known before anyone asks whether it may lead.
        Workshop = paired.Workshop;
        Access = HomeAccess.Paired;
        await KeepAsync(device.Mark);
        await MeetAsync();
    }

    /// <summary>Ends the pairing: Home forgets the token, this device keeps its journal.</summary>
    public async Task LeaveAsync()
    {
        await link.AskAsync("DELETE", $"api/devices/{tie.Device}", tie.Token);
        tie = tie with { Token = "", Device = 0 };
        Access = HomeAccess.Needed;
        Workshop = null;
        await KeepAsync(device.Mark);
        Changed?.Invoke();
    }

    /// <summary>The workshops of this Home; for leaders.</summary>
    /// <exception cref="HomeRefusedException">They cannot be read.</exception>
    public async Task<IReadOnlyList<Workshop>> WorkshopsAsync()
        => JsonSerializer.Deserialize(HomeMeeting.Good(await link.AskAsync("GET", "api/workshops", tie.Token), "application/json"), HomeAnswers.Default.IReadOnlyListWorkshop)!;

    /// <summary>Opens a workshop.</summary>
    /// <exception cref="HomeRefusedException">It did not come to that.</exception>
    public async Task<Workshop> OpenWorkshopAsync(string name) => JsonSerializer.Deserialize(
        HomeMeeting.Good(
            await link.AskAsync("POST", "api/workshops", tie.Token, "application/json", JsonSerializer.Serialize(new WorkshopWish(name), HomeAnswers.Default.WorkshopWish)), "application/json"),
        HomeAnswers.Default.Workshop)!;

    /// <summary>A code for everyone who joins; the one before it is good no more.</summary>
    /// <exception cref="HomeRefusedException">There is none.</exception>
    public async Task<PairingCode> WorkshopCodeAsync(int id)
        => JsonSerializer.Deserialize(HomeMeeting.Good(await link.AskAsync("POST", $"api/workshops/{id}/code", tie.Token), "application/json"), HomeAnswers.Default.PairingCode)!;

    /// <summary>Ends a workshop: no member meets Home any more.</summary>
    /// <exception cref="HomeRefusedException">It did not come to that.</exception>
    public async Task EndWorkshopAsync(int id) => HomeMeeting.Done(await link.AskAsync("DELETE", $"api/workshops/{id}", tie.Token));

    /// <summary>A code for another device; at home only.</summary>
    /// <exception cref="HomeRefusedException">There is none.</exception>
    public async Task<PairingCode> NewCodeAsync()
        => JsonSerializer.Deserialize(HomeMeeting.Good(await link.AskAsync("POST", "api/codes", tie.Token), "application/json"), HomeAnswers.Default.PairingCode)!;

    /// <summary>The devices that are paired; at home only.</summary>
    /// <exception cref="HomeRefusedException">They cannot be read.</exception>
    public async Task<IReadOnlyList<HomeDevice>> DevicesAsync()
        => JsonSerializer.Deserialize(HomeMeeting.Good(await link.AskAsync("GET", "api/devices", tie.Token), "application/json"), HomeAnswers.Default.IReadOnlyListHomeDevice)!;

    /// <summary>Takes a device's token back; at home only, a member's by every leader.</summary>
    /// <exception cref="HomeRefusedException">It did not come to that.</exception>
    public async Task RemoveAsync(int id) => HomeMeeting.Done(await link.AskAsync("DELETE", $"api/devices/{id}", tie.Token));

    /// <inheritdoc/>
    public void Dispose()
    {
        session.Changed -= OnOpened;
        session.Changed -= OnWritten;
        platform.Returned -= OnReturned;
        timer?.Dispose();
    }

    private async Task AskAsync()
    {
        var answer = await link.AskAsync("GET", "api/home", tie.Token);
        if (answer.Status == 0)
        {
            throw new HomeRefusedException(HomeRefusal.Away, Words.Homes.Away);
        }

        try
        {
            var words = answer.Is("application/json") ? JsonSerializer.Deserialize(answer.Text, HomeAnswers.Default.HomeWords) : null;
            ServesOthers = words?.ServesOthers ?? false;
            Workshop = words?.Workshop;
            Access = words switch
            {
                _ when answer.Status == 401 => HomeAccess.Needed,
                { ForamenHome: 1, Access: "own" } => HomeAccess.Own,
                { ForamenHome: 1, Access: "paired" } => HomeAccess.Paired,
                { ForamenHome: 1, Access: "needed" } => HomeAccess.Needed,
                // A host of files, a page that a network puts in between: no Home, today.
                _ => HomeAccess.None,
            };
        }
        catch (JsonException)
        {
            Access = HomeAccess.None;
        }
    }

    private async Task PicturesAsync()
    {
        var spoken = Spoken();
        var here = await link.KeptPicturesAsync(spoken);
        var missing = spoken.Except(here).ToList();
        if (missing.TrueForAll(notThere.Contains))
        {
            // Asked for all of them once: from the newest again, for others may have brought them since.
            notThere.Clear();
        }

        foreach (var hash in missing.Where(hash => !notThere.Contains(hash)).Take(MostPicturesAtOnce).ToList())
        {
            if (Running.Any(session.Ledger))
            {
                return;
            }

            if (!await link.FetchPictureAsync(hash, tie.Token))
            {
                notThere.Add(hash);
            }
        }

        foreach (var part in here.Chunk(1_000))
        {
            var wanted = HomeMeeting.Good(
                await link.AskAsync("POST", "api/pictures/missing", tie.Token, "application/json", JsonSerializer.Serialize(new PictureHashes(part), HomeAnswers.Default.PictureHashes)),
                "application/json");
            foreach (var hash in JsonSerializer.Deserialize(wanted, HomeAnswers.Default.PictureHashes)!.Hashes.Take(MostPicturesAtOnce))
            {
                if (Running.Any(session.Ledger) || !await link.SendPictureAsync(hash, tie.Token))
                {
                    return;
                }
            }
        }
    }

    // The pictures that the journal speaks of, the newest first: those are looked at. Read anew only when the journal has changed.
    private IReadOnlyList<string> Spoken()
    {
        if (pictures is not { } known || !ReferenceEquals(known.Ledger, session.Ledger))
        {
            pictures = known = (session.Ledger, [.. session.Ledger.Entries.InOrder.Reverse().Select(item => item.Entry.ReadBody().Body switch
            {
                PhotographAdded photograph => photograph.ContentHash,
                ScanAdded scan => scan.ContentHash,
                _ => null,
            }).OfType<string>().Distinct()]);
        }

        return known.Hashes;
    }

    private Task KeepAsync(SyncMark mark)
    {
        tie = tie with { Mark = mark.ToJson() };
        return store.KeepNoteAsync(Note, JsonSerializer.Serialize(tie, HomeAnswers.Default.KeptTie));
    }

    private static KeptTie? Read(string note)
    {
        try
        {
            return note.Length == 0 ? null : JsonSerializer.Deserialize(note, HomeAnswers.Default.KeptTie);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private void OnWritten()
    {
        Changed?.Invoke();
        if (MayAsk && !meeting)
        {
            timer?.Change(Soon, Often);
        }
    }

    private void OnOpened() => _ = StartAsync();

    private void OnReturned() => _ = MeetAsync();

    /// <summary>This device's store, as the meeting wants it.</summary>
    private sealed class SyncDevice(JournalSession session) : ISyncDevice
    {
        public SyncMark Mark { get; set; } = SyncMark.Never;

        public Func<SyncMark, Task> Kept { get; set; } = _ => Task.CompletedTask;

        public Task<IReadOnlyList<UnsentEntry>> UnsentAsync(string origin, long afterPosition, int most)
            => Task.FromResult<IReadOnlyList<UnsentEntry>>(
                [.. session.Unsent(origin, afterPosition, most).Select(one => new UnsentEntry(one.Position, Encoding.UTF8.GetBytes(EntryLine.Write(one.Entry))))]);

        public Task TakeInAsync(IReadOnlyList<BatchLine> lines, string origin) => session.TakeInAsync([.. lines.Select(line => line.Entry)], origin);

        public async Task SaveMarkAsync(SyncMark mark)
        {
            await Kept(mark);
            Mark = mark;
        }
    }
}
