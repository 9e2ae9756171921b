using Foramen.Engine.Camera;
using Foramen.Engine.Tests.Camera;
using OpenCvSharp;

namespace Foramen.Imaging.Tests;

/// <summary>The hole by another library: OpenCV's own ellipse fit to its own contour at half-way, on the same codes enlarged eight times.</summary>
[Source("opencv", Basis.Library)]
public sealed class HoleAgainstOpenCvTests
{
    [Theory]
    [InlineData(14, 14, 0)]
    [InlineData(20, 17, 0.5)]
    [InlineData(30, 24, 1.2)]
    public void Another_library_finds_the_same_ellipse(double longAxis, double shortAxis, double direction)
    {
        // Proportional codes, because OpenCV knows nothing of transfer functions.
        var hole = new RenderedHole { LongAxis = longAxis, ShortAxis = shortAxis, Direction = direction, Noise = 0.01, Blur = 0.8, Encoding = ScanEncoding.Linear };
        var measured = HoleMeter.Measure(hole.Draw(), ScanScale.FromDotsPerInch(4800));
        var fitted = ByOpenCv(hole);
        Assert.Equal(fitted.Diameter, measured.DiameterPixels, 0.01 * measured.DiameterPixels);
        Assert.Equal(fitted.Ratio, measured.Roundness, 0.02);
    }

    private static (double Diameter, double Ratio) ByOpenCv(RenderedHole hole)
    {
        const int Times = 8;
        using var codes = new Mat(hole.Height, hole.Width, MatType.CV_8UC1);
        System.Runtime.InteropServices.Marshal.Copy(hole.Codes(), 0, codes.Data, hole.Width * hole.Height);
        using var large = new Mat();
        Cv2.Resize(codes, large, default, Times, Times, InterpolationFlags.Cubic);
        using var smooth = new Mat();
        Cv2.GaussianBlur(large, smooth, new Size(0, 0), 4);
        using var half = new Mat();
        Cv2.Threshold(smooth, half, 255 * (hole.Inside + hole.Outside) / 2, 255, ThresholdTypes.Binary);
        Cv2.FindContours(half, out var contours, out _, RetrievalModes.External, ContourApproximationModes.ApproxNone);
        var ellipse = Cv2.FitEllipse(contours.MaxBy(contour => contour.Length)!);

        // The contour runs through the middles of the outermost pixels, half a pixel inside the edge.
        var (a, b) = ((ellipse.Size.Width + 1) / Times, (ellipse.Size.Height + 1) / Times);
        return (Math.Sqrt(a * b), Math.Min(a, b) / Math.Max(a, b));
    }
}
