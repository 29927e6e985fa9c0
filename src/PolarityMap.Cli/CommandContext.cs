namespace PolarityMap.Cli;

/// <summary>What a command may touch of the world: two writers, a reader, the folder it works in, and whether colour is wanted.</summary>
public sealed record CommandContext(TextWriter Out, TextWriter Error)
{
    /// <summary>What somebody answers, line by line; nothing unless a command asks.</summary>
    public TextReader In { get; init; } = TextReader.Null;

    /// <summary>Colour is used only on a terminal and never when NO_COLOR is set.</summary>
    public bool Colour { get; init; }

    /// <summary>Whether somebody sees the error writer as it is written: only then is progress shown.</summary>
    public bool IsErrorTerminal { get; init; }

    /// <summary>Paths that are not rooted are taken from here.</summary>
    public string Folder { get; init; } = ".";

    /// <summary>Readies memory for a command that makes much, such as drawings; does nothing inside another program.</summary>
    public Action TakeRoom { get; init; } = () => { };

    /// <summary>What the call says about reading documents.</summary>
    public ReadingOptions Reading { get; } = new();

    public static CommandContext OfProcess()
    {
        var output = new StreamWriter(Console.OpenStandardOutput(), new System.Text.UTF8Encoding(false), 16 * 1024) { NewLine = "\n" };
        var error = new StreamWriter(Console.OpenStandardError(), new System.Text.UTF8Encoding(false), 1024) { NewLine = "\n", AutoFlush = true };
        return new CommandContext(output, error)
        {
            In = Console.In,
            IsErrorTerminal = !Console.IsErrorRedirected,
            Colour = !Console.IsOutputRedirected && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")),
            TakeRoom = HeapRoom.Take,
        };
    }

    public string FullPath(string path) => Path.IsPathRooted(path) ? path : Path.Combine(Folder, path);
}
