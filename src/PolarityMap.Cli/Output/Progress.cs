namespace PolarityMap.Cli.Output;

/// <summary>One line on the terminal that says what is being done, written over itself and gone at the end. Nothing elsewhere.</summary>
internal sealed class Progress(CommandContext context) : IDisposable
{
    /// <summary>Short enough for the narrowest terminals, which would else break the line.</summary>
    private const int MostCharacters = 72;

    private int _shown;

    public void Say(string what)
    {
        if (!context.IsErrorTerminal)
            return;
        string line = what.Length > MostCharacters ? what[..MostCharacters] : what;
        context.Error.Write($"\r{line.PadRight(_shown)}");
        _shown = line.Length;
    }

    public void Dispose()
    {
        if (_shown > 0)
            context.Error.Write($"\r{"".PadRight(_shown)}\r");
        _shown = 0;
    }
}
