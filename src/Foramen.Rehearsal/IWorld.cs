using Foramen.Rehearsal.Lines;

namespace Foramen.Rehearsal;

/// <summary>A world with a hidden truth, one sheet after the other.</summary>
public interface IWorld
{
    /// <summary>The next sheet.</summary>
    SheetLine Next();

    /// <summary>What becomes of the sheet.</summary>
    JudgedLine Expose(ExposeLine done);
}
