namespace Foramen.Field.Sheets.Frame;

/// <summary>What a drag on the photograph does while nothing is being marked as moving.</summary>
public enum FrameDrag
{
    /// <summary>Moves the frame.</summary>
    Aim,

    /// <summary>Marks the subject.</summary>
    Subject,
}
