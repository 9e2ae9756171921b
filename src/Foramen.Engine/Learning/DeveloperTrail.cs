using Foramen.Engine.Bath;

namespace Foramen.Engine.Learning;

/// <summary>
/// A bottle's activity along its life at given parameters, with its slopes: by the additive and the multiplicative model, as in the Bath, but never narrowed
/// by what was seen, which is the evidence here.
/// </summary>
internal static class DeveloperTrail
{
    /// <summary>Calls <paramref name="seen"/> for each first tone: how far its logarithm lies from the expected one, and the slopes of the expected one.</summary>
    /// <param name="profile">The developer as believed before.</param>
    /// <param name="life">The bottle.</param>
    /// <param name="state">Logarithms of the parameters over the profile's, in the order of <see cref="DeveloperParameter"/>.</param>
    /// <param name="weakest">Activity below which it is followed no further.</param>
    /// <param name="seen">Takes residual and slopes; the array is used again.</param>
    public static void Follow(DeveloperProfile profile, DeveloperLife life, double[] state, double weakest, Action<double, double[]> seen)
    {
        var capacity = profile.CapacitySquareMetresPerLitre.Middle * Math.Exp(state[(int)DeveloperParameter.Capacity]);
        var ageing = Math.Exp(state[(int)DeveloperParameter.OpenLoss]);
        var middle = profile.Temperatures.Middle;
        var litres = life.Filled.Litres;
        var additive = new Slope(1, 0, 0);
        var multiplicative = new Slope(1, 0, 0);
        var slopes = new double[4];
        foreach (var happened in life.Events)
        {
            switch (happened)
            {
                case SheetDeveloped sheet:
                    var part = Math.Min(1, profile.LitresSpent(sheet.Area, sheet.MeanDensity, capacity) / Math.Max(litres, 1e-6));
                    additive = additive.Less(part);
                    multiplicative = multiplicative.Times(1 - part, part, 0);
                    litres = Math.Max(0, litres - sheet.Lost.Litres);
                    break;
                case PouredAway poured:
                    litres = Math.Max(0, litres - poured.Volume.Litres);
                    break;
                case FreshAdded fresh when litres + fresh.Volume.Litres > 0:
                    var share = fresh.Volume.Litres / (litres + fresh.Volume.Litres);
                    (additive, multiplicative) = (additive.MixedWith(share, fresh.Strength), multiplicative.MixedWith(share, fresh.Strength));
                    litres += fresh.Volume.Litres;
                    break;
                case TimePassed rest:
                    var hours = rest.Time.Seconds / 3600;
                    var loss = ageing * (rest.Open ? profile.OpenLossPerHour * hours : profile.ClosedLossPerDay * hours / 24) / middle.TimeFactor(rest.Temperature);
                    var left = Math.Exp(-loss);
                    (additive, multiplicative) = (additive.Times(left, 0, -loss * left), multiplicative.Times(left, 0, -loss * left));
                    break;
                case ImageAppeared image:
                    See(image);
                    break;
            }
        }

        void See(ImageAppeared image)
        {
            var celsius = image.Temperature.Celsius;
            var activity = (additive.Value + multiplicative.Value) / 2;
            if (celsius is < DeveloperWarmth.RefusedBelowCelsius or > DeveloperWarmth.RefusedAboveCelsius || activity < weakest)
            {
                return;
            }

            var tens = (middle.Reference.Celsius - celsius) / 10;
            slopes[(int)DeveloperParameter.AppearanceFactor] = -1;
            slopes[(int)DeveloperParameter.Capacity] = -(additive.ByCapacity + multiplicative.ByCapacity) / 2 / activity;
            slopes[(int)DeveloperParameter.OpenLoss] = -(additive.ByAgeing + multiplicative.ByAgeing) / 2 / activity;
            slopes[(int)DeveloperParameter.Q10] = tens;
            var expected = Math.Log(profile.Time.Seconds * middle.TimeFactor(image.Temperature) / profile.AppearanceFactor / activity)
                - state[(int)DeveloperParameter.AppearanceFactor] + (state[(int)DeveloperParameter.Q10] * tens);
            seen(Math.Log(image.Appearance.Seconds) - expected, slopes);
        }
    }

    /// <summary>An activity and its slopes by the logarithms of capacity and ageing.</summary>
    private readonly record struct Slope(double Value, double ByCapacity, double ByAgeing)
    {
        public Slope Less(double part) => Value <= part ? default : new(Value - part, ByCapacity + part, ByAgeing);

        public Slope Times(double factor, double byCapacity, double byAgeing)
            => new(Value * factor, (ByCapacity * factor) + (Value * byCapacity), (ByAgeing * factor) + (Value * byAgeing));

        public Slope MixedWith(double share, double strength)
            => new(((1 - share) * Value) + (share * strength), (1 - share) * ByCapacity, (1 - share) * ByAgeing);
    }
}
