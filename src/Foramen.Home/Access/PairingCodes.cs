using System.Security.Cryptography;

namespace Foramen.Home.Access;

/// <summary>
/// Codes by which a device is paired: shown at home, typed or scanned at the device, good once and for ten minutes. Guessing is slowed for everyone at
/// once, and after some wrong ones no open code holds any more.
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

    private readonly Lock guard = new();
    private readonly Dictionary<string, DateTimeOffset> open = new(StringComparer.Ordinal);
    private readonly Queue<DateTimeOffset> tries = new();
    private int wrong;

    /// <summary>A new code, and until when it is good.</summary>
    public (string Code, DateTimeOffset Until) Open()
    {
        lock (guard)
        {
            Forget();
            if (open.Count >= MostOpen)
            {
                open.Remove(open.MinBy(pair => pair.Value).Key);
            }

            var code = RandomNumberGenerator.GetString(Alphabet, CodeLength);
            var until = time.GetUtcNow() + GoodFor;
            open.Add(code, until);
            wrong = 0;
            return (code, until);
        }
    }

    /// <summary>Uses a code up.</summary>
    public CodeAnswer Use(string text)
    {
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

            tries.Enqueue(now);
            Forget();
            if (open.Remove(code))
            {
                return CodeAnswer.Good;
            }

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
        foreach (var code in open.Where(pair => pair.Value <= now).Select(pair => pair.Key).ToList())
        {
            open.Remove(code);
        }
    }
}
