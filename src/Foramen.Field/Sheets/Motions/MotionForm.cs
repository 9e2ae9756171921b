using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Field.Components;
using Foramen.Field.Sheets.Frame;
using Foramen.Field.Texts;
using Foramen.Field.Units;
using Foramen.Journal;
using Foramen.Journal.Kit;

namespace Foramen.Field.Sheets.Motions;

/// <summary>A moving region as it is typed in: texts until they are read, a message beside each that cannot be.</summary>
public sealed class MotionForm(UnitSystem units)
{
    private const double MetresPerMile = 1609.344;

    /// <summary>The region that is being changed; null for a new one.</summary>
    public Ulid? Changing { get; private set; }

    /// <summary>Where, as marked; null before it was.</summary>
    public RectangleInPhotograph? Place { get; set; }

    public string Name { get; set; } = "";

    /// <summary>One of <see cref="MotionHow"/>.</summary>
    public string How { get; set; } = MotionHow.GoesAway;

    public string TurnSeconds { get; set; } = "";

    public bool Anticlockwise { get; set; }

    /// <summary>To each side, percent of the region's width.</summary>
    public string Reach { get; set; } = "5";

    public string SwingSeconds { get; set; } = "3";

    public string CrossingSeconds { get; set; } = "";

    public bool Upright { get; set; }

    public string Width { get; set; } = "";

    public string Speed { get; set; } = "";

    public string Distance { get; set; } = "";

    /// <summary>Lighter than the background, stops.</summary>
    public double Stops { get; set; } = -2;

    public string Number { get; set; } = "1";

    public string Candelas { get; set; } = "";

    /// <summary>When it begins, percent of the exposure.</summary>
    public string From { get; set; } = "0";

    /// <summary>When it stops, percent of the exposure.</summary>
    public string To { get; set; } = "100";

    /// <summary>What is wrong, by field.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    /// <summary>Unit of the speed.</summary>
    public string SpeedUnit => units == UnitSystem.Metric ? "km/h" : "mph";

    /// <summary>Unit of widths and distances.</summary>
    public string LengthUnit => Distances.Unit(units);

    private double MetresPerSecondOf => (units == UnitSystem.Metric ? 1000 : MetresPerMile) / 3600;

    /// <summary>The message beside a field; null where there is none.</summary>
    public string? Message(string field) => Messages.GetValueOrDefault(field);

    /// <summary>Says that it is still open, so that nothing that was typed is lost on the way on.</summary>
    public void AskToFinish() => Messages[nameof(Place)] = Words.Motions.Unfinished;

    /// <summary>Takes over a region that was kept.</summary>
    public static MotionForm Of(Ulid motion, MotionDefinition known, UnitSystem units)
    {
        static string Number(double? value, double scale = 1, int decimals = 2) => value is { } number ? NumberText.Show(number * scale, decimals) : "";
        var form = new MotionForm(units) { Changing = motion };
        form.Place = MarkedArea.Between((known.Left, known.Top), (known.Left + known.Width, known.Top + known.Height));
        (form.Name, form.How) = (known.Name, known.How);
        (form.TurnSeconds, form.Anticlockwise) = (Number(known.TurnSeconds), known.Anticlockwise is true);
        (form.Reach, form.SwingSeconds) = (Number(known.ReachOfWidth, 100), Number(known.SwingSeconds));
        (form.CrossingSeconds, form.Upright) = (Number(known.CrossingSeconds), known.Upright is true);
        form.Width = known.WidthMetres is { } width ? Distances.Bare(width, units) : "";
        form.Distance = known.DistanceMetres is { } distance ? Distances.Bare(distance, units) : "";
        form.Speed = Number(known.SpeedMetresPerSecond, 1 / form.MetresPerSecondOf);
        form.Stops = known.LuminanceRatio is > 0 and { } ratio ? Math.Clamp(Math.Round(2 * Math.Log2(ratio)) / 2, -6, 6) : -2;
        form.Number = Number(known.Number ?? 1, 1, 0);
        form.Candelas = Number(known.Candelas);
        (form.From, form.To) = (Number(known.MovesFrom ?? 0, 100), Number(known.MovesTo ?? 1, 100));
        return form;
    }

    /// <summary>What it comes to; null where something is missing or wrong.</summary>
    public MotionDefinition? Work()
    {
        Messages.Clear();
        if (string.IsNullOrWhiteSpace(Name))
        {
            Messages[nameof(Name)] = Words.Motions.NameMissing;
        }

        if (Place is null)
        {
            Messages[nameof(Place)] = Words.Motions.PlaceMissing;
        }

        var from = Percent(nameof(From), From, Words.Motions.FromWhat);
        var to = Percent(nameof(To), To, Words.Motions.ToWhat);
        if (to < from)
        {
            Messages[nameof(To)] = Words.Motions.EndsBefore;
        }

        var bare = new MotionDefinition
        {
            Name = Name.Trim(),
            How = How,
            Left = Place?.TopLeft.X ?? 0,
            Top = Place?.TopLeft.Y ?? 0,
            Width = Place is null ? 0 : Place.BottomRight.X - Place.TopLeft.X,
            Height = Place is null ? 0 : Place.BottomRight.Y - Place.TopLeft.Y,
            MovesFrom = from > 0 ? from : null,
            MovesTo = to < 1 ? to : null,
        };
        var said = How switch
        {
            MotionHow.Turns => bare with
            {
                TurnSeconds = Read(nameof(TurnSeconds), TurnSeconds, 0.1, 1e5, Words.Motions.TurnWhat, "s"),
                Anticlockwise = Anticlockwise ? true : null,
            },
            MotionHow.Sways => bare with
            {
                ReachOfWidth = Read(nameof(Reach), Reach, 0, 50, Words.Motions.ReachWhat, "%") / 100,
                SwingSeconds = Read(nameof(SwingSeconds), SwingSeconds, 0.05, 1e5, Words.Motions.SwingWhat, "s"),
            },
            MotionHow.Flows => bare with
            {
                CrossingSeconds = Read(nameof(CrossingSeconds), CrossingSeconds, 0.1, 1e6, Words.Motions.CrossingWhat, "s"),
                Upright = Upright ? true : null,
            },
            MotionHow.Passes => bare with
            {
                WidthMetres = Metres(nameof(Width), Width, 0.01, 1000, Words.Motions.WidthWhat),
                SpeedMetresPerSecond = Going(),
                DistanceMetres = Metres(nameof(Distance), Distance, 0.1, 1e5, Words.Frame.DistanceWhat),
                LuminanceRatio = Math.Pow(2, Stops),
                Number = Count(),
            },
            MotionHow.Lamp => bare with
            {
                Candelas = Read(nameof(Candelas), Candelas, 0.01, 1e7, Words.Motions.CandelasWhat, "cd"),
                SpeedMetresPerSecond = Going(),
                DistanceMetres = Metres(nameof(Distance), Distance, 0.1, 1e5, Words.Frame.DistanceWhat),
                Number = Count(),
            },
            _ => bare,
        };
        if (Messages.Count > 0)
        {
            return null;
        }

        // The Engine has the last word on what can be worked with.
        try
        {
            said.ToRegion();
            return said;
        }
        catch (RefusalException refusal)
        {
            Messages[nameof(How)] = refusal.Message;
            return null;
        }
    }

    private double Going() => MetresPerSecondOf * Read(nameof(Speed), Speed, 0, 300, Words.Motions.SpeedWhat, SpeedUnit);

    private int Count() => (int)Math.Round(Read(nameof(Number), Number, 1, 10_000, Words.Motions.NumberWhat, "") is var count && double.IsNaN(count) ? 1 : count);

    private double Metres(string field, string text, double min, double max, string what) => Messages.Try(field, () => Distances.Read(text, min, max, what, units));

    private double Percent(string field, string text, string what) => Read(field, text, 0, 100, what, "%") / 100;

    private double Read(string field, string text, double min, double max, string what, string unit)
        => Messages.Try(field, () => NumberText.Read(text, min, max, what, unit));
}
