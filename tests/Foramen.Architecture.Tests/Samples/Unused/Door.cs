namespace Foramen.Architecture.Tests.Samples.Unused;

internal abstract class Door
{
    public abstract void Open();

    public void Slam() => Open();
}

internal sealed class BarnDoor : Door
{
    public override void Open() => Creak();

    private static void Creak()
    {
        // Only by way of the base.
    }
}
