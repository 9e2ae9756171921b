using Foramen.Rehearsal.Lines;

namespace Foramen.Rehearsal.Outside;

/// <summary>A world outside: gives a sheet, is told what is done to it, and judges it.</summary>
public sealed class OutsideWorld(LineChannel channel) : IWorld
{
    private SheetLine? sheet;

    /// <inheritdoc/>
    public SheetLine Next() => sheet = channel.Hear<SheetLine>("sheet").Checked();

    /// <inheritdoc/>
    public JudgedLine Expose(ExposeLine done)
    {
        channel.Say(done);
        return channel.Hear<JudgedLine>("judged").Checked(sheet!);
    }
}
