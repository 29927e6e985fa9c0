using System.Text.RegularExpressions;
using System.Xml.Linq;
using Xunit;

namespace PolarityMap.Core.Tests.Architecture;

/// <summary>Dependencies run one way: inside the core from layer to layer, and between projects.</summary>
public sealed partial class LayerTests
{
    private const string Core = "src/PolarityMap.Core";

    /// <summary>The layers of the core, lowest first. A layer sees itself and those before it.</summary>
    private static readonly string[] Layers = ["Optics", "Parts", "Plants", "Strands", "Budget", "Checks", "Schedules", "Deviations", "Locate", "Remedies", "Planning"];

    /// <summary>Every project and the projects it may refer to.</summary>
    private static readonly Dictionary<string, string[]> MayRefer = new()
    {
        ["PolarityMap.Core"] = [],
        ["PolarityMap.Documents"] = ["PolarityMap.Core"],
        ["PolarityMap.Drawing"] = ["PolarityMap.Core"],
        ["PolarityMap.Export"] = ["PolarityMap.Core", "PolarityMap.Drawing"],
        ["PolarityMap.Reports"] = ["PolarityMap.Core", "PolarityMap.Drawing"],
        ["PolarityMap.Cli"] = ["PolarityMap.Core", "PolarityMap.Documents", "PolarityMap.Drawing", "PolarityMap.Export", "PolarityMap.Reports"],
    };

    [Fact]
    public void Every_file_of_the_core_lies_in_the_folder_of_its_namespace_and_in_a_layer()
    {
        foreach (string file in Repository.Sources(Core))
        {
            string folder = Path.GetRelativePath(Path.Combine(Repository.Root, Core), Path.GetDirectoryName(file)!);
            Match declared = NamespaceLine().Match(File.ReadAllText(file));
            Assert.True(declared.Success, file);
            Assert.Equal("PolarityMap.Core." + folder.Replace(Path.DirectorySeparatorChar, '.'), declared.Groups["name"].Value);
            Assert.Contains(folder.Split(Path.DirectorySeparatorChar)[0], Layers);
        }

        Assert.All(Layers, l => Assert.Contains(Repository.Sources(Core), f => LayerOf(f) == l));
    }

    [Fact]
    public void A_layer_of_the_core_names_no_layer_above_it()
    {
        foreach (string file in Repository.Sources(Core))
        {
            int layer = Array.IndexOf(Layers, LayerOf(file));
            foreach (Match named in CoreName().Matches(File.ReadAllText(file)))
            {
                string name = named.Groups["layer"].Value;
                Assert.True(Array.IndexOf(Layers, name) >= 0, $"{file} names {named.Value}");
                Assert.True(Array.IndexOf(Layers, name) <= layer, $"{file} names {named.Value}, a layer above its own");
            }

            // Inside PolarityMap.Core a name such as Checks.Rule needs no using line.
            foreach (Match named in ShortName().Matches(Code(file)))
                Assert.True(Array.IndexOf(Layers, named.Groups["layer"].Value) <= layer, $"{file} names {named.Value}");
        }
    }

    [Fact]
    public void The_core_refers_to_nothing_but_the_base_library()
    {
        XDocument project = XDocument.Load(Path.Combine(Repository.Root, Core, "PolarityMap.Core.csproj"));
        Assert.DoesNotContain(project.Descendants(), e => e.Name.LocalName.EndsWith("Reference", StringComparison.Ordinal));
    }

    [Fact]
    public void The_core_knows_no_file_no_console_and_no_clock()
    {
        foreach (string file in Repository.Sources(Core))
            Assert.False(Outside().IsMatch(Code(file)), $"{file} names {Outside().Match(Code(file)).Value}");
    }

    [Fact]
    public void Projects_refer_to_each_other_in_one_direction()
    {
        string[] projects = [.. Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.csproj", SearchOption.AllDirectories)];
        Assert.Equal(MayRefer.Keys.Order(StringComparer.Ordinal), projects.Select(p => Path.GetFileNameWithoutExtension(p)!).Order(StringComparer.Ordinal));
        foreach (string path in projects)
        {
            string[] allowed = MayRefer[Path.GetFileNameWithoutExtension(path)];
            string[] referred =
            [
                .. XDocument.Load(path).Descendants("ProjectReference")
                    .Select(e => Path.GetFileNameWithoutExtension(e.Attribute("Include")!.Value.Replace('\\', '/'))),
            ];
            Assert.All(referred, r => Assert.Contains(r, allowed));
        }
    }

    private static string LayerOf(string file) =>
        Path.GetRelativePath(Path.Combine(Repository.Root, Core), file).Split(Path.DirectorySeparatorChar)[0];

    /// <summary>The file without its comments.</summary>
    private static string Code(string file) => Comment().Replace(File.ReadAllText(file), "");

    [GeneratedRegex(@"^namespace (?<name>[\w.]+);", RegexOptions.Multiline)]
    private static partial Regex NamespaceLine();

    [GeneratedRegex(@"PolarityMap\.Core\.(?<layer>\w+)")]
    private static partial Regex CoreName();

    [GeneratedRegex(@"(?<![\w.])(?<layer>Optics|Parts|Plants|Strands|Budget|Checks|Schedules|Deviations|Locate|Remedies|Planning)\.")]
    private static partial Regex ShortName();

    [GeneratedRegex(@"^\s*//.*$", RegexOptions.Multiline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"\bSystem\.IO\b|\bFile\.|\bDirectory\.|\bFileStream\b|\bStreamReader\b|\bStreamWriter\b|\bConsole\b|\bDateTime\b|\bDateTimeOffset\b|\bStopwatch\b|\bEnvironment\.|\bTimeProvider\b|\bRandom\b")]
    private static partial Regex Outside();
}
