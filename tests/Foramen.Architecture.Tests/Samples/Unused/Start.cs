namespace Foramen.Architecture.Tests.Samples.Unused;

/// <summary>Entered from outside; all it reaches is used.</summary>
internal sealed class Start
{
    public Start(IBell bell, Door door)
    {
        bell.Ring();
        door.Open();
        _ = Work.Steps().Select(Work.Twice).ToList();
        _ = Work.WaitAsync();
        _ = new Answer(1).Asked;
        _ = Activator.CreateInstance<Chime>();
        _ = Activator.CreateInstance<BarnDoor>();
    }
}
