using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>One bar of the reliability diagram.</summary>
/// <param name="From">Odds from.</param>
/// <param name="To">Odds to.</param>
/// <param name="Sheets">Sheets whose odds fell in here.</param>
/// <param name="MeanOdds">Their mean odds.</param>
/// <param name="KeptShare">Share of them that was kept.</param>
/// <param name="Interval">Where that share may well lie (95 %, Wilson).</param>
public sealed record ReliabilityBin(
    Probability From, Probability To, int Sheets, Probability MeanOdds, Probability KeptShare, ShareInterval Interval);
