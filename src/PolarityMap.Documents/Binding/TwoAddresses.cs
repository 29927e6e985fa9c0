using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Binding;

/// <summary>
/// Parts a text such as <c>SW-1/3 to SW-2/3</c> into its two addresses. Names may hold spaces, so the word between may stand
/// in a name as well: then the place counts at which both sides are addresses.
/// </summary>
internal static class TwoAddresses
{
    /// <summary>More places than a name of the longest kind leaves room for are not tried.</summary>
    private const int MostTried = 40;

    /// <summary>The two texts and where the second begins in the whole; null after a report.</summary>
    /// <param name="reader">Takes the report.</param>
    /// <param name="scalar">The text.</param>
    /// <param name="between">The word between with its spaces.</param>
    /// <param name="problem">What to say when the word is not there, with what is expected.</param>
    /// <param name="reads">Whether a text reads as an address; asked only when the word stands there several times.</param>
    public static (string First, string Second, int At)? Split(NodeReader reader, YamlScalar scalar, string between, (string Message, string Expected) problem, Func<string, bool> reads)
    {
        string text = scalar.Value;
        int cut = text.IndexOf(between, StringComparison.Ordinal);
        if (cut < 0)
        {
            reader.Problems.Add(scalar.Place, problem.Message, problem.Expected);
            return null;
        }

        (string First, string Second, int At) chosen = At(text, cut, between.Length);
        if (text.IndexOf(between, cut + 1, StringComparison.Ordinal) < 0)
            return chosen;
        int fitting = 0;
        for (int tried = 0; cut >= 0 && tried < MostTried; tried++, cut = text.IndexOf(between, cut + 1, StringComparison.Ordinal))
        {
            (string First, string Second, int At) parts = At(text, cut, between.Length);
            if (!reads(parts.First) || !reads(parts.Second))
                continue;
            fitting++;
            if (fitting == 1)
                chosen = parts;
        }

        if (fitting <= 1)
            return chosen;
        reader.Problems.Add(scalar.Place, $"'{PartNames.Shorten(text)}' can be read in {fitting} ways", $"names without '{between.Trim()}' between two words");
        return null;
    }

    private static (string First, string Second, int At) At(string text, int cut, int length)
    {
        int second = cut + length;
        while (second < text.Length && text[second] == ' ')
            second++;
        return (text[..cut].TrimEnd(), text[second..], second);
    }
}
