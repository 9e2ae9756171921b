namespace Foramen.Engine.Camera;

/// <summary>The face of the box that marks are put on, as it stands with the sheet level.</summary>
public enum MarkFace
{
    /// <summary>The top: for left and right with the sheet level, for up and down with it upright.</summary>
    Top,

    /// <summary>The right side, seen from behind the camera: for up and down with the sheet level; it becomes the top when the camera is turned a quarter to the left.</summary>
    RightSide,
}
