namespace PolarityMap.Cli.Output;

/// <summary>The published JSON Schemas of what the program writes; the files are docs/schemas/NAME-1.json.</summary>
internal static class OutputSchemas
{
    /// <summary>The one list of formats, each without its <c>polaritymap/</c>.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        "plant", "strands", "findings", "check", "remedy", "plan", "plan-comparison", "growth", "trace", "budget", "separation", "locate",
        "rules", "limits", "application", "fibre", "deviations", "catalogue", "problems",
    ];

    /// <summary>What is not written but read: observation files. Its schema is docs/schemas/seen.json.</summary>
    public const string Seen = "seen";

    /// <summary>What a plant is planned from. Its schema is made by the reader of briefs.</summary>
    public const string Brief = "brief";

    /// <summary>The schema of a format that is in <see cref="Names"/>, or of <see cref="Seen"/>.</summary>
    public static string Text(string name)
    {
        using Stream stream = typeof(OutputSchemas).Assembly.GetManifestResourceStream(name == Seen ? $"schemas/{name}.json" : $"schemas/{name}-{JsonText.Version}.json")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
