namespace Foramen.Engine.Camera;

/// <summary>Something drawn on a template. Places are in mm from the page's upper left corner, right and down; greys from 0 black to 1 white.</summary>
public abstract record TemplatePart;

/// <summary>A line through places, with round ends.</summary>
/// <param name="Places">Two or more.</param>
/// <param name="Width">mm.</param>
/// <param name="Grey">0 to 1.</param>
public sealed record TemplateLine(IReadOnlyList<(double X, double Y)> Places, double Width, double Grey = 0) : TemplatePart;

/// <summary>A filled shape of one or more rings; what is wound about counts as inside (the nonzero rule).</summary>
/// <param name="Rings">Closed by themselves.</param>
/// <param name="Grey">0 to 1.</param>
public sealed record TemplateFill(IReadOnlyList<IReadOnlyList<(double X, double Y)>> Rings, double Grey) : TemplatePart;

/// <summary>A line of text.</summary>
/// <param name="X">Left end.</param>
/// <param name="Y">Baseline.</param>
/// <param name="Text">The text.</param>
/// <param name="Points">Size, points of 1/72 in.</param>
/// <param name="IsBold">Whether it is bold.</param>
public sealed record TemplateText(double X, double Y, string Text, double Points, bool IsBold = false) : TemplatePart;
