namespace PolarityMap.Documents.Observations;

/// <summary>The words of an observation file, each written once.</summary>
public static class SeenWords
{
    public const string Light = "light";
    public const string Lamp = "lamp";
    public const string Loss = "loss";
    public const string Look = "look";
    public const string Reached = "reached";

    public const string Plant = "plant";
    public const string Test = "test";
    public const string At = "at";
    public const string Seen = "seen";
    public const string Is = "is";
    public const string Value = "value";
    public const string Note = "note";

    public const string Nowhere = "nowhere";
    public const string NowhereAt = "nowhere at ";
    public const string On = "on";
    public const string Off = "off";
    public const string AsDescribed = "as described";
    public const string Different = "different";
    public const string No = "no";

    /// <summary>What can be seen, in the order in which it is explained.</summary>
    public static readonly IReadOnlyList<string> Tests = [Light, Lamp, Loss, Look, Reached];

    /// <summary>The headings of a table.</summary>
    public static readonly IReadOnlyList<string> Columns = [Test, At, Seen, Value, Note];

    /// <summary>The key that says what was seen where a mapping is written: what comes out somewhere is seen, what is so or so is.</summary>
    public static string OutcomeKey(string test) => test is Light or Loss ? Seen : Is;

    /// <summary>The keys of a mapping for a test.</summary>
    public static IReadOnlyList<string> KeysOf(string test) => test == Loss ? [test, Seen, Value, Note] : [test, OutcomeKey(test), Note];

    /// <summary>What may be seen by a test, worded to follow "expected".</summary>
    public static string Expected(string test) => test switch
    {
        Light => "where it came out, such as SW-R/1:B, or nowhere, or 'nowhere at K-R' where only one part was looked at",
        Lamp => "on or off",
        Loss => "where it was measured, such as SW-R/1:B",
        Look => "as described or different",
        _ => "no",
    };
}
