using Foramen.Engine.Bath;
using Foramen.Journal.Fold;

namespace Foramen.Journal.Bottles;

/// <summary>One thing that happened to a bottle, with the bottle before and after it.</summary>
/// <param name="Happening">What.</param>
/// <param name="Before">The bottle just before, aged up to then.</param>
/// <param name="After">The bottle just after.</param>
/// <param name="Load">What the sheet asked for; null for anything but a sheet.</param>
public sealed record DeveloperStep(BottleHappening Happening, DeveloperBottle Before, DeveloperBottle After, SheetLoad? Load);
