using System.Globalization;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Strips;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Strips;

/// <summary>
/// A direct-positive box that is a stop slower than its label: Dmin 0.08, Dn 1.9, k 7; the strips are made from that curve without noise, so the fitted description
/// must ask for the very time that the strip showed.
/// </summary>
public class FittedPaperTests
{
    private static readonly Ulid Box = Id(71);
    private static readonly double[] Seconds = [.. Enumerable.Range(0, 11).Select(i => 16 * Math.Pow(2, 0.5 * i))];

    private static readonly PaperDefinition Label = new()
    {
        Name = "box of June", Kind = "directPositive", Speed = new SpeedDefinition { ExposureIndex = 3, AtSeconds = 120, LightKelvin = 5503, SdStops = 0.8 },
    };

    private static readonly CharacteristicCurve Truth = Label.ToPaper().Curve.Faster(Stops.FromValue(-1));

    [Fact]
    public void A_strip_corrects_the_label()
    {
        var ledger = Ledger.Empty.With(Entries(0.05, read: true));
        var strips = ledger.CurveStripsOf(Box);
        Assert.Equal(Id(81), Assert.Single(strips).Id);
        var fit = StripReading.Fit(Label, strips);
        var described = FittedPaper.Describe(Label, fit);
        Assert.Equal(Label.Name, described.Name);

        // The index of the label at two minutes is 3; a stop slower is 1.5 there.
        var index = described.Speed.ExposureIndex!.Value * Math.Pow(120 / described.Speed.AtSeconds!.Value, -0.1);
        Assert.Equal(1.5, index, 0.06);
        Assert.InRange(described.Speed.SdStops!.Value, 0.2, 0.3);
        Assert.Equal(90, described.IsoRange!.Value, 4.0);
        Assert.Null(described.Failure);
        Assert.Equal(Math.Round(fit.Curve.Asymmetry, 3), described.Asymmetry);
        Assert.Equal("Fitted to 1 strip.", described.Note);

        // Four digits.
        Assert.Equal(fit.Index.At.Seconds.ToString("G4", CultureInfo.InvariantCulture), described.Speed.AtSeconds.Value.ToString("G10", CultureInfo.InvariantCulture));

        // The description, read back, gives the density that the strip showed.
        var response = PaperResponse.Of(described.ToPaper(), StripReading.LightOf(strips[0].Made!.Body));
        var density = response.Paper.Curve.DensityAt(response.EffectiveExposure(Illuminance.FromLux(0.05), 1, Duration.FromSeconds(Seconds[5])));
        Assert.Equal(strips[0].Read!.Body.Densities![5]!.Value, density.Value, 0.04);
    }

    // The same box in a tenth of the light: the times tell failure from speed, and both strips follow p 0.9.
    [Fact]
    public void Two_strips_in_different_light_tell_the_failure()
    {
        var ledger = Ledger.Empty.With([.. Entries(0.05, read: true, lightSd: 0.02), .. Entries(0.005, read: true, 82, lightSd: 0.02)]);
        var described = FittedPaper.Describe(Label, StripReading.Fit(Label, ledger.CurveStripsOf(Box)));
        Assert.Equal("Fitted to 2 strips.", described.Note);
        Assert.Equal("schwarzschild", described.Failure!.Law);
        Assert.Equal(0.9, described.Failure.Exponent!.Value, 0.02);
        Assert.InRange(described.Failure.ExponentSd!.Value, 0.001, 0.05);
    }

    [Fact]
    public void The_description_names_its_strips_and_is_the_next_version_of_the_box()
    {
        var ledger = Ledger.Empty.With(Entries(0.05, read: true));
        var fit = StripReading.Fit(Label, ledger.CurveStripsOf(Box));
        ledger = ledger.With(By(Phone, 9, 9, new PaperDefined { Paper = Box, Definition = FittedPaper.Describe(Label, fit), Strips = [Id(81)] }));
        var item = ledger.Papers.Find(Box)!;
        Assert.Equal(2, item.Versions.Count);
        Assert.Equal(3, item.Versions[0].Body.Speed.ExposureIndex);
        Assert.NotEqual(3, item.Current.Body.Speed.ExposureIndex);
    }

    [Fact]
    public void A_strip_that_was_not_read_is_no_evidence()
    {
        var ledger = Ledger.Empty.With(Entries(0.05, read: false));
        Assert.Empty(ledger.CurveStripsOf(Box));
        Assert.Contains("make one and read it first", Assert.Throws<RefusalException>(() => StripReading.Fit(Label, [])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Densities_must_be_as_many_as_patches()
    {
        var made = new StripMade { Strip = Id(1), Paper = Box, Purpose = StripPurpose.Curve, OnStripLux = 1, LightKelvin = 3000, Seconds = [1, 2, 4] };
        var refusal = Assert.Throws<RefusalException>(() => made.ToStrip(new StripRead { Strip = Id(1), By = StripReader.Eye, Densities = [1, 2] }));
        Assert.Contains("2 densities for 3 patches", refusal.Message, StringComparison.Ordinal);
    }

    private static List<Entry> Entries(double lux, bool read, int strip = 81, double? lightSd = null)
    {
        var actinic = Actinic.Factor(LightColour.Noon.ToSpectrum(), PaperSensitivity.BlueSensitive);
        var densities = Seconds.Select(seconds =>
            (double?)Truth.DensityAt(LuminousExposure.FromLuxSeconds(lux * actinic * Math.Pow(seconds, 0.9))).Value);
        var at = 3 * (strip - 81);
        var entries = new List<Entry>
        {
            By(Phone, at + 1, at + 1, new PaperDefined { Paper = Box, Definition = Label }),
            By(Phone, at + 2, at + 2, new StripMade { Strip = Id(strip), Paper = Box, Purpose = StripPurpose.Curve, OnStripLux = lux, LightKelvin = 5503, LightSdStops = lightSd, Seconds = Seconds }),
        };
        if (read)
        {
            entries.Add(By(Phone, at + 3, at + 3, new StripRead { Strip = Id(strip), By = StripReader.Densitometer, Densities = [.. densities], MaskedDensity = 1.98 }));
        }

        return entries;
    }
}
