namespace PolarityMap.Cli.Tests;

/// <summary>What one call gave back.</summary>
internal sealed record Outcome(int Status, string Out, string Error)
{
    public IReadOnlyList<string> ErrorLines => Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}

/// <summary>A folder of its own for one test, with calls run in it; deleted at the end.</summary>
internal sealed class Workbench : IDisposable
{
    public Workbench() => Folder = Directory.CreateTempSubdirectory("polaritymap-").FullName;

    public string Folder { get; }

    public bool Colour { get; init; }

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    public Outcome Run(params string[] call) => Answer("", call);

    /// <summary>Runs a call with somebody at the keyboard.</summary>
    public Outcome Answer(string typed, params string[] call)
    {
        using var typing = new StringReader(typed);
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        int status = Application.Run(call, new CommandContext(output, error) { Folder = Folder, Colour = Colour, In = typing });
        return new Outcome(status, output.ToString(), error.ToString());
    }

    public Workbench With(string name, string text)
    {
        string path = Path(name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return this;
    }

    public string Path(string name) => System.IO.Path.Combine(Folder, name);

    public string Read(string name) => File.ReadAllText(Path(name));

    /// <summary>Every file in the folder, hidden ones too.</summary>
    public IReadOnlyList<string> Files() =>
        [.. Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories).Select(f => System.IO.Path.GetRelativePath(Folder, f)).Order(StringComparer.Ordinal)];
}
