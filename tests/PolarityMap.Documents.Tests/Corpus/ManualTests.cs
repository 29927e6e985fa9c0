using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;
using Xunit;

namespace PolarityMap.Documents.Tests.Corpus;

/// <summary>The manual names what there is, and its examples are read.</summary>
public class ManualTests
{
    private static readonly string Manual = File.ReadAllText(Path.Combine(Repository.Root, "docs", "document.md"));

    /// <summary>The examples between fences.</summary>
    private static IEnumerable<string> Examples() =>
        Manual.Split("```").Where((_, i) => i % 2 == 1).Select(block => block["yaml\n".Length..]);

    public static TheoryData<string> Plants => [.. Examples().Where(e => e.StartsWith("plant:", StringComparison.Ordinal))];

    public static TheoryData<string> Catalogues => [.. Examples().Where(e => e.StartsWith("catalogue:", StringComparison.Ordinal))];

    public static TheoryData<string> Blocks => [.. Examples()];

    [Theory]
    [MemberData(nameof(Plants))]
    public void A_plant_of_the_manual_is_read_and_its_links_are_right(string text)
    {
        Plant plant = Reading.Plant(text);

        Assert.DoesNotContain(Reading.Codes(plant).Split(' '), code => code.Length > 0 && code[0] != 'W');
    }

    [Theory]
    [MemberData(nameof(Catalogues))]
    public void A_catalogue_file_of_the_manual_is_read(string text)
    {
        MemorySource source = new MemorySource().Add("p", "plant: P\ninclude: c\nparts:\n  X: house trunk\n").Add("c", text);

        Assert.Equal("", Reading.Read("p", source).Problems);
    }

    [Theory]
    [MemberData(nameof(Blocks))]
    public void Every_example_is_yaml_that_is_read_here(string text)
    {
        var problems = new ProblemList();

        Assert.NotNull(YamlReader.Read(text, "manual", problems));
        Assert.Equal("", problems.ToString());
    }

    [Fact]
    public void The_manual_has_whole_examples() => Assert.Equal((5, 1), (Plants.Count, Catalogues.Count));

    /// <summary>The section whose heading this is, with those below it.</summary>
    private static string Section(string heading)
    {
        int start = Manual.IndexOf(heading + "\n", StringComparison.Ordinal);
        Assert.True(start >= 0, heading);
        int end = Manual.IndexOf("\n## ", start + heading.Length, StringComparison.Ordinal);
        return end < 0 ? Manual[start..] : Manual[start..end];
    }

    private static void Names(string section, IEnumerable<string> words) =>
        Assert.All(words, word => Assert.True(section.Contains($"`{word}`", StringComparison.Ordinal), word));

    [Fact]
    public void Every_key_of_a_document_is_in_the_table_of_sections() => Names(Section("## Sections"), DocumentKeys.OfPlant);

    [Fact]
    public void Every_kind_and_attribute_is_named() =>
        Names(Section("## Parts"), [.. PartKinds.All.Select(k => k.Name), .. PartKinds.All.SelectMany(k => k.AllAttributes).Select(a => a.Name), .. Catalogue.All.Select(c => c.Name)]);

    [Fact]
    public void Every_attribute_of_a_kind_is_in_its_row_or_in_a_group_of_it()
    {
        string[] rows = Section("## Parts").Split('\n');
        Dictionary<string, string> groups = rows.Where(r => r.StartsWith("| ", StringComparison.Ordinal) && r.Split('|').Length == 4)
            .ToDictionary(r => r.Split('|')[1].Trim(), r => r.Split('|')[2]);
        foreach (PartKind kind in PartKinds.All)
        {
            string[] cells = rows.Single(r => r.StartsWith($"| `{kind.Name}` |", StringComparison.Ordinal)).Split('|');
            string named = cells[2] + string.Concat(cells[3].Split(',').Select(g => g.Trim() switch
            {
                "" or "as a cassette" => "",
                "connector at two ends" => groups["connector"],
                string group => groups[group],
            }));
            if (cells[3].Contains("as a cassette", StringComparison.Ordinal))
                continue;
            Assert.All(kind.Attributes, a => Assert.True(named.Contains($"`{a.Name}`", StringComparison.Ordinal), $"{kind.Name}: {a.Name}"));
        }
    }

    [Fact]
    public void Every_word_of_a_choice_is_named() =>
        Names(Section("## Parts"), PartKinds.All.SelectMany(k => k.AllAttributes).Where(a => a.Name != "breakout").SelectMany(a => a.Words));

    [Fact]
    public void Every_default_and_every_key_of_a_network_is_named()
    {
        Assert.All(DocumentKeys.OfDefaults, key => Assert.Contains($"\n  {key}: ", Section("## Defaults"), StringComparison.Ordinal));
        Assert.All([.. LimitProfile.Names, .. ColourSequence.Names], name => Assert.Contains(name, Section("## Defaults"), StringComparison.Ordinal));
        Assert.All(DocumentKeys.OfNetwork, key => Assert.Contains($"{key}: ", Section("## Networks"), StringComparison.Ordinal));
        Names(Section("## Networks"), SharedWords.All);
    }
}
