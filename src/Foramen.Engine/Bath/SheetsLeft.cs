namespace Foramen.Engine.Bath;

/// <summary>
/// How many more sheets a bottle is good for if they go on as they did. A sheet counts if the activity is at or above the profile's limit,
/// the liquid covers it, and the handbooks' capacities reach that far, when it goes in.
/// </summary>
public sealed record SheetsLeft
{
    /// <summary>Further than this nothing is forecast.</summary>
    public const int Horizon = 1000;

    private SheetsLeft()
    {
    }

    /// <summary>By the lowest, the middle and the highest activity; <see cref="Horizon"/> means that many or more.</summary>
    public required Spread<int> Sheets { get; init; }

    /// <summary>What ends the middle count.</summary>
    public required BottleEnd End { get; init; }

    /// <summary>The count for a bottle and a habit.</summary>
    public static SheetsLeft For(DeveloperBottle bottle, BottleHabit habit)
    {
        int? low = null, middle = null, high = null;
        var middleEnd = BottleEnd.None;
        for (var sheets = 0; sheets < Horizon && high is null; sheets++)
        {
            var hardEnd = bottle.Volume < bottle.Covering || bottle.Volume < habit.Lost ? BottleEnd.Volume
                : bottle.ByProductsSquareMetresPerLitre > bottle.Profile.KnownToSquareMetresPerLitre ? BottleEnd.Data
                : BottleEnd.None;
            var activity = bottle.Activity;
            var limit = bottle.Profile.ActivityLimit;
            if (low is null && (hardEnd != BottleEnd.None || activity.Low < limit))
            {
                low = sheets;
            }

            if (middle is null && (hardEnd != BottleEnd.None || activity.Middle < limit))
            {
                middle = sheets;
                middleEnd = hardEnd == BottleEnd.None ? BottleEnd.Activity : hardEnd;
            }

            if (hardEnd != BottleEnd.None || activity.High < limit)
            {
                high = sheets;
            }
            else
            {
                bottle = habit.Next(bottle);
            }
        }

        return new SheetsLeft { Sheets = new(low ?? Horizon, middle ?? Horizon, high ?? Horizon), End = middleEnd };
    }
}
