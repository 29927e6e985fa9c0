using System.Globalization;
using System.Text;

namespace PolarityMap.Documents.Text;

/// <summary>The rule for names of parts, ports, types and networks.</summary>
public static class Names
{
    /// <summary>The longest name, in UTF-16 code units.</summary>
    public const int MaxLength = 80;

    /// <summary>What a name may hold, worded for messages.</summary>
    public const string Rule = "letters, digits, single spaces inside, and - _ . + # ~ ( )";

    /// <summary>
    /// Whether a name holds only letters and digits of any script, single spaces inside, and <c>- _ . + # ~ ( )</c>, with at
    /// least one letter or digit.
    /// </summary>
    /// <param name="name">The name.</param>
    /// <param name="why">When not valid, what is wrong, as a sentence without a full stop; else empty.</param>
    public static bool IsValid(string name, out string why)
    {
        var reason = "";
        if (name.Length == 0)
            reason = "the name is empty";
        else if (name.Length > MaxLength)
            reason = $"the name has {name.Length} characters, at most {MaxLength} are allowed";
        else
            CheckCharacters(name, (_, message) => reason = message);
        why = reason;
        return reason.Length == 0;
    }

    /// <summary>Reports the first character that may not stand where it does, with its index.</summary>
    internal static bool CheckCharacters(string name, Action<int, string> report)
    {
        var any = false;
        var previous = new Rune(' ');
        for (var at = 0; at < name.Length;)
        {
            if (Rune.DecodeFromUtf16(name.AsSpan(at), out var rune, out var length) != System.Buffers.OperationStatus.Done)
            {
                report(at, "the name holds half of a character; type it again");
                return false;
            }

            if (rune.Value == ' ' && previous.Value == ' ')
            {
                report(at, at == 0 ? "the name begins with a space" : "the name has two spaces in a row");
                return false;
            }

            if (!IsAllowed(rune, previous))
            {
                report(at, $"{Describe(rune)} cannot be part of a name");
                return false;
            }

            any |= Rune.IsLetterOrDigit(rune);
            previous = rune;
            at += length;
        }

        if (previous.Value == ' ' && name.Length > 0)
        {
            report(name.Length - 1, "the name ends with a space");
            return false;
        }

        if (!any)
            report(0, "the name has no letter or digit");
        return any;
    }

    private static bool IsAllowed(Rune rune, Rune previous)
    {
        if (rune.IsAscii)
            return Rune.IsLetterOrDigit(rune) || rune.Value is ' ' or '-' or '_' or '.' or '+' or '#' or '~' or '(' or ')';
        if (Rune.IsLetterOrDigit(rune))
            return true;

        // Several scripts write vowels as marks on the letter before.
        return IsMark(rune) && (Rune.IsLetter(previous) || IsMark(previous));
    }

    private static bool IsMark(Rune rune) =>
        Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark;

    private static string Describe(Rune rune)
    {
        var visible = Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate
            or UnicodeCategory.SpaceSeparator or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
            or UnicodeCategory.NonSpacingMark or UnicodeCategory.OtherNotAssigned or UnicodeCategory.PrivateUse);
        return visible ? $"'{rune}'" : "U+" + rune.Value.ToString("X4", CultureInfo.InvariantCulture);
    }
}
