using System.Globalization;

namespace PolarityMap.Documents.Text;

/// <summary>One bracket group of a name pattern: numbers and ranges of numbers, separated by commas.</summary>
internal sealed class RangeGroup
{
    /// <summary>More digits could leave the range of a 64-bit number.</summary>
    private const int MostDigits = 18;

    private readonly List<Item> items = [];

    private RangeGroup(int start) => Start = start;

    /// <summary>The index of the opening bracket, or of the first digit of a range without brackets.</summary>
    public int Start { get; }

    /// <summary>The index after the group.</summary>
    public int End { get; private set; }

    /// <summary>How many values the group has; capped just above <see cref="NamePattern.MaxNames"/>.</summary>
    public long Count { get; private set; }

    /// <summary>The length of the longest value.</summary>
    public int Longest { get; private set; }

    /// <summary>Reads the group that opens at an index, or reports why not and gives null.</summary>
    public static RangeGroup? Parse(string text, int open, ProblemAt report)
    {
        var group = new RangeGroup(open);
        var at = SkipSpaces(text, open + 1);
        if (at < text.Length && text[at] == ']')
        {
            report(open, "the brackets are empty", "a range such as [1..4]");
            return null;
        }

        while (true)
        {
            if (!group.ParseItem(text, open, ref at, report, bracketed: true))
                return null;
            at = SkipSpaces(text, at);
            if (at < text.Length && text[at] == ',')
            {
                at = SkipSpaces(text, at + 1);
                continue;
            }

            if (at < text.Length && text[at] == ']')
            {
                group.End = at + 1;
                return group;
            }

            ReportUnexpected(text, open, at, "',' or ']'", report);
            return null;
        }
    }

    /// <summary>Reads a range without brackets that reaches to the end of the text.</summary>
    public static RangeGroup? ParseBare(string text, int start, ProblemAt report)
    {
        var group = new RangeGroup(start);
        var at = start;
        if (!group.ParseItem(text, start, ref at, report, bracketed: false))
            return null;
        group.End = at;
        return group;
    }

    /// <summary>The values in order. Only to be asked when <see cref="Count"/> is within the cap.</summary>
    public List<string> Values()
    {
        var values = new List<string>((int)Count);
        foreach (var item in items)
        {
            var format = "D" + item.Width.ToString(CultureInfo.InvariantCulture);
            var step = item.Last >= item.First ? item.Step : -item.Step;
            var value = item.First;
            for (var left = item.Count; left > 0; left--, value += step)
                values.Add(value.ToString(format, CultureInfo.InvariantCulture));
        }

        return values;
    }

    private bool ParseItem(string text, int open, ref int at, ProblemAt report, bool bracketed)
    {
        if (!ParseNumber(text, open, ref at, report, out var first))
            return false;

        var last = first;
        long step = 1;
        var dots = bracketed ? SkipSpaces(text, at) : at;
        if (dots + 1 < text.Length && text[dots] == '.' && text[dots + 1] == '.')
        {
            at = bracketed ? SkipSpaces(text, dots + 2) : dots + 2;
            if (!ParseNumber(text, open, ref at, report, out last))
                return false;
            if (bracketed && !ParseStep(text, open, ref at, report, out step))
                return false;
        }

        if ((first.Padded || last.Padded) && first.Length != last.Length)
        {
            var width = Math.Max(first.Length, last.Length);
            report(
                first.Index,
                "with leading zeros both ends of a range have the same number of digits",
                $"{Pad(first.Value, width)}..{Pad(last.Value, width)}");
            return false;
        }

        // The difference of two numbers of at most 18 digits, and 1 more, stays far inside 64 bits.
        var count = (Math.Abs(last.Value - first.Value) / step) + 1;
        items.Add(new Item(first.Value, last.Value, step, first.Padded || last.Padded ? first.Length : 1, count));
        Count = Math.Min(Count + count, NamePattern.MaxNames + 1);
        Longest = Math.Max(Longest, Math.Max(first.Length, last.Length));
        return true;
    }

    private static bool ParseStep(string text, int open, ref int at, ProblemAt report, out long step)
    {
        step = 1;
        var by = SkipSpaces(text, at);
        if (by + 1 >= text.Length || text[by] != 'b' || text[by + 1] != 'y')
            return true;
        at = SkipSpaces(text, by + 2);
        if (!ParseNumber(text, open, ref at, report, out var number))
            return false;
        if (number.Value == 0)
        {
            report(number.Index, "a step of 0 never reaches the end of the range", "a step of 1 or more");
            return false;
        }

        step = number.Value;
        return true;
    }

    private static bool ParseNumber(string text, int open, ref int at, ProblemAt report, out Number number)
    {
        var start = at;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
            at++;
        number = default;
        if (at == start)
        {
            ReportUnexpected(text, open, at, "a number", report);
            return false;
        }

        if (at - start > MostDigits)
        {
            report(start, "the number is too large", $"at most {MostDigits} digits");
            return false;
        }

        number = new Number(start, at - start, text[start] == '0' && at - start > 1, long.Parse(text.AsSpan(start, at - start), NumberStyles.None, CultureInfo.InvariantCulture));
        return true;
    }

    private static void ReportUnexpected(string text, int open, int at, string expected, ProblemAt report)
    {
        if (at >= text.Length || text[at] == '[')
            report(open, "the '[' is not closed", expected == "a number" ? "a number, then ']'" : expected);
        else if (text[at] is '-' or ':' or '.' && expected != "a number")
            report(at, $"'{text[at]}' does not make a range", "two dots, as in [1..4]");
        else if (text[at] == '.')
            report(at, "'.' does not make a range", "a number after two dots, as in [1..4]");
        else
            report(at, $"'{NextCharacter(text, at)}' cannot stand here in brackets", expected);
    }

    private static string NextCharacter(string text, int at) =>
        char.IsHighSurrogate(text[at]) && at + 1 < text.Length ? text.Substring(at, 2) : text[at].ToString();

    private static int SkipSpaces(string text, int at)
    {
        while (at < text.Length && text[at] == ' ')
            at++;
        return at;
    }

    private static string Pad(long value, int width) =>
        value.ToString("D" + width.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private readonly record struct Item(long First, long Last, long Step, int Width, long Count);

    private readonly record struct Number(int Index, int Length, bool Padded, long Value);
}
