namespace PolarityMap.Cli.Output;

/// <summary>Running text in lines of a bounded width.</summary>
internal static class Wrapped
{
    /// <summary>The width of explanations.</summary>
    public const int Width = 100;

    /// <summary>The lines of a text, the first after <paramref name="first"/> and the others after as many blanks.</summary>
    public static IEnumerable<string> Lines(string text, string first, int width = Width)
    {
        string line = first;
        bool empty = true;
        foreach (string word in text.Split(' '))
        {
            if (!empty && line.Length + 1 + word.Length > width)
            {
                yield return line;
                line = new string(' ', first.Length);
                empty = true;
            }

            line += empty ? word : " " + word;
            empty = false;
        }

        yield return line;
    }

    public static void Write(TextWriter output, string text, string first = "  ", int width = Width)
    {
        foreach (string line in Lines(text, first, width))
            output.WriteLine(line);
    }
}
