using System.Buffers;
using System.Numerics.Tensors;
using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>
/// The light that falls on the sheet while the hole is open: the scene in the sheet's perspective, darkened towards the corners and softened by
/// the hole's spot. It does not depend on times, so it is made once and exposed many times. Immutable.
/// </summary>
public sealed class SheetImage
{
    // Pixels from the middle of the spot to where most of its light is inside. More would cost time with the square of the number and show nothing: the image
    // has no finer detail.
    private const double MostPixelsToTheSpot = 16;

    private readonly float[] illuminance;
    private readonly byte[]? known;
    private readonly SheetMesh mesh;
    private readonly float[]? shade;

    private SheetImage(SheetGrid grid, SheetProjection projection, float[] illuminance, byte[]? known, SheetMesh mesh, float[]? shade = null)
    {
        this.shade = shade;
        Grid = grid;
        Projection = projection;
        this.illuminance = illuminance;
        this.known = known;
        this.mesh = mesh;
    }

    /// <summary>The pixels.</summary>
    public SheetGrid Grid { get; }

    /// <summary>How the sheet saw the scene.</summary>
    public SheetProjection Projection { get; }

    /// <summary>Illuminance in lux as the paper sees it, row by row from the top of the finished picture; zero where unknown.</summary>
    public ReadOnlySpan<float> Lux => illuminance;

    /// <summary>1 where the photograph reaches, 0 where the light is unknown; empty if all is known.</summary>
    public ReadOnlySpan<byte> Known => known;

    /// <summary>Part of the picture that the photograph covers, 0 to 1.</summary>
    public double KnownShare => known is null ? 1 : 1 - (known.AsSpan().Count((byte)0) / (double)known.Length);

    /// <summary>Makes the image.</summary>
    /// <param name="scene">The scene as the paper sees it, from the photograph of the projection; of any size in pixels.</param>
    /// <param name="projection">Which part of the photograph the sheet sees.</param>
    /// <param name="longSide">Pixels along the picture's long side.</param>
    /// <param name="spread">The hole's spot; none (a perfectly sharp image) where missing.</param>
    /// <param name="progress">Told the part done, 0 to 1.</param>
    /// <param name="cancellation">Stops within some rows' time.</param>
    /// <exception cref="RefusalException">A size outside its range, or a scene of another shape than the photograph.</exception>
    public static SheetImage Make(
        LuminanceMap scene,
        SheetProjection projection,
        int longSide,
        PointSpread? spread = null,
        IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        CheckShape(scene, projection.Photograph);
        var grid = SheetGrid.WithLongSide(projection, longSide);
        var factor = spread is null ? 1 : SpotInPixels(spread, grid) / MostPixelsToTheSpot;
        return factor <= 1
            ? MakeOn(scene, projection, grid, spread, progress, cancellation)
            : MakeOn(scene, projection, grid.Coarser((int)Math.Ceiling(factor)), spread, progress, cancellation).EnlargedTo(grid, cancellation);
    }

    private static SheetImage MakeOn(
        LuminanceMap scene, SheetProjection projection, SheetGrid grid, PointSpread? spread, IProgress<double>? progress, CancellationToken cancellation)
    {
        var kernel = spread is null ? null : HoleImageKernel.Of(spread, grid.PitchMillimetres);
        var margin = kernel?.HalfWidth ?? 0;
        var source = Reduce(scene, projection, grid);
        var mesh = new SheetMesh(projection, grid, margin, source.Width, source.Height, cancellation);
        var length = mesh.Width * mesh.Height;
        if (kernel is null)
        {
            var sharp = new float[length];
            var sharpKnown = new byte[length];
            var whole = mesh.Fill(source.ValuesMemory, sharp, sharpKnown, Part(progress, 0, 1), cancellation);
            return new SheetImage(grid, projection, sharp, whole ? null : sharpKnown, mesh);
        }

        var plane = ArrayPool<float>.Shared.Rent(length);
        var flags = ArrayPool<byte>.Shared.Rent(length);
        try
        {
            var whole = mesh.Fill(source.ValuesMemory, plane, flags, Part(progress, 0, 0.4), cancellation);
            var soft = GC.AllocateUninitializedArray<float>(grid.Width * grid.Height);
            KernelConvolution.Apply(
                new ConvolutionSource(plane, whole ? default : flags, mesh.Width, mesh.Height),
                margin,
                grid.Width,
                grid.Height,
                kernel,
                soft,
                Part(progress, 0.4, 1),
                cancellation);
            return new SheetImage(grid, projection, soft, whole ? null : Inner(flags, mesh.Width, margin, grid), mesh);
        }
        finally
        {
            ArrayPool<float>.Shared.Return(plane);
            ArrayPool<byte>.Shared.Return(flags);
        }
    }

    /// <summary>
    /// Pixels that the photograph's long side should have for a print of a given size: one pixel of the photograph to one of the print in the middle of the
    /// sheet. More are averaged away, fewer are felt; a decoder that can scale may stop here.
    /// </summary>
    /// <param name="projection">Which part of the photograph the sheet sees.</param>
    /// <param name="longSide">Pixels along the print's long side.</param>
    public static int PhotographLongSide(SheetProjection projection, int longSide)
    {
        var grid = SheetGrid.WithLongSide(projection, longSide);
        var pixels = Math.Max(projection.Photograph.Width, projection.Photograph.Height);
        var ratio = projection.PhotographPixelsPerMillimetre() * grid.PitchMillimetres;
        return ratio <= 1 ? pixels : (int)Math.Ceiling(pixels / ratio);
    }

    /// <summary>The same image with a mask in the light, for the exposure and for a flash through the hole.</summary>
    /// <param name="mask">The mask, described on the finished print.</param>
    /// <param name="paper">The kind of paper, which says whether the finished print shows the subject mirrored.</param>
    /// <exception cref="RefusalException">As for <see cref="MaskPlace.ScaleIn"/>.</exception>
    public SheetImage Masked(PrintMask mask, PaperKind paper)
    {
        var light = MaskShadow.Of(mask, Grid, Projection.Camera, PrintMask.IsMirrored(paper));
        var lux = new float[illuminance.Length];
        TensorPrimitives.Multiply(illuminance, light, lux);
        if (shade is not null)
        {
            TensorPrimitives.Multiply(light, shade, light);
        }

        return new SheetImage(Grid, Projection, lux, known, mesh, light);
    }

    /// <summary>Illuminance of a pixel as the paper sees it; null where unknown.</summary>
    /// <exception cref="RefusalException">Outside the picture.</exception>
    public Illuminance? At(int column, int row)
    {
        Guard.Within(column, 0, Grid.Width - 1, "the column");
        Guard.Within(row, 0, Grid.Height - 1, "the row");
        var index = (row * Grid.Width) + column;
        return known is null || known[index] != 0 ? Illuminance.FromLux(illuminance[index]) : null;
    }

    /// <summary>Illuminance on the sheet where it sees a place of the photograph; null where it does not, or where it is unknown.</summary>
    public Illuminance? LightFor(PhotographPosition place)
    {
        if (Projection.PicturePlaceOf(place) is not { } at)
        {
            return null;
        }

        var (column, row) = ((int)Math.Round(Grid.ColumnAt(at.XMillimetres)), (int)Math.Round(Grid.RowAt(at.YMillimetres)));
        return column >= 0 && row >= 0 && column < Grid.Width && row < Grid.Height ? At(column, row) : null;
    }

    /// <summary>The light of a row over what falls on the hole's axis for the same luminance: how a flash through the hole is spread.</summary>
    internal void ReadFalloff(int row, Span<float> into)
    {
        mesh.ReadFalloff(row, into);
        if (shade is not null)
        {
            TensorPrimitives.Multiply(into, shade.AsSpan(row * Grid.Width, into.Length), into);
        }
    }

    /// <summary>Whether a mask lies in the light.</summary>
    internal bool IsMasked => shade is not null;

    /// <summary>The same image with other light on its pixels.</summary>
    internal SheetImage WithLux(float[] lux) => new(Grid, Projection, lux, known, mesh, shade);

    /// <summary>The same image for loops that outlive a span.</summary>
    internal ReadOnlyMemory<float> LuxMemory => illuminance;

    /// <summary>The flags for loops that outlive a span.</summary>
    internal ReadOnlyMemory<byte> KnownMemory => known;

    private static double SpotInPixels(PointSpread spread, SheetGrid grid)
        => spread.DiameterHolding(HoleImageKernel.UsualEnergy).Millimetres / 2 / grid.PitchMillimetres;

    /// <summary>The same image on a finer grid, straight between the pixels it has; the spot spans so many of them that nothing bends between.</summary>
    private SheetImage EnlargedTo(SheetGrid finer, CancellationToken cancellation)
    {
        var factor = (float)(Grid.PitchMillimetres / finer.PitchMillimetres);
        var reads = new MapReader(Grid.Width, Grid.Height);
        var coverage = known is null ? null : Array.ConvertAll(known, flag => (float)flag);
        var lux = GC.AllocateUninitializedArray<float>(finer.Width * finer.Height);
        var flags = known is null ? null : new byte[lux.Length];
        float Place(int pixel, int pixels, int own) => ((pixel + 0.5f - (pixels / 2f)) / factor) + (own / 2f) - 0.5f;
        RowWork.Run(
            finer.Height,
            32,
            (from, to) =>
            {
                for (var row = from; row < to; row++)
                {
                    var y = Place(row, finer.Height, Grid.Height);
                    for (var column = 0; column < finer.Width; column++)
                    {
                        var x = Place(column, finer.Width, Grid.Width);
                        var index = (row * finer.Width) + column;
                        var value = reads.Sample(illuminance, x, y);
                        if (coverage is not null && flags is not null)
                        {
                            // Unknown pixels hold zero and must darken nothing; half covered is the edge.
                            var part = reads.Sample(coverage, x, y);
                            flags[index] = part >= 0.5f ? (byte)1 : (byte)0;
                            value = part >= 0.5f ? value / part : 0;
                        }

                        lux[index] = value;
                    }
                }
            },
            null,
            cancellation);
        return new SheetImage(finer, Projection, lux, flags, new SheetMesh(Projection, finer, 0, Grid.Width, Grid.Height, cancellation));
    }

    private static void CheckShape(LuminanceMap scene, PhotographField photograph)
    {
        var wanted = photograph.Width / (double)photograph.Height;
        var given = scene.Width / (double)scene.Height;
        var rounding = (1.0 / scene.Width) + (1.0 / scene.Height);
        if (Math.Abs(given - wanted) > wanted * (rounding + 0.005))
        {
            throw new RefusalException(
                $"The scene's map is {scene.Width} × {scene.Height} pixels and the photograph {photograph.Width} × {photograph.Height}; they should be of the same shape.");
        }
    }

    /// <summary>Averages over areas first where several pixels of the scene fall on one of the sheet; up to two are left to the spot.</summary>
    private static LuminanceMap Reduce(LuminanceMap scene, SheetProjection projection, SheetGrid grid)
    {
        var ratio = projection.PhotographPixelsPerMillimetre() * grid.PitchMillimetres * scene.Width / projection.Photograph.Width;
        return ratio < 2 ? scene : scene.Reduced((int)Math.Min(ratio, 1000));
    }

    private static byte[] Inner(byte[] flags, int stride, int margin, SheetGrid grid)
    {
        var inner = new byte[grid.Width * grid.Height];
        for (var row = 0; row < grid.Height; row++)
        {
            flags.AsSpan(((row + margin) * stride) + margin, grid.Width).CopyTo(inner.AsSpan(row * grid.Width));
        }

        return inner;
    }

    private static Action<double>? Part(IProgress<double>? progress, double from, double to)
        => progress is null ? null : part => progress.Report(from + (part * (to - from)));
}
