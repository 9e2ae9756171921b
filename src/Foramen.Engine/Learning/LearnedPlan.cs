using Foramen.Engine.Exposure;
using Foramen.Engine.Paper;

namespace Foramen.Engine.Learning;

/// <summary>A scene as it is planned with what was learned.</summary>
/// <param name="Basis">The scene as labelled.</param>
/// <param name="Paper">The paper as believed; speed, meter, sky, camera and developer are all put into it, because only their sum acts.</param>
/// <param name="Tones">The tones as believed; each with the spread that is its own.</param>
/// <param name="Errors">What is still unsure.</param>
/// <param name="Flash">The flash as believed.</param>
/// <param name="Planner">The planner for it.</param>
public sealed record LearnedPlan(
    PlanBasis Basis, PhotographicPaper Paper, IReadOnlyList<PlacedTone> Tones, ExposureErrors Errors, FlashSetup Flash, ExposurePlanner Planner);
