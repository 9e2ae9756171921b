using Foramen.Rehearsal.Lines;

namespace Foramen.Rehearsal;

/// <summary>Someone who decides on time and flash from what can be seen, and may learn from what came of it.</summary>
public interface IPhotographer
{
    /// <summary>What to do with a sheet.</summary>
    ExposeLine Decide(SheetLine seen);

    /// <summary>What came of it.</summary>
    void Learn(SheetLine seen, ExposeLine done, JudgedLine judged);
}
