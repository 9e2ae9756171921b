using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using Foramen.Field.Components;
using Foramen.Field.Units;
using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;

namespace Foramen.Field.Sheets.Process;

/// <summary>The topping up at the end of a sheet, as it is typed: texts until they are read, a message beside each that cannot be.</summary>
public sealed class TopUpForm
{
    /// <summary>Begins with what is due.</summary>
    public TopUpForm(TopUp due)
    {
        Fresh = NumberText.Show(due.Fresh.Millilitres, 1);
        Poured = NumberText.Show(due.Pour.Millilitres, 1);
    }

    /// <summary>Lost at the transfer, ml.</summary>
    public string Lost { get; set; } = NumberText.Show(DeveloperAccount.AssumedLostMillilitres, 1);

    /// <summary>Fresh developer, ml.</summary>
    public string Fresh { get; set; }

    /// <summary>Poured away first, ml.</summary>
    public string Poured { get; set; }

    /// <summary>The developer's colour; null where nobody looked.</summary>
    public DeveloperColour? Colour { get; set; }

    /// <summary>What is wrong, by field.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    /// <summary>What to write down; null where something is wrong, and then <see cref="Messages"/> says what.</summary>
    /// <param name="bottle">The bottle as it is, which the volumes must fit.</param>
    public (double Lost, TopUp TopUp)? Read(DeveloperBottle bottle)
    {
        Messages.Clear();
        var capacity = bottle.Capacity.Millilitres;
        var lost = Number(nameof(Lost), Lost, capacity, "what was lost");
        var fresh = Number(nameof(Fresh), Fresh, capacity, "the fresh part");
        var poured = Number(nameof(Poured), Poured, capacity, "what is poured away");
        if (Messages.Count > 0)
        {
            return null;
        }

        // What was lost has been taken for the usual amount so far.
        var inIt = Math.Min(capacity, bottle.Volume.Millilitres + DeveloperAccount.AssumedLostMillilitres - lost);
        if (poured > inIt)
        {
            Messages[nameof(Poured)] = Texts.Words.Process.NotThatMuch(inIt);
            return null;
        }

        if (inIt - poured + fresh > capacity + 0.01)
        {
            Messages[nameof(Poured)] = Texts.Words.Process.NoRoom(inIt + fresh - capacity);
            return null;
        }

        return (lost, new TopUp(Volume.FromMillilitres(poured), Volume.FromMillilitres(fresh)));
    }

    private double Number(string field, string text, double max, string what)
        => Messages.Try(field, () => text.Trim().Length == 0 ? 0 : NumberText.Read(text, 0, max, what, "ml"));
}
