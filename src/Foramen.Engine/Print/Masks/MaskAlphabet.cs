using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>
/// A stencil alphabet of strokes on a grid of 4 × 6: capitals, figures and a few signs. Every letter is open somewhere, so nothing falls out where letters are cut out of
/// card; and it is the same at the prompt, in the browser and without any font.
/// </summary>
internal static class MaskAlphabet
{
    private const double StrokeWidth = 0.8;
    private const double Advance = 5.6;
    private const int MostLetters = 40;
    private const int CapPoints = 8;

    // A stroke is places "xy" in tenths of nothing: digits 0 to 8 count half units across and up, so "08" is the upper left corner of a letter 4 wide and 6 high … see Place.
    private static readonly Dictionary<char, string> Strokes = new()
    {
        ['A'] = "00 1c 3c 40,15 25", ['B'] = "00 0c 3c 4b 47 36,20 30 41 45,16 26", ['C'] = "4b 3c 1c 0b 01 10 30 41", ['D'] = "20 30 41 4b 3c 0c 00",
        ['E'] = "4c 0c 00 40,06 36", ['F'] = "4c 0c 00,06 36", ['G'] = "4b 3c 1c 0b 01 10 30 41 46 26", ['H'] = "00 0c,40 4c,06 46", ['I'] = "20 2c",
        ['J'] = "4c 41 30 10 01 03", ['K'] = "00 0c,4c 06 40", ['L'] = "0c 00 40", ['M'] = "00 0c 26 4c 40", ['N'] = "00 0c 40 4c",
        ['O'] = "10 01 0b 1c 3c 4b 41 30", ['P'] = "00 0c 3c 4b 47 36 26", ['Q'] = "10 01 0b 1c 3c 4b 41,23 40", ['R'] = "00 0c 3c 4b 47 36 26,26 40",
        ['S'] = "4b 3c 1c 0b 07 16 36 45 41 30 10 01", ['T'] = "0c 4c,2c 20", ['U'] = "0c 01 10 30 41 4c", ['V'] = "0c 20 4c", ['W'] = "0c 10 26 30 4c",
        ['X'] = "00 4c,0c 40", ['Y'] = "0c 26 4c,26 20", ['Z'] = "0c 4c 00 40",
        ['0'] = "10 01 0b 1c 3c 4b 41 30", ['1'] = "0a 2c 20", ['2'] = "0b 1c 3c 4b 48 00 40", ['3'] = "0b 1c 3c 4b 47 36 26,36 45 41 30 10 01", ['4'] = "30 3c 04 14",
        ['5'] = "4c 0c 07 36 45 41 30 10 01", ['6'] = "4b 3c 1c 0b 01 10 30 41 45 36 26", ['7'] = "0c 4c 10", ['8'] = "17 08 0b 1c 3c 4b 48 37,25 36 44 41 30 10 01 04",
        ['9'] = "27 17 08 0b 1c 3c 4b 41 30 10", ['-'] = "06 46", ['.'] = "20 20", [','] = "10 21", ['!'] = "24 2c,20 20", ['?'] = "0b 1c 3c 4b 48 26 25,20 20", ['&'] = "40 09 0b 1c 2c 3b 39,03 01 10 20 42",
        ['+'] = "06 46,23 29", ['/'] = "00 4c", ['\''] = "2c 29", [':'] = "22 22,28 28",
    };

    /// <summary>The outlines of a text's strokes, each a bar with round ends.</summary>
    public static List<IReadOnlyList<(double X, double Y)>> Rings(string text)
    {
        var letters = (text ?? "").Trim().ToUpperInvariant();
        if (letters.Length is 0 or > MostLetters)
        {
            throw new RefusalException(letters.Length == 0
                ? "The mask's text is empty; write a word."
                : $"The mask's text has {letters.Length} letters; {MostLetters} fit at most.");
        }

        var rings = new List<IReadOnlyList<(double X, double Y)>>();
        for (var i = 0; i < letters.Length; i++)
        {
            if (letters[i] == ' ')
            {
                continue;
            }

            if (!Strokes.TryGetValue(letters[i], out var glyph))
            {
                throw new RefusalException($"The mask's alphabet has no “{letters[i]}”; it has A to Z, 0 to 9 and . , - + / ' : ! ? &.");
            }

            foreach (var stroke in glyph.Split(','))
            {
                var places = stroke.Split(' ').Select(pair => Place(pair, i * Advance)).ToList();
                for (var j = 0; j + 1 < places.Count; j++)
                {
                    rings.Add(Bar(places[j], places[j + 1]));
                }
            }
        }

        return rings;
    }

    // Across in units, up in half units to c = 12.
    private static (double X, double Y) Place(string pair, double left)
        => (left + (pair[0] - '0'), (pair[1] is 'a' or 'b' or 'c' ? pair[1] - 'a' + 10 : pair[1] - '0') / 2.0);

    private static List<(double X, double Y)> Bar((double X, double Y) from, (double X, double Y) to)
    {
        var along = Math.Atan2(to.Y - from.Y, to.X - from.X);
        var ring = new List<(double X, double Y)>(2 * (CapPoints + 1));
        for (var i = 0; i <= CapPoints; i++)
        {
            ring.Add(Cap(to, along - (Math.PI / 2) + (Math.PI * i / CapPoints)));
        }

        for (var i = 0; i <= CapPoints; i++)
        {
            ring.Add(Cap(from, along + (Math.PI / 2) + (Math.PI * i / CapPoints)));
        }

        return ring;
    }

    private static (double X, double Y) Cap((double X, double Y) place, double angle)
        => (place.X + (StrokeWidth / 2 * Math.Cos(angle)), place.Y + (StrokeWidth / 2 * Math.Sin(angle)));
}
