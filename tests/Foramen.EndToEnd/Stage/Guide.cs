using Microsoft.Playwright;

namespace Foramen.EndToEnd.Stage;

/// <summary>The pictures of docs/guide: taken by the journeys with FORAMEN_GUIDE=1.</summary>
internal static class Guide
{
    private static readonly string Pictures = Path.Combine(Repository.Root, "docs", "guide");

    private static bool TakesPictures => Environment.GetEnvironmentVariable("FORAMEN_GUIDE") == "1";

    /// <summary>To the end of the page: there the large action stands where it belongs, and covers nothing.</summary>
    public static async Task ToEndAsync(IPage page) => await page.EvaluateAsync("() => scrollTo(0, document.documentElement.scrollHeight)");

    /// <summary>Takes a picture of a sight, if pictures are wanted.</summary>
    public static async Task PictureAsync(IPage page, string name)
    {
        if (TakesPictures)
        {
            Directory.CreateDirectory(Pictures);
            await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, name + ".jpg"), Type = ScreenshotType.Jpeg, Quality = 85, Animations = ScreenshotAnimations.Disabled });
        }
    }
}
