using System.Globalization;
using PolarityMap.Drawing.Views.Labels;

namespace PolarityMap.Cli.Input;

/// <summary>Reads how labels lie on a sheet from the words of a call.</summary>
internal static class LabelChoice
{
    /// <summary>The form with measures that are usual.</summary>
    public const string Form = "\"3 x 8, 63.5 x 33.9 mm, margins 7.2 x 12.9 mm, pitch 66 x 33.9 mm\"";

    private const double MillimetresInAnInch = 25.4;

    /// <exception cref="CallException">The words are of another form.</exception>
    public static LabelSheet Of(string words)
    {
        string[] pieces = words.Split(',', StringSplitOptions.TrimEntries);
        if (pieces.Length < 2)
            throw new CallException($"'{words}' does not say how labels lie on a sheet; expected columns x rows, then the size of a label, such as {Form}");
        (double columns, double rows) = Pair(pieces[0], "columns x rows", withUnit: false);
        if (columns % 1 != 0 || rows % 1 != 0 || columns is < 1 or > 100 || rows is < 1 or > 100)
            throw new CallException($"'{pieces[0]}' is no number of labels; expected columns x rows, such as 3 x 8");
        (double width, double height) = Pair(pieces[1], "the size of a label", withUnit: true);
        var sheet = new LabelSheet((int)columns, (int)rows, width, height);
        foreach (string piece in pieces[2..])
        {
            int space = piece.IndexOf(' ');
            string what = space < 0 ? piece : piece[..space], measures = space < 0 ? "" : piece[(space + 1)..];
            (double across, double down) = what is "margins" or "pitch"
                ? Pair(measures, what, withUnit: true)
                : throw new CallException($"'{piece}' is no measure of a label sheet; expected margins or pitch, such as {Form}");
            sheet = what == "margins" ? sheet with { MarginLeft = across, MarginTop = down } : sheet with { PitchAcross = across, PitchDown = down };
        }

        return sheet;
    }

    private static (double Across, double Down) Pair(string text, string what, bool withUnit)
    {
        string numbers = text;
        double unit = 1;
        if (withUnit)
        {
            bool inches = text.EndsWith("in", StringComparison.Ordinal);
            if (!inches && !text.EndsWith("mm", StringComparison.Ordinal))
                throw new CallException($"'{text}' has no unit; write mm or in after {what}, such as 63.5 x 33.9 mm");
            numbers = text[..^2];
            unit = inches ? MillimetresInAnInch : 1;
        }

        string[] two = numbers.Split('x', StringSplitOptions.TrimEntries);
        return two.Length == 2 && Number(two[0]) is { } across && Number(two[1]) is { } down
            ? (across * unit, down * unit)
            : throw new CallException($"'{text}' is no pair of measures for {what}; expected two with an x between them, such as {(withUnit ? "63.5 x 33.9 mm" : "3 x 8")}");
    }

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) && value < 10_000 ? value : null;
}
