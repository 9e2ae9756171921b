namespace Foramen.Engine.Bath;

/// <summary>
/// Short warnings, where the work is done. The hazards are those that safety data sheets of such chemicals usually state (from memory): developing
/// agents sensitise the skin and harm water life, acids burn, sulphite and thiosulphate give off sulphur dioxide with acid, silver harms
/// water life.
/// </summary>
public static class Cautions
{
    /// <summary>Said before all else.</summary>
    public static string First => "The safety data sheet of what is in your bottle comes first, then the rules of the place; these lines come after both.";

    /// <summary>For mixing, at home.</summary>
    public static IReadOnlyList<string> Mixing { get; } =
    [
        "Always add acid to water, never water to acid.",
        "Do not handle powders outdoors in wind. Mix at home, with air, without breathing dust.",
        "Never mix fixer with acid or with bleach. It gives off choking gas.",
        "Never use drink or food bottles. Use bottles that cannot be mistaken, with a label and a safety cap.",
    ];

    /// <summary>For the way there and the work place.</summary>
    public static IReadOnlyList<string> Everywhere { get; } =
    [
        "Keep bottles away from children and pets, closed and upright, in a tray or a bag that cannot leak.",
        "Do not eat, drink or smoke while you work. Wash your hands afterwards.",
        "Carry clean water, paper towels, spare gloves and a bag for waste.",
        "Keep away from streams, ponds, drains and playgrounds.",
        "Ask before you work in a public or private place.",
        "Do not leave chemicals in a hot car or in frost. Warm solutions work faster and smell more; cold ones may not work.",
    ];

    /// <summary>For the way home.</summary>
    public static IReadOnlyList<string> Disposal { get; } =
    [
        "Used fixer holds silver, which harms water life. Keep all of it. Do not pour it away outdoors.",
        "Take all rinse water from the first rinses home too. It holds developer and fixer.",
        "Take used fixer to a waste site that accepts photo chemicals. Follow local rules.",
    ];

    /// <summary>When something has gone wrong.</summary>
    public static IReadOnlyList<string> Emergency { get; } =
    [
        "If it splashes in an eye, rinse with clean water for 15 minutes and get medical help.",
        "If someone swallows any of it, call a doctor or poison centre at once and show the label. Do not make them vomit.",
        "If you feel dizzy, or your chest is tight, close the bottles and move to fresh air.",
        "If your skin itches or cracks, stop using it and see a doctor.",
        "If you spill, keep people and animals away, wear gloves, soak it up, rinse with little water, take the waste home.",
    ];

    /// <summary>For one step, shortest and most needed first.</summary>
    public static IReadOnlyList<string> For(ProcessingBath bath) => bath switch
    {
        ProcessingBath.Developer =>
        [
            "Developer can cause a skin allergy that stays for life. Wear gloves every time.",
            "Keep developer off your skin and out of your eyes. Wear eye protection when you pour.",
        ],
        ProcessingBath.Stop =>
        [
            "Do not breathe the vapour. Work in moving air, never in a closed car or tent.",
            "Carry only the weak solution. Leave strong acid at home.",
            "If you have asthma, stay upwind of fixer and stop bath.",
        ],
        ProcessingBath.Rinse => ["This water holds developer. Wear gloves, and take it home."],
        ProcessingBath.Fix =>
        [
            "Never mix fixer with acid or with bleach. It gives off choking gas.",
            "If you have asthma, stay upwind of fixer and stop bath.",
            "Used fixer holds silver, which harms water life. Keep all of it. Do not pour it away outdoors.",
        ],
        ProcessingBath.Wash => ["The first wash water holds fixer and silver. Take it home."],
        _ => throw new ArgumentOutOfRangeException(nameof(bath)),
    };
}
