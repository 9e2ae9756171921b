using Foramen.Engine.Exposure;
using Foramen.Exchange.Places;

namespace Foramen.Cli.Outings;

/// <summary>A place of the file with its windows.</summary>
internal sealed record PlaceWindows(PlaceRecord Record, OutingPlace Place, FacadeExposure? Exposure, IReadOnlyList<PlaceWindow> Windows);
