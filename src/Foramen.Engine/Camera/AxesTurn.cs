using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>A turn from the axes of the held camera (x right, y up, z forwards) to those of the photograph, as a matrix of rows.</summary>
internal readonly struct AxesTurn
{
    private readonly double xx, xy, xz, yx, yy, yz, zx, zy, zz;

    private AxesTurn(double xx, double xy, double xz, double yx, double yy, double yz, double zx, double zy, double zz)
    {
        (this.xx, this.xy, this.xz) = (xx, xy, xz);
        (this.yx, this.yy, this.yz) = (yx, yy, yz);
        (this.zx, this.zy, this.zz) = (zx, zy, zz);
    }

    /// <summary>Tilted up by the camera's tilt, panned to the right, then seen from axes that are tilted up themselves.</summary>
    public static AxesTurn Between(Angle tilt, Angle pan, Angle photographTilt)
        => Up(-photographTilt.Radians).After(Right(pan.Radians).After(Up(tilt.Radians)));

    /// <summary>The vector in the photograph's axes.</summary>
    public (double X, double Y, double Z) Apply(double x, double y, double z)
        => ((xx * x) + (xy * y) + (xz * z), (yx * x) + (yy * y) + (yz * z), (zx * x) + (zy * y) + (zz * z));

    /// <summary>The vector in the camera's axes.</summary>
    public (double X, double Y, double Z) Undo(double x, double y, double z)
        => ((xx * x) + (yx * y) + (zx * z), (xy * x) + (yy * y) + (zy * z), (xz * x) + (yz * y) + (zz * z));

    private static AxesTurn Up(double angle)
    {
        var (s, c) = Math.SinCos(angle);
        return new(1, 0, 0, 0, c, s, 0, -s, c);
    }

    private static AxesTurn Right(double angle)
    {
        var (s, c) = Math.SinCos(angle);
        return new(c, 0, s, 0, 1, 0, -s, 0, c);
    }

    private AxesTurn After(AxesTurn first)
    {
        var (ax, ay, az) = Apply(first.xx, first.yx, first.zx);
        var (bx, by, bz) = Apply(first.xy, first.yy, first.zy);
        var (cx, cy, cz) = Apply(first.xz, first.yz, first.zz);
        return new(ax, bx, cx, ay, by, cy, az, bz, cz);
    }
}
