using Foramen.Engine.Quantities;
using Foramen.Field.Components;
using Foramen.Field.Texts;
using Foramen.Field.Units;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Outings;

/// <summary>Something that stands in the sun's way as it is typed in: texts until they are read, a message beside each that cannot be.</summary>
public sealed class ShadeForm
{
    /// <summary>What it is.</summary>
    public string Name { get; set; } = "";

    /// <summary>Bearing of its left edge, degrees.</summary>
    public string Left { get; set; } = "";

    /// <summary>Bearing of its right edge, degrees.</summary>
    public string Right { get; set; } = "";

    /// <summary>Elevation of its top, degrees.</summary>
    public string Top { get; set; } = "";

    /// <summary>Where its shadow falls.</summary>
    public ShadeFalls Falls { get; set; } = ShadeFalls.OnFacade;

    /// <summary>What is wrong, by field.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    /// <summary>Fills the form.</summary>
    public ShadeForm Fill(PlaceShade shade)
    {
        Name = shade.Name ?? "";
        Left = NumberText.Show(shade.LeftDegrees, 1);
        Right = NumberText.Show(shade.RightDegrees, 1);
        Top = NumberText.Show(shade.TopDegrees, 1);
        Falls = shade.Falls ?? ShadeFalls.OnFacade;
        return this;
    }

    /// <summary>The device was aimed at the left edge.</summary>
    /// <param name="bearingDegrees">From north, whole degrees.</param>
    public void AimAtLeft(double bearingDegrees)
    {
        Messages.Remove(nameof(Left));
        Left = NumberText.Show(bearingDegrees, 0);
    }

    /// <summary>The device was aimed at the right edge.</summary>
    /// <param name="bearingDegrees">From north, whole degrees.</param>
    public void AimAtRight(double bearingDegrees)
    {
        Messages.Remove(nameof(Right));
        Right = NumberText.Show(bearingDegrees, 0);
    }

    /// <summary>The device was aimed at the top.</summary>
    /// <param name="tiltDegrees">Upwards, whole degrees.</param>
    public void AimAtTop(double tiltDegrees)
    {
        Messages.Remove(nameof(Top));
        if (tiltDegrees < 1)
        {
            Messages[nameof(Top)] = Words.Shades.AimedDown;
            return;
        }

        Top = NumberText.Show(tiltDegrees, 0);
    }

    /// <summary>What to keep; null where something is wrong, and then <see cref="Messages"/> says what.</summary>
    public PlaceShade? Read()
    {
        Messages.Clear();
        var left = Messages.Try(nameof(Left), () => NumberText.Read(Left, 0, 360, "the bearing of the left edge", "degrees"));
        var right = Messages.Try(nameof(Right), () => NumberText.Read(Right, 0, 360, "the bearing of the right edge", "degrees"));
        var top = Messages.Try(nameof(Top), () => NumberText.Read(Top, 0.1, 85, "the height of the top", "degrees"));
        if (Messages.Count > 0)
        {
            return null;
        }

        var shade = new PlaceShade { Name = Name.Trim().Length == 0 ? null : Name.Trim(), LeftDegrees = left, RightDegrees = right, TopDegrees = top, Falls = Falls };
        try
        {
            _ = shade.ToObstacle();
            return shade;
        }
        catch (RefusalException refusal)
        {
            Messages[nameof(Right)] = refusal.Message;
            return null;
        }
    }
}
