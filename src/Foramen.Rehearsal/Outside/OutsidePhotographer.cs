using Foramen.Rehearsal.Lines;

namespace Foramen.Rehearsal.Outside;

/// <summary>A photographer outside: is told sheet and judgement, and says what to do.</summary>
public sealed class OutsidePhotographer(LineChannel channel) : IPhotographer
{
    /// <inheritdoc/>
    public ExposeLine Decide(SheetLine seen)
    {
        channel.Say(seen with { Oracle = null });
        return channel.Hear<ExposeLine>("expose").Checked($"sheet {seen.Number}");
    }

    /// <inheritdoc/>
    public void Learn(SheetLine seen, ExposeLine done, JudgedLine judged) => channel.Say(judged);
}
