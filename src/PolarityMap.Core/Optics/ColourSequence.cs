namespace PolarityMap.Core.Optics;

/// <summary>
/// The order in which fibre colours are counted. The order is a matter of the sequence, not of the colours:
/// IEC 60304 names the twelve colours but no order, so a sequence is a named list.
/// </summary>
public sealed class ColourSequence
{
    /// <summary>
    /// TIA-598: blue, orange, green, brown, slate, white, red, black, yellow, violet, rose, aqua (more than eight public
    /// sources).
    /// </summary>
    public static readonly ColourSequence Tia598 = Of("TIA-598", "more than 8 public sources",
        ["blue", "orange", "green", "brown", "slate", "white", "red", "black", "yellow", "violet", "rose", "aqua"]);

    private static ColourSequence[]? s_all;

    private static string[]? s_names;

    private readonly FibreColour[] _round;

    private readonly bool _ringsAreBlack;

    private ColourSequence(string name, string source, FibreColour[] round, bool ringsAreBlack = false)
    {
        Name = name;
        Source = source;
        _round = round;
        _ringsAreBlack = ringsAreBlack;
    }

    /// <summary>
    /// Every sequence on record, the default first. Fibres 13 to 16 of a unit of sixteen have colours of their own, on
    /// whose order the sources differ. The German order is that of DIN VDE 0888.
    /// </summary>
    public static IReadOnlyList<ColourSequence> All => s_all ??=
    [
        Tia598,
        Of("TIA-598, 13-16 olive first", "first twelve more than 8 public sources, the other four 1",
            ["blue", "orange", "green", "brown", "slate", "white", "red", "black", "yellow", "violet", "rose", "aqua", "olive", "magenta", "tan", "lime"]),
        Of("TIA-598, 13-16 lime first", "first twelve more than 8 public sources, the other four from memory",
            ["blue", "orange", "green", "brown", "slate", "white", "red", "black", "yellow", "violet", "rose", "aqua", "lime", "tan", "olive", "magenta"]),
        Of("DIN VDE 0888", "order 3 public sources; ring marks, and transparent for the black one that has them, 1",
            ["red", "green", "blue", "yellow", "white", "grey", "brown", "violet", "turquoise", "black", "orange", "pink"],
            ringsAreBlack: true),
    ];

    /// <summary>The names of <see cref="All"/>, in its order.</summary>
    public static IReadOnlyList<string> Names => s_names ??= [.. All.Select(s => s.Name)];

    /// <summary>The sequence's name.</summary>
    public string Name { get; }

    /// <summary>How well the order is attested, in words; "the document" for a user's own.</summary>
    public string Source { get; }

    /// <summary>How many fibres have a colour before the sequence begins again with one more tracer.</summary>
    public int Length => _round.Length;

    /// <summary>
    /// The colour of fibre <paramref name="number"/>, counted from 1. Every further round of the sequence adds one tracer:
    /// a stripe in TIA-598, where that of the black fibre is yellow; a ring in DIN VDE 0888, where a transparent fibre
    /// stands for the black one.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Number below 1.</exception>
    public FibreColour this[int number]
    {
        get
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
            int tracers = (number - 1) / _round.Length;
            FibreColour colour = _round[(number - 1) % _round.Length];

            // A black ring cannot be seen on black.
            return tracers > 0 && _ringsAreBlack && colour.Name == "black"
                ? FibreColours.Transparent with { Number = colour.Number, Tracers = tracers }
                : colour with { Tracers = tracers };
        }
    }

    /// <summary>The sequence on record of that very name, or null.</summary>
    public static ColourSequence? Find(string name)
    {
        foreach (ColourSequence sequence in All)
        {
            if (string.Equals(sequence.Name, name, StringComparison.Ordinal))
                return sequence;
        }

        return null;
    }

    /// <summary>
    /// A user's own order. Known are the sixteen colours of TIA-598, and grey, pink and turquoise for slate, rose and aqua;
    /// each at most once. Null for a list that is none, and <paramref name="why"/> then says what is wrong with it.
    /// </summary>
    public static ColourSequence? Own(string name, IReadOnlyList<string> colourNames, out string why)
    {
        if (Find(name) is not null)
        {
            why = $"'{name}' is the name of a sequence on record; give your own another name";
            return null;
        }

        if (colourNames.Count == 0)
        {
            why = "a colour sequence needs at least one colour";
            return null;
        }

        var round = new FibreColour[colourNames.Count];
        for (int i = 0; i < round.Length; i++)
        {
            if (!FibreColours.TryFind(colourNames[i], out FibreColour colour))
            {
                why = $"unknown colour '{colourNames[i]}'; expected {FibreColours.Known}";
                return null;
            }

            int before = Array.FindIndex(round, 0, i, c => c.Code == colour.Code);
            if (before >= 0)
            {
                why = $"'{colourNames[i]}' is the same colour as number {before + 1}; each may stand once";
                return null;
            }

            round[i] = colour with { Number = i + 1 };
        }

        why = "";
        return new ColourSequence(name, "the document", round);
    }

    /// <inheritdoc/>
    public override string ToString() => Name;

    private static ColourSequence Of(string name, string source, ReadOnlySpan<string> colours, bool ringsAreBlack = false)
    {
        var round = new FibreColour[colours.Length];
        for (int i = 0; i < round.Length; i++)
        {
            if (!FibreColours.TryFind(colours[i], out FibreColour colour))
                throw new InvalidOperationException($"'{colours[i]}' is no known colour");
            round[i] = colour with { Number = i + 1 };
        }

        return new ColourSequence(name, source, round, ringsAreBlack);
    }
}
