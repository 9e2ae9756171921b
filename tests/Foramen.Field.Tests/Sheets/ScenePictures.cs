using Foramen.Field.Sheets;
using Foramen.Field.Storage;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Tests.Sheets;

/// <summary>A photograph whose left half is code 118 and whose right half is code 186: by the sRGB transfer 0.1812 and 0.4910 of full, 1.44 stops apart.</summary>
internal static class ScenePictures
{
    public const string Hash = "0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f0f";

    public static async Task AddAsync(FieldContext field, SheetState sheet, bool withExposure = true)
    {
        const int Width = 120, Height = 90;
        var rgba = new byte[4 * Width * Height];
        for (var i = 0; i < Width * Height; i++)
        {
            var code = (byte)(i % Width < Width / 2 ? 118 : 186);
            (rgba[4 * i], rgba[(4 * i) + 1], rgba[(4 * i) + 2], rgba[(4 * i) + 3]) = (code, code, code, 255);
        }

        field.Pictures.Next = new TakenPicture(Hash, "image/jpeg", [1], Width, Height, Width, Height, rgba);
        await field.Session.AppendAsync(
            new PhotographAdded
            {
                Sheet = sheet.Id, ContentHash = Hash, WidthPixels = Width, HeightPixels = Height, MediaType = "image/jpeg",
                Facts = new PhotographedHow
                {
                    ExposureSeconds = withExposure ? 1 / 500.0 : null, FNumber = 2, IsoSpeed = 50, FocalLength35Millimetres = 14,
                },
            },
            new FrameChosen { Sheet = sheet.Id, Orientation = SheetOrientation.Level });
    }
}
