namespace Foramen.Demo.Render;

/// <summary>
/// The invented canal basin, as radiance along any direction from the photographer's place: x to the right, y up, z forward, metres, the eye 1.6 m above
/// the towpath. Painted from parts that each know their own distance; water mirrors what stands above it.
/// </summary>
internal sealed class CanalBasin(DayLight light)
{
    private const double EyeHeight = 1.6;
    private const double WaterLevel = -2.1;

    private static readonly Rgb Concrete = new(0.56f, 0.54f, 0.49f);
    private static readonly Rgb Brick = new(0.26f, 0.12f, 0.085f);
    private static readonly Rgb Mortar = new(0.33f, 0.31f, 0.28f);
    private static readonly Rgb Gravel = new(0.34f, 0.31f, 0.26f);
    private static readonly Rgb Grass = new(0.10f, 0.17f, 0.045f);
    private static readonly Rgb Leaves = new(0.055f, 0.095f, 0.03f);
    private static readonly Rgb Steel = new(0.07f, 0.085f, 0.10f);
    private static readonly Rgb LampGlow = new(5200, 3600, 1700);

    /// <summary>Radiance towards the eye from this direction; only ratios of the components matter.</summary>
    public Rgb Along(double x, double y, double z)
    {
        var (u, v) = (x / z, y / z);
        return Standing(u, v, EyeHeight) ?? (v >= 0 ? Sky(u, v) : Ground(u, v));
    }

    private Rgb Ground(double u, double v)
    {
        // The bank on the right carries the towpath; left of the quay is water, a good way lower.
        var bankZ = -EyeHeight / v;
        var bankX = u * bankZ;
        var quay = Quay(bankZ);
        if (bankX > quay)
        {
            return Bank(bankX, bankZ, quay);
        }

        var waterZ = (WaterLevel - EyeHeight) / v;
        var waterX = u * waterZ;
        if (waterX > Quay(waterZ))
        {
            // The quay wall, in its own shade, wet below.
            var wallZ = WallDistance(u);
            var height = (v * wallZ) - WaterLevel + EyeHeight;
            var stone = Mix(Mortar, Steel, 0.4) * (0.75 + (0.5 * Noise.Layers(wallZ * 1.5, height * 4, 3, 5)));
            return Shade(stone * (height < 0.5 ? 0.45 : 1));
        }

        return waterZ > 95 ? Shore(u, v) : Water(u, v, waterX, waterZ);
    }

    private Rgb Water(double u, double v, double x, double z)
    {
        var ripple = (Noise.Layers(x * 1.3, z * 0.55, 4, 11) - 0.5) * Math.Min(0.09, 0.55 / z);
        var fine = (Noise.Layers(x * 6, z * 2.2, 3, 23) - 0.5) * Math.Min(0.05, 0.3 / z);
        // What the water mirrors is what an eye as far below it would see.
        var (mirroredU, mirroredV) = (u + (0.5 * ripple), -v + ripple + fine);
        var mirrored = Standing(mirroredU, mirroredV, (2 * WaterLevel) - EyeHeight) ?? (mirroredV >= 0 ? Sky(mirroredU, mirroredV) : Shore(mirroredU, 0));
        var grazing = Math.Pow(1 - Math.Min(1, Math.Abs(v)), 4);
        var body = new Rgb(0.010f, 0.018f, 0.016f) * (light.Sun + light.Sky);
        return (mirrored * (0.06 + (0.62 * grazing))) + body;
    }

    private Rgb Bank(double x, double z, double quay)
    {
        var fromQuay = x - quay;
        var patch = Noise.Layers(x * 0.7, z * 0.7, 4, 31);
        var grain = 0.72 + (0.56 * Noise.Layers(x * 22, z * 22, 3, 37));
        var path = Noise.Step(0.5, 1.1, fromQuay + (0.5 * (patch - 0.5))) * (1 - Noise.Step(4.6, 5.6, fromQuay + (1.2 * (patch - 0.5))));
        var edge = fromQuay < 0.45 ? Mortar * (Math.Abs((z * 0.8) - Math.Round(z * 0.8)) < 0.03 ? 0.5 : 1.05) : Rgb.Mix(Grass * (0.6 + (0.8 * patch)), Gravel, path);

        // The pump house throws a shadow towards the eye; so does the organ.
        var shaded = Math.Max(
            Noise.Step(0, 0.5, Math.Min(x - 7.5, Math.Min(21.0 - x, Math.Min(z - 14.5, 22.5 - z)))),
            Noise.Step(0, 0.12, 0.75 - double.Hypot((x - 4.3) / 1.4, (z - 8.4) / 0.9)));
        return Lit(edge * grain, 0.62 * (1 - shaded));
    }

    private Rgb Shore(double u, double v)
    {
        var leaf = Noise.Layers(u * 160, v * 160, 4, 41);
        return Lit(Grass * (0.5 + leaf), 0.35);
    }

    private Rgb Sky(double u, double v)
    {
        var height = v / Math.Sqrt((u * u) + (v * v) + 1);
        var haze = Math.Exp(-height * 6);
        var blue = Rgb.Mix(new Rgb(0.50f, 0.78f, 1.35f), new Rgb(0.95f, 1.0f, 1.08f), haze);
        var sky = blue * (light.SkyBright * (0.62 + (0.42 * haze)));
        if (height <= 0.005)
        {
            return sky;
        }

        var (cx, cy) = (u / (v + 0.18), 1 / (v + 0.18));
        var cover = Noise.Layers((cx * 0.85) + 4.1, (cy * 1.1) + 0.7, 6, 51);
        var cloud = Noise.Step(0.54, 0.70, cover);
        var shading = 0.45 + (0.75 * Noise.Step(0.5, 0.85, Noise.Layers((cx * 0.9) + 4.5, (cy * 1.1) + 1.2, 5, 51)));
        return Rgb.Mix(sky, new Rgb(1.0f, 1.0f, 1.01f) * (light.CloudBright * shading), cloud * 0.94);
    }

    private Rgb? Standing(double u, double v, double eye)
        => Organ(u, v, eye) ?? Cyclist(u, v, eye) ?? PumpHouse(u, v, eye) ?? Weir(u, v, eye) ?? Elevator(u, v, eye) ?? LiftBridge(u, v, eye) ?? Trees(u, v);

    private Rgb? Elevator(double u, double v, double eye)
    {
        const double Distance = 42;
        const double Left = -19, Right = 3.2, SiloWidth = 3.7, Top = 27;
        var (x, y) = (u * Distance, (v * Distance) + eye);
        if (y < WaterLevel + 0.6 || x < Left - 1)
        {
            return null;
        }

        // Head house on the roof, over the right half.
        if (x is > -9.5 and < 1.0 && y is >= Top and < Top + 7.2)
        {
            var window = Frac((x + 9.5) / 2.1) is > 0.32 and < 0.68 && Frac((y - Top) / 2.4) is > 0.35 and < 0.78;
            var panel = Concrete * (0.88 + (0.2 * Noise.Layers(x * 2, y * 2, 3, 61)));
            return window ? Shade(Rgb.Grey(0.05)) : Lit(panel, 0.74);
        }

        if (x is > 0.7 and < 1.5 && y is >= Top and < Top + 10 && light.LampsLit && y > Top + 9)
        {
            return LampGlow;
        }

        if (x < Left || x > Right || y > Top)
        {
            return null;
        }

        // Silos: round, so the sun from the right makes each its own scale of tones.
        var across = (2 * Frac((x - Left) / SiloWidth)) - 1;
        var facing = Math.Sqrt(Math.Max(0, 1 - (across * across)));
        var sun = Math.Max(0, (0.72 * facing) + (0.60 * across));
        var streak = 0.86 + (0.24 * Noise.Layers(x * 3.1, y * 0.12, 4, 71));
        var stain = Noise.Step(0.60, 0.8, Noise.Layers(x * 0.5, y * 0.22, 4, 77)) * 0.22;
        var joint = Frac(y / 1.5) < 0.035 ? 0.9 : 1;
        var cornice = y > Top - 0.9 ? 1.06 : 1;
        var door = x is > -3.4 and < -1.4 && y < 2.6;
        if (door)
        {
            return Shade(Rgb.Grey(0.02));
        }

        var base_ = y < 1.6 ? 0.55 : 1;
        return Lit(Concrete * (streak * joint * cornice * base_ * (1 - stain)), sun * 0.93);
    }

    private Rgb? PumpHouse(double u, double v, double eye)
    {
        const double Distance = 20;
        const double Left = 7.6, Right = 19.5, Eaves = 5.6, Ridge = 9.2;
        var (x, y) = (u * Distance, (v * Distance) + eye);
        if (x < Left - 0.4 || x > Right + 0.4 || y < 0 || y > Ridge)
        {
            return null;
        }

        if (y > Eaves)
        {
            var reach = (Ridge - y) / (Ridge - Eaves);
            var inset = 2.2 * (1 - reach);
            if (x < Left - 0.4 + inset || x > Right + 0.4 - inset)
            {
                return null;
            }

            var tile = 0.7 + (0.5 * Noise.Cell((int)Math.Floor(x * 3.2), (int)Math.Floor(y * 4), 81)) - (Frac(y * 4) < 0.18 ? 0.3 : 0);
            return Lit(new Rgb(0.12f, 0.095f, 0.085f) * tile, 0.34);
        }

        if (x < Left || x > Right)
        {
            return null;
        }

        if (x is > 12.2 and < 14.2 && y < 3.1)
        {
            // The open doorway: little light finds its way in.
            return Shade(Rgb.Grey(0.006 + (0.004 * Noise.Layers(x * 4, y * 4, 2, 85))));
        }

        var pane = ((x - Left) % 3.9) - 1.1;
        if (pane is > 0 and < 1.5 && y is > 1.6 and < 4.2 && x is < 11.6 or > 15.0)
        {
            var bar = Frac(pane / 0.5) < 0.1 || Frac((y - 1.6) / 0.65) < 0.08;
            return bar ? Shade(Rgb.Grey(0.6)) : light.LampsLit ? LampGlow * 0.02 : Sky(-u, 0.35) * 0.09;
        }

        var row = (int)Math.Floor(y / 0.085);
        var column = (x / 0.24) + (row % 2 == 0 ? 0 : 0.5);
        var mortar = Frac(y / 0.085) < 0.16 || Frac(column) < 0.06;
        var tint = 0.72 + (0.56 * Noise.Cell((int)Math.Floor(column), row, 87));
        var damp = 1 - (0.35 * Noise.Step(1.4, 0.0, y));
        return Shade((mortar ? Mortar : Brick * tint) * damp);
    }

    private Rgb? Weir(double u, double v, double eye)
    {
        const double Distance = 37;
        var (x, y) = (u * Distance, (v * Distance) + eye);
        if (x is < -17 or > 0.1 || y is < WaterLevel or > -0.55)
        {
            return null;
        }

        if (y > -0.75 || Frac((x + 17) / 5.7) < 0.06)
        {
            return Lit(Mortar * 0.9, 0.5);
        }

        var fall = Noise.Layers(x * 3.5, y * 0.9, 5, 91);
        return Lit(Rgb.Mix(new Rgb(0.30f, 0.36f, 0.36f), Rgb.Grey(0.80), Noise.Step(0.3, 0.7, fall)), 0.70);
    }

    private Rgb? LiftBridge(double u, double v, double eye)
    {
        const double Distance = 70;
        var (x, y) = (u * Distance, (v * Distance) + eye);
        foreach (var tower in (ReadOnlySpan<double>)[6.5, 24.5])
        {
            var dx = x - tower;
            if (Math.Abs(dx) < 1.7 && y is > -1 and < 19)
            {
                var leg = Math.Abs(Math.Abs(dx) - 1.45) < 0.25;
                var brace = Math.Abs(Frac((y + (dx * 1.1)) / 3.4) - 0.5) < 0.045 || Math.Abs(Frac((y - (dx * 1.1)) / 3.4) - 0.5) < 0.045;
                if (leg || brace || y > 18.2)
                {
                    return Lit(Steel * 1.3, 0.45);
                }
            }
        }

        if (x is > 6.5 and < 24.5)
        {
            var deck = y is > 3.0 and < 3.6 || y is > 6.2 and < 6.5;
            var lattice = y is >= 3.6 and <= 6.2 && (Math.Abs(Frac((x + y) / 2.6) - 0.5) < 0.05 || Math.Abs(Frac((x - y) / 2.6) - 0.5) < 0.05);
            var cable = y is > 6.5 and < 18.4 && (Math.Abs(x - 8.6) < 0.07 || Math.Abs(x - 22.4) < 0.07);
            if (deck || lattice || cable)
            {
                return Lit(Steel * 1.2, 0.4);
            }
        }

        return null;
    }

    private Rgb? Trees(double u, double v)
    {
        var crown = 0.035 + (0.055 * Noise.Layers((u * 9) + 2, 0.5, 5, 101)) + (u < -0.4 ? 0.05 * Noise.Step(-0.4, -0.9, u) : 0);
        if (v > crown || v < -0.03)
        {
            return null;
        }

        var leaf = Noise.Layers(u * 120, v * 150, 5, 107);
        return Lit(Leaves * (0.35 + (1.5 * leaf)), 0.15 + (0.5 * leaf));
    }

    private Rgb? Organ(double u, double v, double eye)
    {
        const double Distance = 9;
        var (x, y) = (u * Distance, (v * Distance) + eye);

        // The crank wheel at its left side: rim, hub and spokes.
        var (wx, wy) = (x - 2.72, y - 1.05);
        var r = double.Hypot(wx, wy);
        if (r < 0.56)
        {
            var rim = r > 0.49;
            var spoke = Math.Abs(Frac((Math.Atan2(wy, wx) / (2 * Math.PI) * 8) + 0.15) - 0.5) < 0.06 / Math.Max(r, 0.1);
            if (rim || r < 0.1 || spoke)
            {
                return Lit(new Rgb(0.55f, 0.09f, 0.07f) * (rim ? 1 : 0.9), 0.66);
            }
        }

        if (x is < 3.0 or > 5.2 || y is < 0.0 or > 2.25)
        {
            return null;
        }

        if (y < 0.5)
        {
            // Cart wheels and shadow below.
            var hub = Math.Min(double.Hypot(x - 3.5, y - 0.27), double.Hypot(x - 4.75, y - 0.27));
            return hub < 0.27 ? Lit(Rgb.Grey(hub is > 0.2 or < 0.06 ? 0.05 : 0.4), 0.5) : null;
        }

        var top = 1.95 + (0.25 * Math.Sqrt(Math.Max(0, 1 - Math.Pow((x - 4.1) / 1.1, 2))));
        if (y > top)
        {
            return null;
        }

        var pipes = y is > 1.05 and < 1.85 && x is > 3.3 and < 4.9;
        if (pipes)
        {
            var p = (2 * Frac((x - 3.3) / 0.16)) - 1;
            var mouth = y < 1.18 + (0.12 * Math.Abs(x - 4.1));
            return mouth ? Shade(Rgb.Grey(0.05)) : Lit(new Rgb(0.62f, 0.50f, 0.22f), 0.30 + (0.62 * Math.Max(0, 0.7 + (0.3 * p) - (p * p))));
        }

        var border = Frac((x - 3.0) / 0.55) < 0.08 || Frac(y / 0.42) < 0.1;
        var panel = border ? new Rgb(0.58f, 0.45f, 0.15f) : y < 1.0 ? new Rgb(0.05f, 0.16f, 0.11f) : new Rgb(0.62f, 0.58f, 0.47f);
        return Lit(panel * (0.85 + (0.3 * Noise.Layers(x * 14, y * 14, 3, 111))), 0.66);
    }

    private Rgb? Cyclist(double u, double v, double eye)
    {
        const double Distance = 15;
        var (x, y) = ((u * Distance) - 1.6, (v * Distance) + eye);
        if (x is < -1 or > 1.2 || y is < 0 or > 1.8)
        {
            return null;
        }

        foreach (var wheel in (ReadOnlySpan<double>)[-0.52, 0.52])
        {
            var r = double.Hypot(x - wheel, y - 0.34);
            if (Math.Abs(r - 0.32) < 0.025)
            {
                return Lit(Rgb.Grey(0.04), 0.5);
            }
        }

        if (Near(x, y, -0.52, 0.34, 0.0, 0.34, 0.02) || Near(x, y, 0.0, 0.34, 0.38, 0.85, 0.02) || Near(x, y, -0.12, 0.82, 0.36, 0.82, 0.02)
            || Near(x, y, 0.52, 0.34, 0.38, 0.95, 0.02) || Near(x, y, 0.0, 0.34, -0.14, 0.9, 0.02))
        {
            return Lit(new Rgb(0.05f, 0.11f, 0.3f), 0.6);
        }

        if (Near(x, y, -0.12, 0.95, 0.12, 1.38, 0.13) || Near(x, y, 0.12, 1.32, 0.4, 0.98, 0.05))
        {
            return Lit(new Rgb(0.55f, 0.48f, 0.16f), 0.6);
        }

        if (Near(x, y, -0.1, 0.9, 0.15, 0.62, 0.08) || Near(x, y, 0.15, 0.62, 0.02, 0.28, 0.06))
        {
            return Lit(new Rgb(0.06f, 0.07f, 0.1f), 0.6);
        }

        return double.Hypot(x - 0.2, y - 1.58) < 0.12 ? Lit(new Rgb(0.34f, 0.22f, 0.16f), 0.6) : null;
    }

    private Rgb Lit(Rgb reflectance, double sun) => reflectance * ((light.Sun * sun) + light.Sky);

    private Rgb Shade(Rgb reflectance) => reflectance * light.Sky;

    private static Rgb Mix(Rgb a, Rgb b, double t) => Rgb.Mix(a, b, t);

    private static double Quay(double z) => -1.2 + (0.045 * z);

    private static double WallDistance(double u) => u - 0.045 >= 0 ? 1e3 : Math.Min(1e3, -1.2 / (u - 0.045));

    private static double Frac(double x) => x - Math.Floor(x);

    private static bool Near(double x, double y, double x1, double y1, double x2, double y2, double width)
    {
        var (dx, dy) = (x2 - x1, y2 - y1);
        var t = Math.Clamp((((x - x1) * dx) + ((y - y1) * dy)) / ((dx * dx) + (dy * dy)), 0, 1);
        return double.Hypot(x - x1 - (t * dx), y - y1 - (t * dy)) < width;
    }
}
