using System.Globalization;

namespace PolarityMap.Core.Planning;

/// <summary>A name, or names that count up: <c>SW</c>, <c>K[1..4]</c>, <c>DESK[5..8]-A</c>, <c>D[01..12]</c>.</summary>
/// <param name="Prefix">What stands before the number.</param>
/// <param name="First">The first number.</param>
/// <param name="Count">How many; at least 1.</param>
/// <param name="Suffix">What stands after the number.</param>
public readonly record struct PlannedName(string Prefix, int First, int Count, string Suffix)
{
    /// <summary>True when a number stands in the name.</summary>
    public bool IsNumbered { get; init; } = true;

    /// <summary>How many digits the numbers have at least, with zeros in front; 0 where they have none.</summary>
    public int Width { get; init; }

    /// <summary>One name without a number.</summary>
    public static PlannedName One(string name) => new(name, 1, 1, "") { IsNumbered = false };

    /// <summary>Names counted from 1; a single one has no number.</summary>
    public static PlannedName Of(string prefix, int count) => count == 1 ? One(prefix) : new(prefix, 1, count, "");

    /// <summary>The names for the same numbers around other letters.</summary>
    public PlannedName Around(string before, string after = "") => this with { Prefix = before + Prefix, Suffix = Suffix + after };

    /// <summary>Some of them, counted from 0.</summary>
    public PlannedName Slice(int from, int count) => IsNumbered ? this with { First = First + from, Count = count } : this;

    /// <summary>One of them, counted from 0.</summary>
    public string At(int index) => IsNumbered ? Prefix + Digits(index) + Suffix : Prefix + Suffix;

    /// <summary>As a document writes it.</summary>
    public override string ToString() => !IsNumbered || Count == 1 ? At(0)
        : string.Create(CultureInfo.InvariantCulture, $"{Prefix}[{Digits(0)}..{Digits(Count - 1)}]{Suffix}");

    private string Digits(int index) => (First + index).ToString(CultureInfo.InvariantCulture).PadLeft(Width, '0');
}
