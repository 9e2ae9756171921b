namespace Foramen.FieldBench;

/// <summary>What was measured of an app.</summary>
/// <param name="Name">The app.</param>
/// <param name="Milliseconds">Cold starts, from the start of navigation to the first heading drawn by the app.</param>
/// <param name="TransferBytes">Bytes over the wire for one cold start, headers included, without what a service worker fetches later.</param>
internal sealed record Measured(string Name, IReadOnlyList<double> Milliseconds, long TransferBytes)
{
    public double MedianMilliseconds => Milliseconds.Order().ElementAt(Milliseconds.Count / 2);
}
