using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Schedules;

/// <summary>What the cells of a column hold, so that every writer can align, format and sort them.</summary>
public enum CellKind
{
    /// <summary>Words, names and addresses; never a formula, whatever it begins with.</summary>
    Text,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>A length in metres.</summary>
    Metres,

    /// <summary>A loss or margin in decibels.</summary>
    Decibels,

    /// <summary>Left empty, to be filled in by hand.</summary>
    Blank,
}

/// <summary>A column of a schedule.</summary>
/// <param name="Key">Its name for programs: lower case, words joined by hyphens; unique in the schedule and kept between versions.</param>
/// <param name="Heading">Its name for people, with the unit where there is one.</param>
/// <param name="Kind">What its cells hold.</param>
/// <param name="ForPrograms">True where only a program that reads the table back has a use for it: paper leaves it out.</param>
public sealed record ScheduleColumn(string Key, string Heading, CellKind Kind = CellKind.Text, bool ForPrograms = false);

/// <summary>One cell: a text or a number, or nothing.</summary>
public readonly record struct Cell
{
    // A large plant has millions of cells, most of them texts that are shared, so a cell is one reference.
    private readonly object? _value;

    private const int SmallCount = 256;

    private static readonly object[] s_small = [.. Enumerable.Range(0, SmallCount).Select(n => (object)(decimal)n)];

    private Cell(object? value) => _value = value;

    /// <summary>Nothing is known or nothing applies.</summary>
    public static Cell Empty => default;

    /// <summary>The words of a text cell, else null.</summary>
    public string? Text => _value as string;

    /// <summary>The number of a number cell in the unit of its column's kind, else null.</summary>
    public decimal? Number => _value is decimal number ? number : null;

    public bool IsEmpty => _value is null;

    /// <summary>Words; null and the empty text are an empty cell.</summary>
    public static Cell Of(string? text) => string.IsNullOrEmpty(text) ? Empty : new(text);

    /// <summary>A whole number.</summary>
    public static Cell Of(int number) => number is >= 0 and < SmallCount ? new(s_small[number]) : new((decimal)number);

    /// <summary>A length, in metres.</summary>
    public static Cell Of(Length? length) => length is { } l ? new(l.Millimetres / 1000m) : Empty;

    /// <summary>A length in metres that is the sum of many, and so may be longer than a <see cref="Length"/>.</summary>
    public static Cell OfMetres(decimal metres) => new(metres);

    /// <summary>A loss or margin, in decibels.</summary>
    public static Cell Of(Decibel? loss) => loss is { } l ? new(l.Value) : Empty;
}

/// <summary>
/// A table for the field, told once and written as HTML, CSV and spreadsheet alike: every row has a cell for every column.
/// </summary>
/// <param name="Name">Its name in calls and file names: lower case, words joined by hyphens.</param>
/// <param name="Title">Its title for people.</param>
/// <param name="Purpose">One sentence: who uses it for what.</param>
/// <param name="Columns">The columns, from left to right.</param>
/// <param name="Rows">The rows, from top to bottom, each with as many cells as there are columns.</param>
public sealed record Schedule(
    string Name, string Title, string Purpose, IReadOnlyList<ScheduleColumn> Columns, IReadOnlyList<IReadOnlyList<Cell>> Rows);
