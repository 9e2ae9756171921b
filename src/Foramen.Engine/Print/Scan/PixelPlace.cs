namespace Foramen.Engine.Print;

/// <summary>A place in pixels that may lie outside the picture: what is worked with while corners are looked for.</summary>
internal readonly record struct PixelPlace(double X, double Y);
