namespace Foramen.Pages.Contrast;

/// <summary>
/// Every pair of colours that the app's styles lay on each other. Which text comes to lie on which ground no reader of styles can know, so it is written
/// here; a test holds that no rule of a style sets a pair, and no style uses a token, that is not here.
/// </summary>
public static class ColourPairs
{
    /// <summary>Colours that say nothing: hairlines between things that are told apart by their words, and the hole that stands for a print not yet there.</summary>
    public static IReadOnlyList<string> Silent { get; } = ["hair", "#cbbfa6"];

    public static IReadOnlyList<ColourPair> All { get; } =
    [
        Text("ink", "paper", "everything that is read"),
        Text("ink", "card", "cards, fields, buttons, charts"),
        Text("ink", "wash", "units beside fields, the place you are in, buttons under the pointer"),
        Text("ink-soft", "paper", "hints, labels"),
        Text("ink-soft", "card", "second lines of cards, a button that waits"),
        Text("ink-soft", "wash", "cards under the pointer, the large action while it waits"),
        Text("mark", "paper", "messages beside fields, what will be lost"),
        Text("mark", "card", "a sheet that is running"),
        Text("mark", "wash", "the same under the pointer"),
        Text("on-action", "action", "the large action, what is chosen"),
        Text("on-action", "action-lit", "the large action, in its wedge of light"),
        Text("on-light", "light", "time is over"),
        Text("light", "on-light", "what to do, while time is over"),
        Text("on-caution", "caution", "cautions"),
        Text("ink", "rule 50% on card", "falloff over the sheet, the darkest cell", "paper", "night"),
        Text("#2b261e", "#fffdf7", "under a picture of a print", "paper"),
        Text("#2b261e", "#d9d2c2", "under a picture of a print", "night"),
        Text("#fffdf7", "#17130d", "names on a photograph, in their outline", "paper", "night"),
        Text("ink", "#000", "names on a photograph, in their outline", "red"),

        Shape("ink", "paper", "edges of buttons, icons, the slider's ruler"),
        Shape("ink", "card", "icons, lines and dots of charts"),
        Shape("ink", "wash", "icons under the pointer"),
        Shape("rule", "paper", "edges of fields, from outside"),
        Shape("rule", "card", "edges of fields, from inside; edges of bands in charts"),
        Shape("rule", "wash", "edge of the large action while it waits, hatching of the bare frame"),
        Shape("mark", "paper", "edge of a field with a mistake"),
        Shape("mark", "card", "tones that will be lost, the limit of a bottle"),
        Shape("good", "paper", "the level, when it is level"),
        Shape("focus", "paper", "ring about what has the focus"),
        Shape("focus", "card", "ring within a card"),
        Shape("focus", "wash", "ring within the place you are in"),
        Shape("on-action", "action", "ring within what is chosen"),
        Shape("ink", "light 45% on card", "lines and dots on a band of a chart, tones that the paper holds, the best guess within its bounds"),
        Shape("ink", "light 45% on paper", "steps that are done, on the rays of light"),
        Shape("mark", "light 45% on card", "now, on a band of a chart"),
        Shape("on-light", "light", "hole of the large action when it is urgent"),
        Shape("light", "#17130d", "the frame on a photograph, on its outline"),
        Shape("#fff", "#17130d", "the subject on a photograph, on its outline", "paper", "night"),
        Shape("ink", "#17130d", "the subject on a photograph, on its outline", "red"),
        Shape("#fff", "#000", "edge of a measured hole"),
    ];

    private static ColourPair Text(string over, string under, string where, params string[] themes) => new(over, under, where, IsText: true, themes);

    private static ColourPair Shape(string over, string under, string where, params string[] themes) => new(over, under, where, IsText: false, themes);
}
