using Foramen.Field.Storage;

namespace Foramen.Field.Tests.TestKit;

/// <summary>Pictures as the browser hands them over: the file whole, its pixels small and grey.</summary>
internal static class PictureExamples
{
    /// <summary>The demo's photograph: 4032 × 3024 pixels, 1/1600 s at f/2.2 and ISO 50, 14 mm in terms of 36 × 24 mm.</summary>
    public static TakenPicture CanalBasin()
        => Of(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "demo", "canal-basin.jpg")), 'a');

    /// <summary>A picture whose file says nothing of how it was taken: the eight bytes that begin a PNG (ISO/IEC 15948) and no more.</summary>
    public static TakenPicture WithoutFacts() => Of([137, 80, 78, 71, 13, 10, 26, 10], 'b');

    private static TakenPicture Of(byte[] file, char digit)
    {
        var rgba = new byte[4 * 200 * 150];
        Array.Fill(rgba, (byte)118);
        return new TakenPicture(new string(digit, 64), "image/jpeg", file, 4032, 3024, 200, 150, rgba);
    }
}
