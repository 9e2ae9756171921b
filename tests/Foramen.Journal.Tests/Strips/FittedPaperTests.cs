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

        // The description, read back, gives the density that the strip showed.
        var response = PaperResponse.Of(described.ToPaper(), StripReading.LightOf(strips[0].Made!.Body));
        var density = response.Paper.Curve.DensityAt(response.EffectiveExposure(Illuminance.FromLux(0.05), 1, Duration.FromSeconds(Seconds[5])));
        Assert.Equal(strips[0].Read!.Body.Densities![5]!.Value, density.Value, 0.04);
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
        Assert.Throws<RefusalException>(() => StripReading.Fit(Label, []));
    }

    [Fact]
    public void Densities_must_be_as_many_as_patches()
    {
        var made = new StripMade { Strip = Id(1), Paper = Box, Purpose = StripPurpose.Curve, OnStripLux = 1, LightKelvin = 3000, Seconds = [1, 2, 4] };
        var refusal = Assert.Throws<RefusalException>(() => made.ToStrip(new StripRead { Strip = Id(1), By = StripReader.Eye, Densities = [1, 2] }));
        Assert.Contains("2 densities for 3 patches", refusal.Message, StringComparison.Ordinal);
    }

    private static List<Entry> Entries(double lux, bool read)
    {
        var actinic = Actinic.Factor(LightColour.Noon.ToSpectrum(), PaperSensitivity.BlueSensitive);
        var densities = Seconds.Select(seconds =>
            (double?)Truth.DensityAt(LuminousExposure.FromLuxSeconds(lux * actinic * Math.Pow(seconds, 0.9))).Value);
        var entries = new List<Entry>
        {
            By(Phone, 1, 1, new PaperDefined { Paper = Box, Definition = Label }),
            By(Phone, 2, 2, new StripMade { Strip = Id(81), Paper = Box, Purpose = StripPurpose.Curve, OnStripLux = lux, LightKelvin = 5503, Seconds = Seconds }),
        };
        if (read)
        {
            entries.Add(By(Phone, 3, 3, new StripRead { Strip = Id(81), By = StripReader.Densitometer, Densities = [.. densities], MaskedDensity = 1.98 }));
        }

        return entries;
    }
}
