using System.Globalization;

namespace PolarityMap.Core.Planning;

/// <summary>Names of the racks of a room after its first: <c>ER-R1</c> counts on to <c>ER-R2</c>, a name without a number to <c>NAME-2</c>.</summary>
public static class RackNames
{
    private const int MostDigits = 6;

    /// <summary>The name of the rack so many after the first.</summary>
    public static string After(string first, int racks)
    {
        if (racks == 0)
            return first;
        return Number(first, out int digits) is { } number
            ? first[..^digits] + (number + racks).ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0')
            : string.Create(CultureInfo.InvariantCulture, $"{first}-{racks + 1}");
    }

    /// <summary>How many racks after the first one of that name is; -1 where it is none of the row.</summary>
    public static int IndexOf(string first, string name)
    {
        int index = name == first ? 0
            : Number(name, out _) is not { } number ? -1
            : Number(first, out _) is { } begins ? number - begins : number - 1;
        return index >= 0 && After(first, index) == name ? index : -1;
    }

    /// <summary>The number that a name ends in.</summary>
    private static int? Number(string name, out int digits)
    {
        digits = 0;
        while (digits < MostDigits && digits < name.Length && char.IsAsciiDigit(name[^(digits + 1)]))
            digits++;
        return digits == 0 ? null : int.Parse(name.AsSpan(name.Length - digits), NumberStyles.None, CultureInfo.InvariantCulture);
    }
}
