namespace PolarityMap.Documents.Yaml;

/// <summary>Finds the flow bracket that is still open at an index, for explaining a syntax error there.</summary>
internal static class FlowBrackets
{
    /// <summary>
    /// The index of the innermost open bracket, or -1. The library may fail well after the last event that it handed out, so
    /// the text between is looked through for brackets, leaving out quotes and comments.
    /// </summary>
    public static int Innermost(string text, int from, int to, IEnumerable<int> openBefore)
    {
        var open = new Stack<int>();
        foreach (var index in openBefore)
            open.Push(index);
        if (open.Count > 1)
            open = new Stack<int>(open);

        // The last event may end on the bracket that it opened.
        for (var at = from; at < Math.Min(to, text.Length); at++)
        {
            switch (text[at])
            {
                case '[' or '{' when StartsToken(text, at, open.Count > 0) && !(open.TryPeek(out var top) && top >= at):
                    open.Push(at);
                    break;
                case ']' or '}' when open.Count > 0:
                    open.Pop();
                    break;
                case '"' or '\'' when StartsToken(text, at, open.Count > 0):
                    at = EndOfQuote(text, at);
                    break;
                case '#' when at == 0 || char.IsWhiteSpace(text[at - 1]):
                    while (at + 1 < text.Length && text[at + 1] is not ('\n' or '\r'))
                        at++;
                    break;
                default:
                    break;
            }
        }

        return open.Count > 0 ? open.Peek() : -1;
    }

    private static bool StartsToken(string text, int at, bool inFlow)
    {
        if (inFlow && text[at] is '[' or '{')
            return true;
        var before = at - 1;
        while (before >= 0 && text[before] is ' ' or '\t')
            before--;
        return before < 0 || text[before] is '\n' or '\r' or ',' or '[' or '{' or ':' || (text[before] is '-' or '?' && before < at - 1);
    }

    private static int EndOfQuote(string text, int open)
    {
        var quote = text[open];
        for (var at = open + 1; at < text.Length; at++)
        {
            if (quote == '"' && text[at] == '\\')
                at++;
            else if (text[at] == quote)
                return at;
        }

        return text.Length;
    }
}
