using PolarityMap.Documents.Text;
using YamlDotNet.Core;

namespace PolarityMap.Documents.Yaml;

/// <summary>
/// Says in plain words why a text is no YAML. The library's sentences speak of its own parts ("while parsing a block
/// mapping") and often point at where it noticed, not at the slip; the text around that place tells more.
/// </summary>
internal sealed class YamlSyntaxError(string text, string fileName, YamlTreeBuilder builder)
{
    public const string TabMessage = "a tab is used for indentation here; YAML is indented with spaces";

    /// <summary>The longest key on one line, by the YAML 1.2 specification.</summary>
    private const int LongestKey = 1024;

    private const string LongKeyMessage = "this key is longer than 1024 characters";
    private const string FollowsQuoteMessage = "text follows a closing quote";
    private const string FollowsQuoteExpected = "the whole text in quotes, a single quote inside single quotes written twice";
    private const string EscapeMessage = "the escape before this names no character";
    private const string EscapeExpected = "\\u and four hexadecimal digits";

    public Problem Explain(Exception error, Mark cursor)
    {
        var known = error as YamlException;

        var message = known?.Message ?? "";

        // Some errors carry no mark, which looks like one at the first character; the scanner then stands at the place.
        var unmarked = known is null || (known.End.Index == 0
            && (message.Contains("tab", StringComparison.Ordinal) || message.Contains("end of the stream", StringComparison.Ordinal)));
        var start = Clamp(unmarked ? cursor : known!.Start);
        var end = Math.Max(start, Clamp(unmarked ? cursor : known!.End));

        var bracket = FlowBrackets.Innermost(text, builder.ReadTo, start, builder.OpenBrackets());

        // A half of a surrogate pair as an escape fails in the base library.
        if (error is ArgumentException && SourceLines.LineAt(text, start).Contains('\\'))
            return At(start, EscapeMessage, EscapeExpected);

        return Tab(message, bracket, start, end)
            ?? Quote(message, bracket, start, end)
            ?? Flow(message, known is null, bracket, start)
            ?? Indicator(message, start)
            ?? Colon(message, start)
            ?? Line(message, start)
            ?? At(start, "the text cannot be read as YAML from here on; look for a missing quote, bracket, colon or indentation just above");
    }

    private Problem? Tab(string message, int bracket, int start, int end)
    {
        // In flow brackets and quotes a tab at the beginning of a line does no harm.
        if (bracket >= 0 || message.Contains("quoted", StringComparison.Ordinal))
            return null;

        // From the line where the failing text began to the one where reading stopped.
        for (var line = SourceLines.LineStart(text, start); line <= end && line < text.Length;)
        {
            var content = SourceLines.LineAt(text, line);
            var blank = content.IndexOfAnyExcept(' ', '\t');
            var tab = (blank < 0 ? content : content[..blank]).IndexOf('\t');
            if (tab >= 0 && line + tab <= end)
                return At(line + tab, TabMessage);
            line += content.Length + 1;
        }

        return null;
    }

    private Problem? Quote(string message, int bracket, int start, int end)
    {
        if (message.Contains("quoted scalar", StringComparison.Ordinal))
        {
            if (message.Contains("escape character", StringComparison.Ordinal))
                return At(end, "after a backslash in double quotes only an escape such as \\n or \\\" may follow", "'\\\\' for a backslash, or single quotes");
            if (message.Contains("hexadecimal", StringComparison.Ordinal) || message.Contains("Unicode", StringComparison.Ordinal))
                return At(end, EscapeMessage, EscapeExpected);
            if (message.Contains("comment", StringComparison.Ordinal))
                return At(start, "a comment needs a space before its '#'");
            return At(start, "the quote opened here is not closed", $"a {text.AsSpan(start, Math.Min(1, text.Length - start))} at the end of the text");
        }

        // A quote that lacks its end swallows what follows up to the next quote; the error shows only behind that one.
        if (builder.LastScalar is { Style: YamlScalarStyle.Quoted } last && Place(start) is var place
            && place.Line == last.EndLine && place.Column >= last.EndColumn && start < text.Length && text[start] is not (':' or ']' or '}' or ',' or '#'))
        {
            if (last.EndLine > last.Place.Line)
                return new Problem(last.Place, $"the quote opened here is closed only on line {last.EndLine}, and text follows there", "a quote at the end of the text");
            if (bracket < 0 || text[start] is not ('"' or '\''))
                return At(start, FollowsQuoteMessage, FollowsQuoteExpected);
        }

        return null;
    }

    private Problem? Flow(string message, bool unknown, int bracket, int start)
    {
        if (bracket < 0)
        {
            return start < text.Length && text[start] is ']' or '}' && !message.Contains("plain", StringComparison.Ordinal)
                ? At(start, $"this '{text[start]}' closes nothing", "the opening bracket before it, or the text in quotes")
                : null;
        }

        var opening = text[bracket];
        var closing = opening == '[' ? ']' : '}';
        if (text.AsSpan(start).IsWhiteSpace())
            return At(bracket, $"the '{opening}' opened here is not closed", $"'{closing}'");

        var next = text[start];
        if (next is '[' or '{' && start > 0 && text[start - 1] is not (' ' or '\t' or '\n' or '\r' or ',' or '[' or '{' or ':' or '"' or '\'' or ']' or '}'))
            return At(start, $"inside {opening} {closing} a text with '{next}' stands in quotes", $"quotes around it, such as \"{NameWithRange(start)}\"");
        if (Place(bracket).Line != Place(start).Line && (unknown || StartsLine(start) || message.Contains("mapping", StringComparison.Ordinal)))
            return At(bracket, $"the '{opening}' opened here is not closed before line {Place(start).Line}, or a ',' is missing there", $"'{closing}', or each further line indented");
        if (next is ']' or '}' && next != closing)
            return At(start, $"this '{next}' does not close the '{opening}' opened at {Place(bracket)}", $"'{closing}'");
        if (text.AsSpan(start).StartsWith(",#"))
            return At(start + 1, "a comment needs a space before its '#'");
        if (next == ',')
            return At(start, "there is nothing before this ','", "a text before it");
        if (next == '#')
            return At(start, "a comment needs a space before its '#'");
        if (next is '%' or '@' or '`' or '|' or '>')
            return At(start, $"a text cannot begin with '{next}'", "the text in quotes");
        return At(start, $"this does not continue the '{opening}' opened at {Place(bracket)}", $"',' or '{closing}'");
    }

    private Problem? Indicator(string message, int start)
    {
        var before = text.AsSpan(0, start).TrimEnd(' ');
        if (before.EndsWith(']') || before.EndsWith('}'))
            return At(start, "text follows a closing bracket", "the whole text in quotes");
        if (before.Length == start && (before.EndsWith('"') || before.EndsWith('\'')) && !text.AsSpan(start).StartsWith(":") && !text.AsSpan(start).IsWhiteSpace())
            return At(start, FollowsQuoteMessage, FollowsQuoteExpected);
        if (message.Contains("comment", StringComparison.Ordinal) && start < text.Length && text[start] != '|' && text[start] != '>' && text[start] != '%')
            return At(start, "a comment needs a space before its '#', and no text may go on after it");
        if (start >= text.Length)
            return null;
        if (message.Contains("directive", StringComparison.Ordinal) || message.Contains("incompatible", StringComparison.Ordinal))
            return At(start, "lines that begin with '%' are not needed; delete the line");
        return text[start] switch
        {
            '*' or '&' => At(start, $"'{text[start]}' names an alias or anchor, which are not read", "the text in quotes"),
            '!' => At(start, "'!' begins a tag, which is not read", "the text in quotes"),
            '|' or '>' => At(start, $"after '{text[start]}' the text begins on the next line, indented evenly", "a line break, or the text in quotes"),
            '%' or '@' or '`' or ',' => At(start, $"a text cannot begin with '{text[start]}'", "the text in quotes"),
            '?' when message.Contains("keys", StringComparison.Ordinal) => At(start, "'?' begins a key, which cannot stand here", "'key: value'"),
            '-' when message.Contains("entries are not allowed", StringComparison.Ordinal) =>
                At(start, "a list item cannot begin on the line of its key", "'-' on a line of its own below the key, or [ ] around the list"),
            _ => null,
        };
    }

    private Problem? Colon(string message, int start)
    {
        if (start >= text.Length || text[start] != ':')
            return message.Contains("could not find expected ':'", StringComparison.Ordinal) ? At(start, "this key has no ':' behind it", "'key: value' on one line") : null;

        if (start + 1 < text.Length && !char.IsWhiteSpace(text[start + 1]))
            return At(start, "a space is missing after this ':'", "'key: value'");

        var line = SourceLines.LineAt(text, start);
        var lineStart = SourceLines.LineStart(text, start);
        var key = line[..(start - lineStart)];
        if (key.Length > LongestKey)
            return At(lineStart, LongKeyMessage);
        if (key.Contains(": ", StringComparison.Ordinal) || key.TrimEnd().EndsWith('"') || key.TrimEnd().EndsWith('\''))
            return At(start, "a second ':' on one line", "the value in quotes, or the inner 'key: value' on the next line, indented");

        // What stands before the colon was read as the continuation of the line above.
        var above = LineAbove(lineStart);
        if (above < 0)
            return null;
        var upper = SourceLines.LineAt(text, above);
        var indent = upper.IndexOfAnyExcept(' ');
        var content = indent < 0 ? upper : upper[indent..];
        var item = content.StartsWith("- ", StringComparison.Ordinal) ? 2 : 0;
        if (MissingSpace.IndexIn(content[item..]) is var colon and >= 0)
            return At(above + indent + item + colon, "a space is missing after this ':'", "'key: value'");
        if (content.Contains(':'))
            return At(lineStart + Math.Max(0, key.IndexOfAnyExcept(' ')), "this line is indented as if it belonged to the line above, which already has a value", "the indentation of the line above");
        return At(above + Math.Max(0, indent), "this line has no ':'", "'key: value'");
    }

    private Problem? Line(string message, int start)
    {
        if (start >= text.Length || !StartsLine(start))
            return null;
        var rest = SourceLines.LineAt(text, start);
        rest = rest[(start - SourceLines.LineStart(text, start))..];
        if (rest.IsEmpty)
            return null;
        var inList = message.Contains("'-'", StringComparison.Ordinal);
        if (rest[0] == '-')
        {
            return rest.Length > 1 && rest[1] != ' '
                ? At(start, "a space is missing after this '-'", "'- item'")
                : At(start, "a list item among 'key: value' lines", inList ? "the indentation of the items above" : "'key: value'");
        }

        if (rest.IndexOf(": ", StringComparison.Ordinal) > LongestKey)
            return At(start, LongKeyMessage);
        if (MissingSpace.IndexIn(rest) is var colon and >= 0)
            return At(start + colon, "a space is missing after this ':'", "'key: value'");
        if (!rest.Contains(':'))
            return At(start, inList ? "this line does not begin with '- '" : "this line has no ':'", inList ? "'- item'" : "'key: value'");
        return At(start, inList
            ? "this line does not begin with '- ' as the list above does, and is indented alike"
            : "this line is indented like no line that it could belong to", inList ? "'- ', or other indentation" : "the indentation of the lines above");
    }

    private string NameWithRange(int bracket)
    {
        const string Ends = ",[]{}\"'\n\r";
        var from = bracket;
        while (from > 0 && bracket - from < 30 && !Ends.Contains(text[from - 1]) && text[from - 1] != ' ')
            from--;
        var to = text.AsSpan(bracket).IndexOfAny(']', '\n', '\r');
        return to is < 0 or > 30 || text[bracket + to] != ']' ? "SW-[1..4]" : text.Substring(from, bracket + to + 1 - from);
    }

    private int LineAbove(int lineStart)
    {
        while (lineStart > 0)
        {
            // One step back is the line break, a second one for CR LF.
            var end = lineStart - 1;
            if (end > 0 && text[end] == '\n' && text[end - 1] == '\r')
                end--;
            lineStart = SourceLines.LineStart(text, end);
            if (text.AsSpan(lineStart, end - lineStart).TrimStart() is { Length: > 0 } content && content[0] != '#')
                return lineStart;
        }

        return -1;
    }

    private bool StartsLine(int index) =>
        text.AsSpan(SourceLines.LineStart(text, index), index - SourceLines.LineStart(text, index)).IndexOfAnyExcept(' ', '\t') < 0;

    private int Clamp(Mark mark) => (int)Math.Clamp(mark.Index, 0, text.Length);

    private SourcePlace Place(int index) => SourceLines.PlaceAt(text, index, fileName);

    private Problem At(int index, string message, string? expected = null) => new(Place(index), message, expected);
}
