using System.Text.Json;
using Xunit;

namespace PolarityMap.Cli.Tests;

/// <summary>JSON output read by another reader than the one that wrote it.</summary>
internal static class Json
{
    /// <summary>The document, after a look at what every output begins and ends with.</summary>
    public static JsonElement Parse(string text, string format)
    {
        Assert.EndsWith("}\n", text, StringComparison.Ordinal);
        JsonElement root = JsonDocument.Parse(text).RootElement;
        Assert.Equal(["format", "version"], Names(root).Take(2));
        Assert.Equal(format, root.GetProperty("format").GetString());
        Assert.Equal(1, root.GetProperty("version").GetInt32());
        return root;
    }

    public static string[] Names(JsonElement element) => [.. element.EnumerateObject().Select(p => p.Name)];
}
