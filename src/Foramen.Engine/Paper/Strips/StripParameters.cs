namespace Foramen.Engine.Paper;

/// <summary>
/// Where each unknown of a fit stands: the curve's five, of which all that must be positive are taken by their logarithm; the correction of the failure
/// exponent; and for each strip the lg by which its light was other than said.
/// </summary>
internal static class StripParameters
{
    public const int LnMin = 0;
    public const int LnNet = 1;
    public const int LnSteepness = 2;
    public const int Middle = 3;
    public const int LnAsymmetry = 4;
    public const int CurveCount = 5;
    public const int Failure = 5;
    public const int FirstLight = 6;

    public static CurveShape Shape(PaperKind kind, ReadOnlySpan<double> free) => new(
        kind,
        Math.Exp(free[LnMin]),
        Math.Exp(free[LnNet]),
        Math.Exp(free[LnSteepness]),
        free[Middle],
        Math.Exp(free[LnAsymmetry]));

    public static double[] Free(CurveShape shape, int strips)
    {
        var free = new double[FirstLight + strips];
        free[LnMin] = Math.Log(shape.Min);
        free[LnNet] = Math.Log(shape.Net);
        free[LnSteepness] = Math.Log(shape.Steepness);
        free[Middle] = shape.Middle;
        free[LnAsymmetry] = Math.Log(shape.Asymmetry);
        return free;
    }
}
