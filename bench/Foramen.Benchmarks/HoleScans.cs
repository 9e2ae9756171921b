using System.Diagnostics;
using System.Globalization;
using System.Text;
using Foramen.Engine.Camera;
using Foramen.Imaging;
using SkiaSharp;

namespace Foramen.Benchmarks;

/// <summary>A hole found and measured on a scan of 100 megapixels, against decoding that scan alone, in the same run.</summary>
internal static class HoleScans
{
    private const int Side = 10_000;
    private const double Radius = 37;
    private const int Rounds = 3;

    public static string Measure()
    {
        var text = new StringBuilder();
        text.AppendLine("# Hole: measured");
        text.AppendLine();
        text.AppendLine(CultureInfo.InvariantCulture, $"{DateTime.UtcNow:yyyy-MM-dd}, {MarkRows.Machine}, `bench/run hole`; medians of {Rounds} rounds taken in turns, load average at the start {MarkRows.Load}; only ratios mean anything elsewhere.");
        text.AppendLine();
        text.AppendLine("| 100-megapixel scan, a hole 74 pixels wide in it | decoded and measured | decoding alone | ratio | should be | diameter found |");
        text.AppendLine("| --- | --- | --- | --- | --- | --- |");
        var marks = new MarkRows(MarkRows.Machine, MarkRows.Load);
        var file = Path.GetTempFileName();
        try
        {
            foreach (var (name, format, colour) in new[]
            {
                ("PNG, grey", SKEncodedImageFormat.Png, false), ("JPEG, grey", SKEncodedImageFormat.Jpeg, false), ("JPEG, colour", SKEncodedImageFormat.Jpeg, true),
            })
            {
                File.WriteAllBytes(file, Encoded(format, colour));
                text.AppendLine(Row(marks, name, file));
            }
        }
        finally
        {
            File.Delete(file);
        }

        return text.Append(marks).ToString();
    }

    private static string Row(MarkRows marks, string name, string file)
    {
        var (whole, alone) = (new double[Rounds], new double[Rounds]);
        var found = 0.0;
        DecodeAlone(file);
        for (var round = 0; round < Rounds; round++)
        {
            alone[round] = Seconds(() => DecodeAlone(file));
            whole[round] = Seconds(() => found = HoleMeter.Measure(ScanReader.Read(file).Scan, ScanScale.FromDotsPerInch(4800)).DiameterPixels);
        }

        Array.Sort(whole);
        Array.Sort(alone);
        marks.Add("hole.scan", $"{name}", $"{whole[Rounds / 2] * 1000:0} ms", $"{alone[Rounds / 2] * 1000:0} ms", $"{whole[Rounds / 2] / alone[Rounds / 2]:0.00}");
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {whole[Rounds / 2] * 1000:0} ms | {alone[Rounds / 2] * 1000:0} ms | {whole[Rounds / 2] / alone[Rounds / 2]:0.00} | ≤ 1.5 | {found:0.00} of {2 * Radius:0.00} pixels |");
    }

    // The decoder by itself, to the same kind of pixels, without a line of ours.
    private static void DecodeAlone(string file)
    {
        using var codec = SKCodec.Create(file);
        using var bitmap = SKBitmap.Decode(codec, codec.Info);
        if (bitmap is null)
        {
            throw new InvalidOperationException("The scan could not be decoded.");
        }
    }

    private static double Seconds(Action work)
    {
        GC.Collect();
        var begun = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(begun).TotalSeconds;
    }

    private static byte[] Encoded(SKEncodedImageFormat format, bool colour)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(Side, Side, colour ? SKColorType.Rgba8888 : SKColorType.Gray8, SKAlphaType.Opaque));
        var chance = new Random(1);
        var (x, y) = (6_123.4, 2_345.6);
        unsafe
        {
            var pixels = (byte*)bitmap.GetPixels();
            for (var row = 0; row < Side; row++)
            {
                for (var column = 0; column < Side; column++)
                {
                    var edge = Math.Clamp(Radius + 0.5 - double.Hypot(column + 0.5 - x, row + 0.5 - y), 0, 1);

                    // Of linear light 0.05 and 0.75, in sRGB codes.
                    var light = 0.05 + (0.70 * edge);
                    var code = (byte)((255 * ((1.055 * Math.Pow(light, 1 / 2.4)) - 0.055)) + chance.Next(-4, 5));
                    var at = ((row * Side) + column) * (colour ? 4 : 1);
                    pixels[at] = code;
                    if (colour)
                    {
                        (pixels[at + 1], pixels[at + 2], pixels[at + 3]) = (code, code, 255);
                    }
                }
            }
        }

        using var data = bitmap.Encode(format, 92);
        return data.ToArray();
    }
}
