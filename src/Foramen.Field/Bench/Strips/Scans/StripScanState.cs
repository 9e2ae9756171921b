using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Field.Components;
using Foramen.Field.Storage;
using Foramen.Field.Units;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Strips;

namespace Foramen.Field.Bench.Strips.Scans;

/// <summary>A strip read on a scan or photograph of it: the picture, the marks that were touched, and the densities that follow.</summary>
public sealed class StripScanState
{
    // Patches are averaged over many pixels, so a larger picture would tell no more.
    private const int LongestSide = 2400;

    // Of a patch's width: what is read about a touched place.
    private const double TouchedPart = 0.4;

    private readonly IPictures pictures;
    private readonly JournalSession session;
    private readonly Ulid id;
    private readonly Dictionary<ScanMark, PixelPoint> marks = [];
    private ScanImage? scan;

    /// <summary>A strip of the journal.</summary>
    public StripScanState(IPictures pictures, JournalSession session, Ulid id)
    {
        (this.pictures, this.session, this.id) = (pictures, session, id);
        if (Made is { } made && session.Ledger.Papers.Find(made.Paper)?.Current.Body.ToPaper() is { } paper)
        {
            Kind = paper.Kind;
            WhiteDensity = NumberText.Show(paper.Curve.MinimumDensity.Value);
            BlackDensity = NumberText.Show(paper.Curve.MaximumDensity.Value);
        }
    }

    /// <summary>The strip as it was made; null where the journal knows none of this id.</summary>
    public StripMade? Made => Record?.Made?.Body;

    /// <summary>Negative-working or direct-positive: says which way the patches must run.</summary>
    public PaperKind Kind { get; } = PaperKind.NegativeWorking;

    /// <summary>An address to show the picture by; null where none was chosen.</summary>
    public string? PictureUrl { get; private set; }

    /// <summary>Width of the decoded picture, pixels: the marks' unit.</summary>
    public int Width => scan?.Width ?? 0;

    /// <summary>Its height.</summary>
    public int Height => scan?.Height ?? 0;

    /// <summary>What the next touch places.</summary>
    public ScanMark Chosen { get; set; }

    /// <summary>What was touched.</summary>
    public IReadOnlyDictionary<ScanMark, PixelPoint> Marks => marks;

    /// <summary>Density of the white.</summary>
    public string WhiteDensity { get; private set; } = "0.08";

    /// <summary>Density of the black.</summary>
    public string BlackDensity { get; private set; } = "1.98";

    /// <summary>Paper white along the top of what the corners mark, percent of the height.</summary>
    public string WhiteEdge { get; private set; } = "0";

    /// <summary>The patches' outlines in pixels, once there are four corners: four points each.</summary>
    public IReadOnlyList<IReadOnlyList<(double X, double Y)>> Patches { get; private set; } = [];

    /// <summary>Density of each patch, least exposed first; empty until it can be told.</summary>
    public IReadOnlyList<double> Densities { get; private set; } = [];

    /// <summary>What is wrong with the picture, or with what is on it.</summary>
    public string? ScanMessage { get; private set; }

    /// <summary>What is wrong, by field.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    private StripRecord? Record => session.Ledger.Strips.Find(id);

    /// <summary>Takes the file that an input element holds. Another picture has no marks yet.</summary>
    public async Task TakeAsync(string inputId)
    {
        ScanMessage = null;
        try
        {
            if (await pictures.TakeAsync(inputId, LongestSide) is not { } picture)
            {
                return;
            }

            scan = ScanImage.FromRgba(picture.Width, picture.Height, picture.Rgba);
            PictureUrl = await pictures.AddressOfAsync(picture.ContentHash);
            marks.Clear();
            Chosen = ScanMark.UpperLeast;
            Look();
        }
        catch (Exception e) when (e is RefusalException or StoreRefusedException)
        {
            ScanMessage = e.Message;
        }
    }

    /// <summary>Places the chosen mark, and turns to the next that is missing.</summary>
    /// <param name="x">0 at the left edge of the picture to 1 at the right.</param>
    /// <param name="y">0 at the top to 1 at the bottom.</param>
    public void Touch(double x, double y)
    {
        Place(x, y);
        Next();
    }

    /// <summary>Moves the chosen mark by parts of the picture's width and height; from the middle where it has not been placed.</summary>
    public void Move(double right, double down)
    {
        var from = marks.TryGetValue(Chosen, out var at) ? (at.X / Width, at.Y / Height) : (0.5, 0.5);
        Place(from.Item1 + right, from.Item2 + down);
    }

    /// <summary>Turns to the next mark that is missing.</summary>
    public void Next()
    {
        var missing = Enum.GetValues<ScanMark>().Where(mark => !marks.ContainsKey(mark)).ToList();
        Chosen = missing.Count > 0 ? missing[0] : Chosen;
    }

    /// <summary>Takes what was typed for a field.</summary>
    public void Type(string field, string text)
    {
        switch (field)
        {
            case nameof(WhiteDensity):
                WhiteDensity = text;
                break;
            case nameof(BlackDensity):
                BlackDensity = text;
                break;
            default:
                WhiteEdge = text;
                break;
        }

        Look();
    }

    /// <summary>Writes the densities down; what was read by eye before is kept.</summary>
    /// <exception cref="RefusalException">A value the journal refuses.</exception>
    /// <exception cref="StoreRefusedException">It could not be kept.</exception>
    public async Task KeepAsync()
    {
        if (Densities.Count == 0 || Record is not { Made.Body: { } made } record)
        {
            return;
        }

        var densities = Densities.Select(density => (double?)Math.Round(density, 3)).ToList();
        var read = (record.Read?.Body ?? new StripRead { Strip = id, By = StripReader.Scan }) with { By = StripReader.Scan, Densities = densities, DensitySd = null };
        made.ToStrip(read).Check();
        await session.AppendAsync(read);
    }

    private void Place(double x, double y)
    {
        if (scan is not null)
        {
            marks[Chosen] = PixelPoint.At(Math.Clamp(x, 0, 1) * Width, Math.Clamp(y, 0, 1) * Height);
            Look();
        }
    }

    private void Look()
    {
        (Patches, Densities, ScanMessage) = ([], [], null);
        Messages.Clear();
        if (scan is null || Made is not { } made
            || !marks.TryGetValue(ScanMark.UpperLeast, out var upperLeast) || !marks.TryGetValue(ScanMark.UpperMost, out var upperMost)
            || !marks.TryGetValue(ScanMark.LowerMost, out var lowerMost) || !marks.TryGetValue(ScanMark.LowerLeast, out var lowerLeast))
        {
            return;
        }

        var edge = Messages.Try(nameof(WhiteEdge), () => NumberText.Read(WhiteEdge, 0, 50, "the white edge", "%")) / 100;
        if (Messages.Count > 0)
        {
            return;
        }

        try
        {
            var map = Homography.Through(upperLeast, upperMost, lowerMost, lowerLeast);
            Patches = [.. Enumerable.Range(0, made.Seconds.Count).Select(i => Outline(map, i / (double)made.Seconds.Count, (i + 1) / (double)made.Seconds.Count, edge))];
            var height = upperLeast.DistanceTo(lowerLeast) + upperMost.DistanceTo(lowerMost);
            var shape = (upperLeast.DistanceTo(upperMost) + lowerLeast.DistanceTo(lowerMost)) / height;
            var known = Known(map, TouchedPart / made.Seconds.Count, Math.Min(1, shape * TouchedPart / made.Seconds.Count));
            if (Messages.Count == 0 && known.Count > 0)
            {
                Densities = [.. StripScan.Read(scan, map, made.Seconds.Count, Kind, known, edge).Densities.Select(density => density.Value)];
            }
        }
        catch (RefusalException e)
        {
            ScanMessage = e.Message;
        }
    }

    private static (double X, double Y)[] Outline(Homography map, double left, double right, double top)
        => [map.Map(left, top), map.Map(right, top), map.Map(right, 1), map.Map(left, 1)];

    // The white must be there: without any known grey nothing says what a code stands for.
    private List<(PatchArea Area, Density Density)> Known(Homography map, double width, double height)
    {
        var known = new List<(PatchArea, Density)>();
        void Add(ScanMark mark, string field, string text, string what)
        {
            if (marks.TryGetValue(mark, out var at))
            {
                var density = Messages.Try(field, () => NumberText.Read(text, 0, 4, what));
                if (double.IsFinite(density))
                {
                    known.Add((PatchArea.Around(map.PlaceOf(at), width, height), Density.FromValue(density)));
                }
            }
        }

        Add(ScanMark.White, nameof(WhiteDensity), WhiteDensity, "the density of the white");
        Add(ScanMark.Black, nameof(BlackDensity), BlackDensity, "the density of the black");
        return marks.ContainsKey(ScanMark.White) ? known : [];
    }
}
