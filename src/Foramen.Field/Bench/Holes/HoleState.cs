using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Exif;
using Foramen.Field.Storage;
using Foramen.Field.Texts;
using Foramen.Field.Units;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Kit;

namespace Foramen.Field.Bench.Holes;

/// <summary>The hole of a camera on a scan: the picture taken, its resolution, what was measured, and what that does in the camera.</summary>
public sealed class HoleState(IPictures pictures, JournalSession session, Ulid camera)
{
    // Larger scans are drawn smaller by the browser first: a hole fills a good part of a scan that was cropped, and phones have little memory.
    private const int LongestSide = 6000;

    private TakenPicture? taken;
    private ScanImage? scan;

    /// <summary>The camera as last described; null where the journal knows none of this id.</summary>
    public CameraDefinition? Camera => session.Ledger.Cameras.Find(camera)?.Current.Body;

    /// <summary>The resolution as typed, pixels to the inch of the whole scan. Another one makes what was measured void.</summary>
    public string DotsPerInch
    {
        get;
        set
        {
            if (value != field)
            {
                (field, Measured, Consequence) = (value, null, null);
            }
        }
    } = "";

    /// <summary>Whether a scan is here.</summary>
    public bool HasScan => scan is not null;

    /// <summary>An address to show the scan by.</summary>
    public string? PictureUrl { get; private set; }

    /// <summary>Width of the decoded scan, pixels: the outline's unit.</summary>
    public int Width => scan?.Width ?? 0;

    /// <summary>Height of the decoded scan, pixels.</summary>
    public int Height => scan?.Height ?? 0;

    /// <summary>What was measured.</summary>
    public HoleMeasurement? Measured { get; private set; }

    /// <summary>What it does in the camera.</summary>
    public HoleConsequence? Consequence { get; private set; }

    /// <summary>The wavelengths that the drawing of sharpness holds for.</summary>
    public static PaperLight Light { get; } = PaperLight.Of(LightColour.Noon.ToSpectrum(), PaperSensitivity.BlueSensitive);

    /// <summary>What is wrong with the scan, or with what is on it.</summary>
    public string? ScanMessage { get; private set; }

    /// <summary>What is wrong with the resolution.</summary>
    public string? ResolutionMessage { get; private set; }

    /// <summary>Takes the file that an input element holds; what it says of its resolution is filled in.</summary>
    public async Task TakeAsync(string inputId)
    {
        ScanMessage = null;
        try
        {
            if (await pictures.TakeAsync(inputId, LongestSide) is not { } picture)
            {
                return;
            }

            (Measured, Consequence) = (null, null);
            taken = picture;
            scan = ScanImage.FromRgba(picture.Width, picture.Height, picture.Rgba);
            PictureUrl = await pictures.AddressOfAsync(picture.ContentHash);
            if (PictureResolution.Read(picture.File) is { IsPlaceholder: false } told)
            {
                DotsPerInch = NumberText.Show(told.Across, 0);
            }
        }
        catch (Exception e) when (e is RefusalException or StoreRefusedException)
        {
            ScanMessage = e.Message;
        }
    }

    /// <summary>Measures the hole; what is wrong stands in the messages.</summary>
    public void Measure()
    {
        (Measured, Consequence, ScanMessage, ResolutionMessage) = (null, null, null, null);
        if (scan is null || taken is null)
        {
            ScanMessage = Words.Holes.NoScan;
            return;
        }

        try
        {
            var stated = NumberText.Read(DotsPerInch, 50, 100_000, "the resolution", "dpi");
            var scale = ScanScale.FromDotsPerInch(Math.Max(50, stated * taken.Width / taken.FullWidth));
            Measure(scale);
        }
        catch (RefusalException e)
        {
            ResolutionMessage = e.Message;
        }
    }

    /// <summary>Works out what the hole does in the camera: some seconds in a browser, because the best hole is searched for.</summary>
    public void Compare()
    {
        if (Measured is not { } hole)
        {
            return;
        }

        try
        {
            var box = Camera!.ToCamera();
            Consequence = HoleConsequence.Of(box, hole.ToHole(box.Hole.EdgeThickness), Light);
        }
        catch (RefusalException e)
        {
            ScanMessage = e.Message;
        }
    }

    /// <summary>Writes the hole into the journal: the camera's next version.</summary>
    /// <exception cref="RefusalException">A value the journal refuses.</exception>
    /// <exception cref="StoreRefusedException">It could not be kept.</exception>
    public async Task UseAsync()
    {
        if (Measured is { } hole)
        {
            await session.AppendAsync(new HoleMeasured
            {
                Camera = camera,
                DiameterMillimetres = hole.Diameter.Millimetres,
                DiameterSdMillimetres = hole.DiameterSd.Millimetres,
                Roundness = hole.Roundness,
                BurrMillimetres = hole.Burr.Millimetres,
                DotsPerInch = NumberText.Read(DotsPerInch, 50, 100_000, "the resolution", "dpi"),
            });
        }
    }

    private void Measure(ScanScale scale)
    {
        try
        {
            Measured = HoleMeter.Measure(scan!, scale);
        }
        catch (RefusalException e)
        {
            ScanMessage = e.Message;
        }
    }
}
