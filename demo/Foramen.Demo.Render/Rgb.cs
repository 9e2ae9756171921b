namespace Foramen.Demo.Render;

/// <summary>Linear sRGB light whose luminance 0.2126 R + 0.7152 G + 0.0722 B is in cd/m²; or a reflectance, where it multiplies light.</summary>
internal readonly record struct Rgb(float R, float G, float B)
{
    public float Luminance => (0.2126f * R) + (0.7152f * G) + (0.0722f * B);

    public static Rgb Grey(double value) => new((float)value, (float)value, (float)value);

    public static Rgb operator *(Rgb a, Rgb b) => new(a.R * b.R, a.G * b.G, a.B * b.B);

    public static Rgb operator *(Rgb a, double k) => new((float)(a.R * k), (float)(a.G * k), (float)(a.B * k));

    public static Rgb operator +(Rgb a, Rgb b) => new(a.R + b.R, a.G + b.G, a.B + b.B);

    public static Rgb Mix(Rgb a, Rgb b, double t) => (a * (1 - Math.Clamp(t, 0, 1))) + (b * Math.Clamp(t, 0, 1));
}
