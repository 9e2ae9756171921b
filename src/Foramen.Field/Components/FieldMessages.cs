using Foramen.Engine.Quantities;

namespace Foramen.Field.Components;

/// <summary>Reads what was typed in a form; what cannot be read leaves its sentence beside its field.</summary>
public static class FieldMessages
{
    /// <summary>What was read; NaN where it was refused, and then the sentence stands under the field's name.</summary>
    /// <param name="messages">Sentences by field.</param>
    /// <param name="field">The field.</param>
    /// <param name="read">Reads it, or refuses.</param>
    public static double Try(this Dictionary<string, string> messages, string field, Func<double> read)
    {
        try
        {
            return read();
        }
        catch (RefusalException e)
        {
            messages[field] = e.Message;
            return double.NaN;
        }
    }
}
