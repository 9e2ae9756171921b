using System.Text.Json;
using Foramen.Engine.Quantities;
using Foramen.Rehearsal.Lines;

namespace Foramen.Rehearsal.Outside;

/// <summary>JSON lines to and from a program outside. Anything it says that cannot be used is refused with its line's number.</summary>
public sealed class LineChannel(TextReader from, TextWriter to)
{
    private const int LongestLine = 1 << 20;

    private int number;

    /// <summary>Says a line.</summary>
    public void Say(RehearsalLine line)
    {
        to.WriteLine(JsonSerializer.Serialize(line, LineJson.Default.RehearsalLine));
        to.Flush();
    }

    /// <summary>Waits for a line of one type.</summary>
    /// <param name="type">Its type as written.</param>
    /// <exception cref="RefusalException">Nothing came, or something else.</exception>
    public T Hear<T>(string type)
        where T : RehearsalLine
    {
        var text = from.ReadLine()
            ?? throw new RefusalException($"The program outside ended after {number} lines, where a line of type {type} was due.");
        number++;
        if (text.Length > LongestLine)
        {
            throw new RefusalException($"Line {number} from outside is longer than a megabyte; a line of type {type} was due.");
        }

        try
        {
            return JsonSerializer.Deserialize(text, LineJson.Default.RehearsalLine) as T
                ?? throw new RefusalException($"Line {number} from outside should be of type {type}.");
        }
        catch (Exception e) when (e is JsonException or NotSupportedException or InvalidOperationException)
        {
            throw new RefusalException($"Line {number} from outside cannot be read as a line of type {type}: {e.Message.Split(" Path:")[0].ReplaceLineEndings(" ").TrimEnd('.')}.", e);
        }
    }
}
