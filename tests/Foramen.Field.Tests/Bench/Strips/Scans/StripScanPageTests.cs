using Bunit;
using Foramen.Engine.Tests.Print.Scan;
using Foramen.Field.Bench.Strips.Scans;
using Foramen.Field.Storage;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Microsoft.AspNetCore.Components.Web;

namespace Foramen.Field.Tests.Bench.Strips.Scans;

public sealed class StripScanPageTests : IDisposable
{
    // Direct-positive paper gets lighter with more light.
    private static readonly double[] Drawn = [1.62, 1.25, 0.92, 0.56, 0.31, 0.15];
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task Densities_are_read_at_four_corners_and_kept_beside_what_the_eye_saw()
    {
        var (strip, page) = await OpenAsync(RenderedStrip.Rgba(Drawn, falling: 0.2, dust: true));
        await field.Session.AppendAsync(new StripRead { Strip = strip, By = StripReader.Eye, FirstTone = 2, LastTone = 5 });
        page.Find("#strip-scan-edge").Input("20");
        await TouchAllAsync(page);
        Assert.Equal(6, page.FindAll(".edge:not(.under)").Count);
        Assert.Equal(6, page.FindAll("#strip-scan-densities dd").Count);
        await page.Find(".thumb button").ClickAsync(new());
        var read = field.Session.Ledger.Strips.Find(strip)!.Read!.Body;
        Assert.Equal((StripReader.Scan, 2, 5), (read.By, read.FirstTone!.Value, read.LastTone!.Value));
        for (var i = 0; i < Drawn.Length; i++)
        {
            Assert.Equal(Drawn[i], read.Densities![i]!.Value, 0.02 + (0.03 * Drawn[i]));
        }
    }

    // Corner 1 is the least exposed patch's, so the strip turned by half a circle names them from the other end.
    [Fact]
    public async Task Corners_from_the_wrong_end_are_said_beside_the_picture_and_mended_by_touching_them_again()
    {
        var (_, page) = await OpenAsync(RenderedStrip.Rgba([.. Drawn.Reverse()]));
        await TouchAllAsync(page);
        Assert.Contains("upside down", page.Find("#strip-scan-message").TextContent, StringComparison.Ordinal);
        Assert.True(page.Find(".thumb button").HasAttribute("disabled"));
        Assert.Equal(5, page.FindAll(".mark:not(.under)").Count);
        foreach (var (mark, corner) in new[] { (0, 2), (1, 3), (2, 0), (3, 1) })
        {
            await page.Find($"#strip-scan-mark-{mark}").ChangeAsync(new() { Value = "on" });
            await TouchAsync(page, RenderedStrip.Corners[corner].X, RenderedStrip.Corners[corner].Y);
        }

        Assert.Equal("", page.Find("#strip-scan-message").TextContent);
        Assert.False(page.Find(".thumb button").HasAttribute("disabled"));
    }

    [Theory]
    [InlineData("mirrored", 1, 0, 3, 2)]
    [InlineData("four-sided", 0, 2, 1, 3)]
    public async Task Corners_in_another_order_are_said(string containing, params int[] order)
    {
        var (_, page) = await OpenAsync(RenderedStrip.Rgba(Drawn));
        foreach (var corner in order)
        {
            await TouchAsync(page, RenderedStrip.Corners[corner].X, RenderedStrip.Corners[corner].Y);
        }

        Assert.Contains(containing, page.Find("#strip-scan-message").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_clipped_picture_is_said()
    {
        var (_, page) = await OpenAsync(RenderedStrip.Rgba(Drawn, exposure: 1.9));
        await TouchAllAsync(page);
        Assert.Contains("clipped", page.Find("#strip-scan-message").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_density_that_is_none_is_said_beside_its_field_and_the_marks_stay()
    {
        var (_, page) = await OpenAsync(RenderedStrip.Rgba(Drawn));
        await TouchAllAsync(page);
        page.Find("#strip-scan-white").Input("white");
        Assert.Equal("true", page.Find("#strip-scan-white").GetAttribute("aria-invalid"));
        Assert.Empty(page.FindAll("#strip-scan-densities"));
        page.Find("#strip-scan-white").Input("0.08");
        Assert.Equal(6, page.FindAll("#strip-scan-densities dd").Count);
    }

    [Fact]
    public async Task Marks_are_placed_by_keys_too()
    {
        var (_, page) = await OpenAsync(RenderedStrip.Rgba(Drawn));
        await page.Find("#strip-scan-scene").KeyDownAsync(new KeyboardEventArgs { Key = "ArrowLeft" });
        await page.Find("#strip-scan-scene").KeyDownAsync(new KeyboardEventArgs { Key = "ArrowUp", ShiftKey = true });
        var mark = page.Find(".mark:not(.under)");
        Assert.Equal(("313.6", "149.4"), (mark.GetAttribute("cx"), mark.GetAttribute("cy")));
        await page.Find("#strip-scan-scene").KeyDownAsync(new KeyboardEventArgs { Key = "Enter" });
        Assert.True(page.Find("#strip-scan-mark-1").HasAttribute("checked"));
    }

    [Fact]
    public void A_strip_that_is_not_there_is_said()
        => Assert.Contains("no such strip", field.Render<StripScanPage>(p => p.Add(page => page.IdText, "nothing")).Markup, StringComparison.Ordinal);

    // The white is the strip's own edge.
    private async Task TouchAllAsync(IRenderedComponent<StripScanPage> page)
    {
        foreach (var corner in RenderedStrip.Corners)
        {
            await TouchAsync(page, corner.X, corner.Y);
        }

        await TouchAsync(page, 320, 64);
    }

    private async Task TouchAsync(IRenderedComponent<StripScanPage> page, double x, double y)
    {
        field.Platform.Place = (x / RenderedStrip.Width, y / RenderedStrip.Height);
        await page.Find("#strip-scan-scene").ClickAsync(new());
    }

    private async Task<(Ulid Strip, IRenderedComponent<StripScanPage> Page)> OpenAsync(byte[] rgba)
    {
        await field.LoadedSheetAsync();
        var box = Assert.Single(field.Session.Ledger.Papers.All);
        var strip = field.Session.NewId();
        await field.Session.AppendAsync(
            new StripMade { Strip = strip, Paper = box.Id, Purpose = StripPurpose.Curve, OnStripLux = 0.05, LightKelvin = 5503, Seconds = [16, 32, 64, 128, 256, 512] });
        field.Pictures.Next = new TakenPicture(new string('d', 64), "image/png", [1], RenderedStrip.Width, RenderedStrip.Height, RenderedStrip.Width, RenderedStrip.Height, rgba);
        var page = field.Render<StripScanPage>(p => p.Add(one => one.IdText, strip.ToString()));
        await page.Find("#strip-scan").ChangeAsync(new());
        return (strip, page);
    }
}
