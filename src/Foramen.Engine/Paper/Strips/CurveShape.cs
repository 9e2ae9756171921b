namespace Foramen.Engine.Paper;

/// <summary>The parameters of <see cref="LogisticCurve"/> while they are being fitted, with the derivatives of the density.</summary>
internal readonly record struct CurveShape(PaperKind Kind, double Min, double Net, double Steepness, double Middle, double Asymmetry)
{
    private double Sign => Kind == PaperKind.NegativeWorking ? 1 : -1;

    /// <summary>Density of paper that saw no light.</summary>
    public double Unexposed => Kind == PaperKind.NegativeWorking ? Min : Min + Net;

    /// <summary>As a curve; what lies beyond the ranges of one is taken at their ends.</summary>
    public LogisticCurve ToCurve()
    {
        var min = Math.Clamp(Min, 0, 0.5);
        return LogisticCurve.Create(
            Kind,
            Engine.Quantities.Density.FromValue(min),
            Engine.Quantities.Density.FromValue(min + Math.Clamp(Net, 0.3, 3.4)),
            Math.Clamp(Steepness, 1, 30),
            Math.Clamp(Middle, -6, 8),
            Math.Clamp(Asymmetry, 0.2, 5));
    }

    public double Density(double lgExposure) => Min + (Net * Math.Pow(1 + Ratio(lgExposure), -Asymmetry));

    /// <summary>dD/dx.</summary>
    public double Slope(double lgExposure)
    {
        var ratio = Ratio(lgExposure);
        return Sign * Net * Asymmetry * Steepness * ratio * Math.Pow(1 + ratio, -Asymmetry - 1);
    }

    /// <summary>The largest slope, Dn·k·(g/(g + 1))^(g + 1), where the exponential is 1/g.</summary>
    public double SteepestSlope => Net * Steepness * Math.Pow(Asymmetry / (Asymmetry + 1), Asymmetry + 1);

    /// <summary>The lg exposure at which this share of the net density is reached.</summary>
    public double LgExposureAt(double share) => Middle - (Sign * Math.Log(Math.Pow(share, -1 / Asymmetry) - 1) / Steepness);

    /// <summary>Derivatives of the density by ln Dmin, ln Dn, ln k, x0 and ln g.</summary>
    public void Gradient(double lgExposure, Span<double> gradient)
    {
        var ratio = Ratio(lgExposure);
        var part = Math.Pow(1 + ratio, -Asymmetry);
        var bySteepening = Net * Asymmetry * ratio * part / (1 + ratio);
        gradient[0] = Min;
        gradient[1] = Net * part;
        gradient[2] = Sign * Steepness * (lgExposure - Middle) * bySteepening;
        gradient[3] = -Sign * Steepness * bySteepening;
        gradient[4] = -Net * part * Asymmetry * Math.Log(1 + ratio);
    }

    // Beyond e^±60 the curve is flat to the last digit; the limit keeps products of nothing and everything out.
    private double Ratio(double lgExposure) => Math.Exp(Math.Clamp(-Sign * Steepness * (lgExposure - Middle), -60, 60));
}
