using System.Text.Json;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>An entry has another body from now on; where there are several, the last in order counts. Voiding the amendment brings the older body back.</summary>
public sealed record EntryAmended() : EntryBody(EntryKind.EntryAmended)
{
    /// <summary>The entry that is amended.</summary>
    public required Ulid Entry { get; init; }

    /// <summary>Its new body, of the same kind and schema version.</summary>
    public required JsonElement Body { get; init; }

    /// <summary>Why.</summary>
    public string? Why { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        if (Body.ValueKind != JsonValueKind.Object)
        {
            throw new RefusalException("The new body should be one JSON object, from { to }.");
        }

        BodyCheck.Note(Why);
    }
}
