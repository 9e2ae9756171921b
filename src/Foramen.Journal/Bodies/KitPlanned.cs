namespace Foramen.Journal.Bodies;

/// <summary>A kit was planned and its packing list kept. Said again of the same kit, the last counts, and nothing of it is packed yet.</summary>
public sealed record KitPlanned() : EntryBody(EntryKind.KitPlanned)
{
    /// <summary>The kit.</summary>
    public required Ulid Kit { get; init; }

    /// <summary>What it is for.</summary>
    public required string Name { get; init; }

    /// <summary>The packing list, line by line, as it was.</summary>
    public required IReadOnlyList<string> Lines { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Required(Name, "the kit's name");
        BodyCheck.Count(Lines, 200, "lines to pack");
        foreach (var line in Lines)
        {
            BodyCheck.Required(line, "a line to pack");
        }
    }
}
