using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>
/// A developer's parameters from the first tones seen in it. The time of a first tone is t0·f(T)/(W·a): its logarithm, less that of what the profile
/// foretells, is an observation of the logarithms of four parameters, each with a normal prior as wide as handbooks and common practice leave it.
/// The mode by Gauss and Newton, the inverse information there as covariance (Laplace; Tierney and Kadane, J. Am. Stat. Assoc. 81, 82, 1986); errors of
/// reading are Student's t with 4 degrees of freedom, so that one bad reading says little. The result is a function of the set of bottles alone.
/// </summary>
/// <remarks>
/// Limits: the activity is the mean of the additive and the multiplicative model; ageing follows the temperature by the starting law; that a print was
/// judged too light or too dark is not used here, because that cannot be told from its exposure, which takes it as evidence.
/// </remarks>
public static class DeveloperFit
{
    /// <summary>Spread of the logarithm of one time of appearance: a fifth either way at 90 %, as <see cref="DeveloperBottle"/> takes it.</summary>
    public const double ReadingSpread = 0.11;

    private const double Ninety = 1.645;
    private const int Count = 4;
    private const int MostSteps = 30;
    private const double Settled = 1e-9;
    private const double WeakestFollowed = 0.05;

    /// <summary>The developer after these bottles.</summary>
    /// <param name="profile">As believed before them.</param>
    /// <param name="lives">Bottles of this developer.</param>
    public static LearnedDeveloper Of(DeveloperProfile profile, IEnumerable<DeveloperLife> lives)
    {
        List<DeveloperLife> seen = [.. lives.Where(life => life.Events.Any(one => one is ImageAppeared)).OrderBy(life => life.Id, StringComparer.Ordinal)];
        double[] prior = [.. Enum.GetValues<DeveloperParameter>().Select(parameter => Math.Max(1e-4, PriorSpread(profile, parameter)))];
        var state = new double[Count];
        var tones = seen.Sum(life => life.Events.Count(one => one is ImageAppeared));
        var covariance = tones == 0 ? null : Run(profile, seen, prior, state);
        LearnedParameter[] learned =
        [
            .. Enum.GetValues<DeveloperParameter>().Select((parameter, i) =>
                Parameter(profile, parameter, state[i], covariance is null ? prior[i] : Math.Sqrt(covariance[i, i]), prior[i])),
        ];
        return new LearnedDeveloper(learned.Aggregate(profile, With), learned, tones, seen.Count);
    }

    /// <summary>
    /// The developer for one of its bottles. How strong that bottle was mixed cannot be told from its own first tones by a factor that they taught, so the
    /// factor is what the other bottles say; its own first tones speak of its strength instead, and of how fast that goes.
    /// </summary>
    /// <param name="profile">As believed before them.</param>
    /// <param name="lives">Bottles of this developer.</param>
    /// <param name="own">Id of the bottle.</param>
    public static LearnedDeveloper For(DeveloperProfile profile, IReadOnlyList<DeveloperLife> lives, string own)
    {
        var all = Of(profile, lives);
        if (!lives.Any(life => life.Id == own))
        {
            return all;
        }

        const int factor = (int)DeveloperParameter.AppearanceFactor;
        var others = Of(profile, lives.Where(life => life.Id != own));
        LearnedParameter[] parameters = [.. all.Parameters.Select((one, i) => i == factor ? others.Parameters[i] : one)];
        return all with { Profile = all.Profile with { AppearanceFactor = others.Profile.AppearanceFactor }, Parameters = parameters };
    }

    /// <summary>Ends of the usual range over the middle, as a standard deviation of the logarithm.</summary>
    private static double PriorSpread(DeveloperProfile profile, DeveloperParameter parameter) => parameter switch
    {
        // 6 to 9 on coated paper (common practice, no source).
        DeveloperParameter.AppearanceFactor => Math.Log(9.0 / 6) / 2 / Ninety,
        DeveloperParameter.Capacity => SpreadOf(profile.CapacitySquareMetresPerLitre.Low, profile.CapacitySquareMetresPerLitre.High),
        DeveloperParameter.OpenLoss => Math.Log(profile.AgeingFactor) / Ninety,
        _ => SpreadOf(TenCooler(profile.Temperatures.Low), TenCooler(profile.Temperatures.High)),
    };

    private static double TenCooler(TemperatureCoefficient law) => law.TimeFactor(Temperature.FromCelsius(law.Reference.Celsius - 10));

    private static double SpreadOf(double low, double high) => Math.Log(high / low) / 2 / Ninety;

    private static double ValueOf(DeveloperProfile profile, DeveloperParameter parameter) => parameter switch
    {
        DeveloperParameter.AppearanceFactor => profile.AppearanceFactor,
        DeveloperParameter.Capacity => profile.CapacitySquareMetresPerLitre.Middle,
        DeveloperParameter.OpenLoss => profile.OpenLossPerHour,
        _ => TenCooler(profile.Temperatures.Middle),
    };

    private static LearnedParameter Parameter(DeveloperProfile profile, DeveloperParameter parameter, double moved, double spread, double prior)
    {
        var before = ValueOf(profile, parameter);
        return new(
            parameter,
            before,
            new(before * Math.Exp(moved - (Ninety * spread)), before * Math.Exp(moved), before * Math.Exp(moved + (Ninety * spread))),
            spread > 0.9 * prior || before <= 0 || prior <= 1e-4,
            moved / prior);
    }

    private static DeveloperProfile With(DeveloperProfile profile, LearnedParameter learned)
    {
        if (learned.IsAssumed)
        {
            return profile;
        }

        var value = learned.Value;
        var reference = profile.Temperatures.Middle.Reference;
        return learned.Parameter switch
        {
            DeveloperParameter.AppearanceFactor => profile with { AppearanceFactor = Math.Clamp(value.Middle, 2, 60) },
            DeveloperParameter.Capacity => profile with
            {
                CapacitySquareMetresPerLitre = new(Math.Clamp(value.Low, 0.1, 100), Math.Clamp(value.Middle, 0.1, 100), Math.Clamp(value.High, 0.1, 100)),
            },
            DeveloperParameter.OpenLoss => profile with
            {
                OpenLossPerHour = Math.Min(1, value.Middle),
                ClosedLossPerDay = Math.Min(1, profile.ClosedLossPerDay * value.Middle / learned.Before),
                AgeingFactor = Math.Clamp(value.High / value.Middle, 1, 10),
            },
            _ => profile with { Temperatures = new(Law(value.Low), Law(value.Middle), Law(value.High)) },
        };

        TemperatureCoefficient Law(double q10) => TemperatureCoefficient.FromQ10(Math.Clamp(q10, 1, 5), reference);
    }

    private static double[,] Run(DeveloperProfile profile, List<DeveloperLife> lives, double[] prior, double[] state)
    {
        var information = new double[Count, Count];
        var gradient = new double[Count];
        for (var step = 0; step < MostSteps; step++)
        {
            Gather();
            var move = SymmetricMatrix.Solve(Factor(), gradient);
            var largest = 0.0;
            for (var i = 0; i < Count; i++)
            {
                var limited = Math.Clamp(move[i], -2 * prior[i], 2 * prior[i]);
                state[i] += limited;
                largest = Math.Max(largest, Math.Abs(limited));
            }

            if (largest < Settled)
            {
                break;
            }
        }

        Gather();
        return SymmetricMatrix.Inverse(Factor());

        double[,] Factor() => SymmetricMatrix.Factor(information)
            ?? throw new RefusalException("The first tones of this developer cannot be weighed together; one among them is far out of range.");

        void Gather()
        {
            Array.Clear(information);
            for (var i = 0; i < Count; i++)
            {
                information[i, i] = 1 / (prior[i] * prior[i]);
                gradient[i] = -state[i] * information[i, i];
            }

            foreach (var life in lives)
            {
                DeveloperTrail.Follow(profile, life, state, WeakestFollowed, (residual, slopes) =>
                {
                    var weight = RobustWeight.OfSquare(residual * residual / (ReadingSpread * ReadingSpread)) / (ReadingSpread * ReadingSpread);
                    for (var i = 0; i < Count; i++)
                    {
                        gradient[i] += weight * slopes[i] * residual;
                        for (var j = 0; j < Count; j++)
                        {
                            information[i, j] += weight * slopes[i] * slopes[j];
                        }
                    }
                });
            }
        }
    }
}
