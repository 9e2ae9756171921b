namespace Foramen.Engine.Paper;

/// <summary>That two exposures of one strip were told apart by eye, or were not; the first may be none at all (minus infinity).</summary>
/// <param name="Strip">Whose light they got.</param>
/// <param name="First">lg exposure and failure load of the one.</param>
/// <param name="Second">Of the other.</param>
/// <param name="Threshold">Difference in density that is seen half the time.</param>
/// <param name="Seen">Whether they were told apart.</param>
internal readonly record struct VisibilityRow(
    int Strip, (double LgExposure, double FailureLoad) First, (double LgExposure, double FailureLoad) Second, double Threshold, bool Seen);
