using CsCheck;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene;

/// <summary>Small photographs made of known codes.</summary>
internal static class Photographs
{
    /// <summary>Photographs of any codes with a white of 1000 cd/m².</summary>
    public static Gen<ScenePhotograph> Any { get; } = WithCodes(Gen.Byte);

    /// <summary>Photographs whose codes are neither blown nor blocked.</summary>
    public static Gen<ScenePhotograph> WithinRange { get; } = WithCodes(Gen.Byte[3, 253]);

    public static PhotographFacts Exposed(double aperture, double seconds, double iso) => new()
    {
        FNumber = FNumber.FromValue(aperture),
        ExposureTime = Duration.FromSeconds(seconds),
        Speed = CameraSpeed.FromIso(iso),
    };

    public static ScenePhotograph Even(byte red, byte green, byte blue, PhotographFacts? facts = null, int width = 4, int height = 3)
        => FromPixels(width, height, (_, _) => (red, green, blue), facts);

    public static ScenePhotograph FromPixels(
        int width,
        int height,
        Func<int, int, (byte Red, byte Green, byte Blue)> codes,
        PhotographFacts? facts = null)
    {
        var rgba = new byte[4 * width * height];
        for (var i = 0; i < width * height; i++)
        {
            (rgba[4 * i], rgba[(4 * i) + 1], rgba[(4 * i) + 2]) = codes(i % width, i / width);
            rgba[(4 * i) + 3] = 255;
        }

        return new ScenePhotograph(width, height, rgba, facts ?? new PhotographFacts());
    }

    public static ScenePhotograph Anchored(this ScenePhotograph photo, double whiteCandelas = 1000)
        => photo with { WhiteLuminance = Luminance.FromCandelasPerSquareMetre(whiteCandelas) };

    private static Gen<ScenePhotograph> WithCodes(Gen<byte> code) => Gen.Select(Gen.Int[1, 40], Gen.Int[1, 150], Gen.Enum<PhotographColour>())
        .SelectMany((width, height, colour) => code.Array[4 * width * height]
            .Select(rgba => new ScenePhotograph(width, height, rgba, new PhotographFacts { Colour = colour }).Anchored()));
}
