using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Exposure;

/// <summary>
/// Three tones to start from when nobody has said any: taken from what the sheet sees, as the paper sees it, at fixed ranks of the areas that the
/// photograph holds exactly, within the middle of the sheet where corners do not darken them. A start, not a judgement: only the photographer knows what matters.
/// </summary>
public static class ToneSuggestions
{
    private const double PartOfSheet = 0.7;
    private const int Columns = 48;
    private const int Rows = 36;

    private static readonly (string Name, Rendering Rendering, double Rank)[] Wanted =
    [
        ("darker parts", Rendering.OpenShadow, 0.12),
        ("middle parts", Rendering.Mid, 0.45),
        ("lighter parts", Rendering.TexturedHighlight, 0.80),
    ];

    /// <summary>The suggestions.</summary>
    /// <param name="photograph">The photograph, with its luminance known.</param>
    /// <param name="projection">What the sheet sees of it.</param>
    /// <param name="sight">How the paper sees colours.</param>
    /// <exception cref="RefusalException">The sheet sees too little of the photograph, or too little of it is neither blown nor blocked.</exception>
    public static IReadOnlyList<Tone> From(ScenePhotograph photograph, SheetProjection projection, PaperSight sight)
    {
        var map = LuminanceMap.AsPaperSees(photograph, sight, Math.Max(1, Math.Max(photograph.Width, photograph.Height) / 400));
        var seen = new List<(float Value, PhotographPosition Position)>(Columns * Rows);
        var size = projection.PictureSize;
        for (var row = 0; row < Rows; row++)
        {
            for (var column = 0; column < Columns; column++)
            {
                var picture = SheetPoint.FromMillimetres(
                    (((column + 0.5) / Columns) - 0.5) * PartOfSheet * size.Width.Millimetres,
                    (0.5 - ((row + 0.5) / Rows)) * PartOfSheet * size.Height.Millimetres);
                if (projection.PositionOf(projection.SheetPointAt(picture)) is not { } position)
                {
                    continue;
                }

                var (x, y) = ((int)Math.Min(position.X * map.Width, map.Width - 1), (int)Math.Min(position.Y * map.Height, map.Height - 1));
                if (map.LimitAt(x, y) == LuminanceLimit.Exact)
                {
                    seen.Add(((float)map.At(x, y).CandelasPerSquareMetre, position));
                }
            }
        }

        if (seen.Count < Columns * Rows / 20)
        {
            throw new RefusalException("The sheet sees too little of this photograph to choose tones from; name them yourself, or take a photograph that covers more.");
        }

        seen.Sort((a, b) => a.Value.CompareTo(b.Value));
        return [.. Wanted.Select(wanted => ToneReader.FromPhotograph(
            wanted.Name,
            wanted.Rendering,
            new PointInPhotograph(seen[(int)(wanted.Rank * (seen.Count - 1))].Position),
            photograph,
            sight))];
    }
}
