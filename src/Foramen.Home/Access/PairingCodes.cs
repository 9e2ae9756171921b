using System.Security.Cryptography;

namespace Foramen.Home.Access;

/// <summary>
/// Codes by which a device is paired: shown at home, typed or scanned at the device, good once and for ten minutes. The code of a workshop is good for everyone
/// who comes, for four hours. Guessing is slowed for everyone at once, and after some wrong ones no open code holds any more.
/// </summary>
internal sealed class PairingCodes(TimeProvider time)
{
    private const int CodeLength = 10;
    private const int TriesPerMinute = 10;
    private const int WrongTriesThatClose = 30;
    private const int MostOpen = 50;

    // Crockford's base 32: no letter that is read as another.
    private const string Alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static readonly TimeSpan GoodFor = TimeSpan.FromMinutes(10);
    private static readonly TimeSpan WorkshopGoodFor = TimeSpan.FromHours(4);

    private readonly Lock guard = new();
    private readonly Dictionary<string, (DateTimeOffset Until, int? Workshop)> open = new(StringComparer.Ordinal);
    private readonly Queue<DateTimeOffset> tries = new();
    private int wrong;

    /// <summary>A new code, and until when it is good.</summary>
    public (string Code, DateTimeOffset Until) Open() => Draw(GoodFor, null);

    /// <summary>A code to join a workshop by, for everyone; one that was open for it is closed.</summary>
    public (string Code, DateTimeOffset Until) OpenFor(int workshop)
    {
        Close(workshop);
        return Draw(WorkshopGoodFor, workshop);
    }

    /// <summary>Closes the code of a workshop.</summary>
    public void Close(int workshop)
    {
        lock (guard)
        {
            foreach (var code in open.Where(pair => pair.Value.Workshop == workshop).Select(pair => pair.Key).ToList())
            {
                open.Remove(code);
            }
        }
    }

    private (string Code, DateTimeOffset Until) Draw(TimeSpan goodFor, int? workshop)
    {
        lock (guard)
        {
            Forget();
            if (open.Count >= MostOpen)
            {
                open.Remove(open.MinBy(pair => pair.Value.Until).Key);
            }

            var code = RandomNumberGenerator.GetString(Alphabet, CodeLength);
            var until = time.GetUtcNow() + goodFor;
            open.Add(code, (until, workshop));
            wrong = 0;
            return (code, until);
        }
    }

    /// <summary>Uses a code up, or joins by it.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="workshop">The workshop it is for; null where it pairs a device of the household.</param>
    public CodeAnswer Use(string text, out int? workshop)
    {
        workshop = null;
        // As people write it: in small letters, in groups, O for 0, I and L for 1.
        var code = new string([.. text.ToUpperInvariant().Where(char.IsAsciiLetterOrDigit)]).Replace('O', '0').Replace('I', '1').Replace('L', '1');
        lock (guard)
        {
            var now = time.GetUtcNow();
            while (tries.TryPeek(out var first) && now - first > TimeSpan.FromMinutes(1))
            {
                tries.Dequeue();
            }

            if (tries.Count >= TriesPerMinute)
            {
                return CodeAnswer.TooOften;
            }

            Forget();
            if (open.TryGetValue(code, out var found))
            {
                workshop = found.Workshop;
                if (workshop is null)
                {
                    open.Remove(code);
                }

                return CodeAnswer.Good;
            }

            // Only wrong ones: a dozen people may join in the same minute.
            tries.Enqueue(now);

            if (++wrong >= WrongTriesThatClose)
            {
                open.Clear();
            }

            return CodeAnswer.Wrong;
        }
    }

    private void Forget()
    {
        var now = time.GetUtcNow();
        foreach (var code in open.Where(pair => pair.Value.Until <= now).Select(pair => pair.Key).ToList())
        {
            open.Remove(code);
        }
    }
}
