namespace Foramen.Field.Components;

/// <summary>Ids that tie a field to what is said about it.</summary>
internal static class FieldIds
{
    public static string Hint(string id) => id + "-hint";

    public static string Message(string id) => id + "-message";

    public static string Unit(string id) => id + "-unit";

    public static string? Describing(string id, string? hint, string? message, string? unit = null)
    {
        var ids = new[] { unit is null ? null : Unit(id), hint is null ? null : Hint(id), message is null ? null : Message(id) };
        var text = string.Join(' ', ids.Where(one => one is not null));
        return text.Length == 0 ? null : text;
    }
}
