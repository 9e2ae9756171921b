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
        if (!entry.Body.Contains(corrects ? "\"entry\"" : "\"sheet\"", StringComparison.Ordinal) && !entry.Body.Contains('\\'))
        {
            return null;
        }

        var wanted = corrects ? "entry"u8 : "sheet"u8;
        var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(entry.Body), new JsonReaderOptions { MaxDepth = Entry.MaxDepth });
        Ulid? topic = null;
        while (reader.Read())
        {
            if (reader.TokenType != JsonTokenType.PropertyName || reader.CurrentDepth != 1)
            {
                continue;
            }

            var asked = reader.ValueTextEquals(wanted);
            reader.Read();
            if (asked)
            {
                // Said twice, the last counts, as where bodies are read.
                topic = reader.TokenType == JsonTokenType.String && Ulid.TryParse(reader.GetString(), out var id) ? id : null;
            }
        }

        return topic;
    }
}
