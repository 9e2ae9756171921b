using Foramen.Engine.Quantities;
using Foramen.Rehearsal.Lines;
using Foramen.Rehearsal.Worlds;

namespace Foramen.Rehearsal.Photographers;

/// <summary>Knows the world, and nothing of the sheet's own scatter: as far as advice can go.</summary>
internal sealed class Oracle(IWorld world) : IPhotographer
{
    public ExposeLine Decide(SheetLine seen) => world is HiddenWorld hidden
        ? hidden.Oracle()
        : seen.Oracle ?? throw new RefusalException($"Sheet {seen.Number} of the outside world says nothing of an oracle; without it this policy cannot be played.");

    public void Learn(SheetLine seen, ExposeLine done, JudgedLine judged)
    {
        // It knows already.
    }
}
