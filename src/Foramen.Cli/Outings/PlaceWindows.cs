using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Exchange.Places;

namespace Foramen.Cli.Outings;

/// <summary>A place of the file with its windows, and when sky and lamps are in balance there.</summary>
internal sealed record PlaceWindows(
    PlaceRecord Record, OutingPlace Place, FacadeExposure? Exposure, IReadOnlyList<PlaceWindow> Windows, IReadOnlyList<LightWindow> Balances);
