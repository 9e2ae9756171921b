namespace Foramen.Demo.Render;

/// <summary>A named part of the picture, in fractions of its width and height from the upper left.</summary>
internal sealed record Region(string Name, double Left, double Top, double Right, double Bottom);
