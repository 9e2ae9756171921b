using System.Text;
using System.Text.Json;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;

namespace Foramen.Journal.Sync;

/// <summary>What an entry is about, read from its raw body so that it also holds for kinds and versions this code does not know.</summary>
public static class EntryTopic
{
    /// <summary>The entry that a voiding or an amendment is about; the sheet that any other entry speaks of; null where there is neither.</summary>
    public static Ulid? Of(Entry entry)
    {
        var corrects = entry.Kind is EntryKind.EntryVoided or EntryKind.EntryAmended;

        // Most bodies without the word need no reading; one with an escape may spell it in another way.
        var wanted = corrects ? "entry" : "sheet";
        if (!entry.Body.Contains($"\"{wanted}\"", StringComparison.Ordinal) && !entry.Body.Contains('\\'))
        {
            return null;
        }

        var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(entry.Body), new JsonReaderOptions { MaxDepth = Entry.MaxDepth });
        Ulid? topic = null;
        while (reader.Read())
        {
            if (reader.TokenType != JsonTokenType.PropertyName || reader.CurrentDepth != 1)
            {
                continue;
            }

            var asked = JsonText.OrNull(ref reader) == wanted;
            reader.Read();
            if (asked)
            {
                // Said twice, the last counts, as where bodies are read.
                topic = reader.TokenType == JsonTokenType.String && Ulid.TryParse(JsonText.OrNull(ref reader), out var id) ? id : null;
            }
        }

        return topic;
    }
}
