namespace Foramen.Architecture.Tests.Samples.Unused;

internal interface IBell
{
    void Ring();

    void Muffle();
}

internal sealed class Chime : IBell
{
    public void Ring() => Strike();

    public void Muffle() => Strike();

    private static void Strike()
    {
        // Only by way of the interface.
    }
}
