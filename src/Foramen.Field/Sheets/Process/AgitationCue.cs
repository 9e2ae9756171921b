namespace Foramen.Field.Sheets.Process;

/// <summary>What the hand does now.</summary>
/// <param name="Action">What.</param>
/// <param name="SecondsLeft">For how long still, s; never beyond the end of the bath.</param>
public sealed record AgitationCue(AgitationAction Action, double SecondsLeft);
