using System.Numerics.Tensors;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>
/// The print that an exposure is expected to give: density pixel by pixel, with its border. Cheap to make from a <see cref="SheetImage"/>, so times can be
/// changed as fast as a finger moves; pixels are worked out when they are asked for. Immutable.
/// </summary>
/// <remarks>
/// Left out: grain, uneven development, flare within the box, and the colour that toning or staining gives. Where the photograph does not reach, the print is
/// unknown and shown hatched.
/// </remarks>
public sealed class PredictedPrint
{
    private const int RowsInBand = 64;
    private const byte HatchDark = 118;
    private const byte HatchLight = 138;

    private readonly SheetImage image;
    private readonly PrintExposure exposure;
    private readonly PrintLook look;
    private readonly ExposureLookup density;
    private readonly ExposureLookup reflectance;
    private readonly Lazy<CodeLookup> grey;
    private readonly double whitest;
    private readonly int border;
    private readonly float borderExposure;

    private PredictedPrint(SheetImage image, PrintExposure exposure, CharacteristicCurve curve, PrintLook look)
    {
        this.image = image;
        this.exposure = exposure;
        this.look = look;
        var mirror = look.Side == PrintSide.Positive && curve.Kind == PaperKind.NegativeWorking;
        var sum = curve.MinimumDensity.Value + curve.MaximumDensity.Value;
        double Shown(double value) => mirror ? sum - value : value;
        var none = Shown(curve.UnexposedDensity.Value);
        density = new ExposureLookup(none, lg => Shown(curve.DensityAtLg(lg)));
        reflectance = new ExposureLookup(Math.Pow(10, -none), lg => Math.Pow(10, -Shown(curve.DensityAtLg(lg))));
        whitest = look.WhiteIsPaper ? Math.Pow(10, -curve.MinimumDensity.Value) : 1;
        grey = new(() => new CodeLookup(exposed => SrgbTransfer.CodeOf(reflectance.At(exposed) / whitest)));
        border = (int)Math.Round(look.Border.Millimetres / image.Grid.PitchMillimetres);
        borderExposure = exposure.FlashThroughHole ? 0 : (float)exposure.Flash.LuxSeconds;
        Width = image.Grid.Width + (2 * border);
        Height = image.Grid.Height + (2 * border);
    }

    private PredictedPrint(PredictedPrint other, PrintExposure exposure, SheetImage image)
    {
        this.image = image;
        this.exposure = exposure;
        look = other.look;
        (density, reflectance, grey) = (other.density, other.reflectance, other.grey);
        (whitest, border, Width, Height) = (other.whitest, other.border, other.Width, other.Height);
        borderExposure = exposure.FlashThroughHole ? 0 : (float)exposure.Flash.LuxSeconds;
    }

    /// <summary>Columns, border included.</summary>
    public int Width { get; }

    /// <summary>Rows, border included.</summary>
    public int Height { get; }

    /// <summary>Pixels of border on each side.</summary>
    public int BorderPixels => border;

    /// <summary>From pixel to pixel, mm.</summary>
    public double PitchMillimetres => image.Grid.PitchMillimetres;

    /// <summary>Part of the picture, without its border, that is known, 0 to 1.</summary>
    public double KnownShare => image.KnownShare;

    /// <summary>Exposes an image on a paper.</summary>
    /// <param name="image">The light on the sheet.</param>
    /// <param name="curve">The paper's curve.</param>
    /// <param name="exposure">Time and flash on the scale of effective exposure.</param>
    /// <param name="look">How to show it; the usual where missing.</param>
    public static PredictedPrint Expose(SheetImage image, CharacteristicCurve curve, PrintExposure exposure, PrintLook? look = null)
        => new(image, exposure, curve, look ?? new PrintLook());

    /// <summary>The same sheet and paper with another time or flash; the tables are kept, so this is the way to follow a finger.</summary>
    public PredictedPrint ExposedAgain(PrintExposure again) => new(this, again, image);

    /// <summary>The same paper under other light from the same camera: what moved, or a mask.</summary>
    /// <exception cref="RefusalException">Another size in pixels.</exception>
    public PredictedPrint ExposedAgain(PrintExposure again, SheetImage other) => other.Grid == image.Grid
        ? new(this, again, other)
        : throw new RefusalException($"The light is of {other.Grid.Width} × {other.Grid.Height} pixels and the print of {image.Grid.Width} × {image.Grid.Height}; they should be the same.");

    /// <summary>All densities, row by row; NaN where unknown.</summary>
    public float[] Densities(CancellationToken cancellation = default)
    {
        var plane = GC.AllocateUninitializedArray<float>(Width * Height);
        RowWork.Run(
            Height,
            RowsInBand,
            (from, to) =>
            {
                for (var row = from; row < to; row++)
                {
                    var line = plane.AsSpan(row * Width, Width);
                    ReadExposure(row, line);
                    density.Read(line);

                    var flags = FlagsIfUnknown(row);
                    for (var i = 0; i < flags.Length; i++)
                    {
                        line[i + border] = flags[i] == 0 ? float.NaN : line[i + border];
                    }
                }
            },
            null,
            cancellation);
        return plane;
    }

    /// <summary>The whole print as 8-bit grey in sRGB's transfer function, row by row; unknown parts are hatched.</summary>
    /// <param name="codes">Width × height bytes.</param>
    /// <param name="cancellation">Stops between bands of rows.</param>
    /// <exception cref="RefusalException">Too little room.</exception>
    public void WriteGrey8(Memory<byte> codes, CancellationToken cancellation = default)
    {
        if (codes.Length < (long)Width * Height)
        {
            throw new RefusalException($"There is room for {codes.Length} bytes; the print needs {(long)Width * Height}.");
        }

        var lookup = grey.Value;
        EachRow(
            (row, line) =>
            {
                var into = codes.Span.Slice(row * Width, Width);
                lookup.Read(line, into);

                var flags = FlagsIfUnknown(row);
                for (var i = 0; i < flags.Length; i++)
                {
                    into[i + border] = flags[i] == 0 ? Hatch(i, row) : into[i + border];
                }
            },
            cancellation);
    }

    /// <summary>A row as 16-bit linear reflectance, 65535 for white; 0 where unknown.</summary>
    /// <param name="row">Row, from the top.</param>
    /// <param name="into">Receives one value for each column.</param>
    /// <exception cref="RefusalException">Outside the print, or too little room.</exception>
    public void WriteLinear16(int row, Span<ushort> into)
    {
        Guard.Within(row, 0, Height - 1, "the row");
        Guard.Within(into.Length, Width, int.MaxValue, "the room for a row", "pixels");
        var line = new float[Width];
        ReadExposure(row, line);
        var scale = (float)(65535 / whitest);
        for (var i = 0; i < line.Length; i++)
        {
            into[i] = (ushort)Math.Min(65535, (reflectance.At(line[i]) * scale) + 0.5f);
        }

        var flags = FlagsIfUnknown(row);
        for (var i = 0; i < flags.Length; i++)
        {
            into[i + border] = flags[i] == 0 ? (ushort)0 : into[i + border];
        }
    }

    private static byte Hatch(int column, int row) => (((column + row) >> 3) & 1) == 0 ? HatchDark : HatchLight;

    /// <summary>Effective exposure of a row, border included; that of the flash alone where the image is unknown.</summary>
    private void ReadExposure(int row, Span<float> line)
    {
        line.Fill(borderExposure);
        var own = row - border;
        if (own < 0 || own >= image.Grid.Height)
        {
            return;
        }

        var columns = image.Grid.Width;
        var inner = line.Slice(border, columns);
        var lux = image.LuxMemory.Span.Slice(own * columns, columns);
        var seconds = (float)exposure.EffectiveSeconds;
        var flash = (float)exposure.Flash.LuxSeconds;
        if (flash == 0 || !exposure.FlashThroughHole)
        {
            inner.Fill(flash);
        }
        else
        {
            image.ReadFalloff(own, inner);
            TensorPrimitives.Multiply(inner, flash, inner);
        }

        TensorPrimitives.MultiplyAddEstimate(lux, seconds, inner, inner);
        if (look.IsMirrored)
        {
            inner.Reverse();
        }
    }

    /// <summary>The flags of a row of the picture if any of it is unknown; empty otherwise.</summary>
    private ReadOnlySpan<byte> FlagsIfUnknown(int row)
    {
        var own = row - border;
        if (own < 0 || own >= image.Grid.Height || image.KnownMemory.IsEmpty)
        {
            return default;
        }

        var flags = image.KnownMemory.Span.Slice(own * image.Grid.Width, image.Grid.Width);
        if (!flags.Contains((byte)0))
        {
            return default;
        }

        if (!look.IsMirrored)
        {
            return flags;
        }

        var mirrored = flags.ToArray();
        mirrored.AsSpan().Reverse();
        return mirrored;
    }

    /// <summary>Hands over every row with its exposures; bands of rows run beside each other, each with one line of room.</summary>
    private void EachRow(Action<int, float[]> write, CancellationToken cancellation) => RowWork.Run(
        Height,
        RowsInBand,
        (from, to) =>
        {
            var line = new float[Width];
            for (var row = from; row < to; row++)
            {
                ReadExposure(row, line);
                write(row, line);
            }
        },
        null,
        cancellation);
}
