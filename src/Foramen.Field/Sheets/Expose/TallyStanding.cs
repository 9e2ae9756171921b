namespace Foramen.Field.Sheets.Expose;

/// <summary>How the tally stands at an instant.</summary>
/// <param name="Progress">∫ dt/T(I), 1 when done.</param>
/// <param name="LeftSeconds">Time left if the light stays as it is, s; null while covered.</param>
/// <param name="OverSeconds">Time beyond the plan, in the light as it is, s.</param>
/// <param name="ElapsedSeconds">Seconds since the hole was first opened.</param>
/// <param name="LightStops">The light against the metered light, stops.</param>
/// <param name="IsOpen">Whether the hole is open.</param>
/// <param name="IsCovered">Whether it is covered.</param>
/// <param name="ClockWentBack">Whether the clock was set back meanwhile.</param>
/// <param name="OverOrUnderStops">How far the sheet is over or under the plan in effective exposure, stops.</param>
public sealed record TallyStanding(
    double Progress,
    double? LeftSeconds,
    double OverSeconds,
    double ElapsedSeconds,
    double LightStops,
    bool IsOpen,
    bool IsCovered,
    bool ClockWentBack,
    double? OverOrUnderStops)
{
    /// <summary>Whether the plan is fulfilled.</summary>
    public bool IsDone => Progress >= 1;
}
