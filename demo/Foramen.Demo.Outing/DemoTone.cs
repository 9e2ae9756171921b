using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Journal.Bodies;

namespace Foramen.Demo.Outing;

/// <summary>A tone of an invented scene: its luminance, where it lies on the sheet and, if it was touched there, where on the photograph.</summary>
internal sealed record DemoTone(
    string Name, double CandelasPerSquareMetre, WantedRendering Wanted, double XMillimetres = 0, double YMillimetres = 0, (double X, double Y)? Photograph = null)
{
    private const double SpreadStops = 0.2;

    public ToneRead Read(Journal.Ulid sheet, Journal.Ulid tone, double kelvin) => new()
    {
        Sheet = sheet,
        Tone = tone,
        Name = Name,
        LuminanceCandelasPerSquareMetre = CandelasPerSquareMetre,
        Rendering = Wanted,
        SdStops = SpreadStops,
        LightKelvin = kelvin,
        Source = Photograph is null ? ReadingSource.Luminance : ReadingSource.Photograph,
        AsRead = FormattableString.Invariant($"{CandelasPerSquareMetre:0} cd/m²"),
        PhotographX = Photograph?.X,
        PhotographY = Photograph?.Y,
    };

    public PlacedTone PlacedIn(PinholeCamera camera)
    {
        var point = SheetPoint.FromMillimetres(XMillimetres, YMillimetres);
        return new PlacedTone(
            Name,
            Enum.Parse<Rendering>(Wanted.ToString()),
            camera.ImageIlluminance(Luminance.FromCandelasPerSquareMetre(CandelasPerSquareMetre), point),
            1,
            camera.FalloffStops(point).Ratio,
            Stops.FromValue(SpreadStops),
            LuminanceLimit.Exact);
    }
}
