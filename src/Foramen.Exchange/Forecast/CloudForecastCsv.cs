using System.Globalization;
using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;

namespace Foramen.Exchange.Forecast;

/// <summary>
/// A forecast of cloud as a plain CSV: a line of headings <c>from,cloud</c>, then an instant with its offset and a chance in per cent, each good until the
/// next line's instant: <c>2024-06-20T09:00:00+02:00,40</c>.
/// </summary>
public static class CloudForecastCsv
{
    /// <summary>Most lines read.</summary>
    public const int MostLines = 10_000;

    private const string Example = "2024-06-20T09:00:00+02:00,40";

    /// <summary>Reads a forecast.</summary>
    /// <exception cref="RefusalException">A line that is none; the sentence says which.</exception>
    public static CloudChance Read(TextReader text)
    {
        var spans = new List<(DateTimeOffset, Probability)>();
        for (var number = 1; text.ReadLine() is { } line; number++)
        {
            if (number > MostLines)
            {
                throw new RefusalException($"The forecast has more than {MostLines} lines; keep those of the outing.");
            }

            if (line.Length > 200)
            {
                throw new RefusalException($"Line {number} of the forecast is no forecast; write it as {Example}.");
            }

            var cells = line.Trim().Trim('\uFEFF').Split(',', StringSplitOptions.TrimEntries);
            if (cells is [""] || (number == 1 && string.Equals(cells[0], "from", StringComparison.OrdinalIgnoreCase)))
            {
                continue;
            }

            if (cells.Length != 2
                || !(cells[0].EndsWith('Z') || (cells[0].Length > 6 && cells[0][^6] is '+' or '-'))
                || !DateTimeOffset.TryParse(cells[0], CultureInfo.InvariantCulture, DateTimeStyles.None, out var from)
                || !double.TryParse(cells[1].TrimEnd('%', ' '), NumberStyles.Float, CultureInfo.InvariantCulture, out var percent)
                || !(percent >= 0 && percent <= 100))
            {
                throw new RefusalException($"Line {number} of the forecast is \"{line.Trim()}\"; write an instant with its offset and a chance of cloud in per cent, such as {Example}.");
            }

            spans.Add((from, Probability.FromFraction(percent / 100)));
        }

        return spans.Count > 0 ? CloudChance.Forecast(spans) : throw new RefusalException($"The forecast is empty; write lines such as {Example}.");
    }
}
