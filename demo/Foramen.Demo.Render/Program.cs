using System.Globalization;
using Foramen.Demo.Render;
using SkiaSharp;

if (args is ["lay", var sheet, var laid])
{
    LaidPrint.Write(sheet, laid);
    return;
}

var directory = args.Length > 0 ? args[0] : ".";
Directory.CreateDirectory(Path.Combine(directory, "scans"));
HoleScan.Write(Path.Combine(directory, "scans", "hole.png"));
StripScan.Write(Path.Combine(directory, "scans", "strip.jpg"));
if (args.Contains("scans"))
{
    return;
}

var (width, height, samples) = args.Length > 1 ? (int.Parse(args[1], CultureInfo.InvariantCulture), int.Parse(args[1], CultureInfo.InvariantCulture) * 3 / 4, 2) : (4032, 3024, 2);
foreach (var shot in Shot.All)
{
    var picture = Picture.Of(shot, width, height, samples);
    var codes = picture.Develop(shot.WhiteLuminance);
    using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
    System.Runtime.InteropServices.Marshal.Copy(codes, 0, bitmap.GetPixels(), codes.Length);
    using var encoded = bitmap.Encode(SKEncodedImageFormat.Jpeg, 86);
    await File.WriteAllBytesAsync(Path.Combine(directory, shot.Name + ".jpg"), ExifSegment.InsertInto(encoded.ToArray(), ExifSegment.For(shot)));
    await File.WriteAllTextAsync(Path.Combine(directory, shot.Name + ".truth.json"), Truth.Of(shot, picture) + "\n");
    Console.WriteLine($"{shot.Name}: {encoded.Size / 1024} KB");
}
