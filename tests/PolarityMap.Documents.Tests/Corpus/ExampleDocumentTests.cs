using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Documents.Tests.Corpus;

/// <summary>The documents that the repository shows are read without a problem.</summary>
public class ExampleDocumentTests
{
    public static TheoryData<string> Examples => [.. Repository.Examples()];

    private static MemorySource Source()
    {
        var source = new MemorySource();
        foreach (string path in Repository.Examples())
            source.Add(path, File.ReadAllText(Path.Combine(Repository.Root, path)));
        return source;
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_document_that_is_shown_is_read_without_a_problem(string path) =>
        Assert.Equal("", Reading.Read(path, Source()).Problems);

    /// <summary>The presets are the methods of TIA-568.3: each joins transmit to receive on every channel.</summary>
    [Theory]
    [MemberData(nameof(Methods))]
    public void A_method_of_the_gallery_raises_nothing(string path) =>
        Assert.Equal("", Reading.Codes(Reading.Read(path, Source()).Plant!));

    public static TheoryData<string> Methods => [.. Repository.Examples().Where(p => p.StartsWith("gallery/methods/", StringComparison.Ordinal))];

    [Fact]
    public void All_eight_presets_of_methods_are_in_the_gallery() => Assert.Equal(8, Methods.Count);

    [Fact]
    public void The_opera_house_is_read_with_all_its_links()
    {
        Plant plant = Reading.Read("gallery/opera-house/plant.yaml", Source()).Plant!;

        // Four networks with a link to each of sixteen desks; a cord at the switch, at the zone box and at the desk of each.
        Assert.Equal(64, plant.Links.Count);
        Assert.Equal(3 * 64, plant.Parts.Count(p => p.IsInline));
        Assert.Equal(["lighting", "sound", "machinery", "office"], plant.Networks.Select(n => n.Name));
        Assert.Equal("", Reading.Codes(plant));
    }

    [Fact]
    public void The_as_built_opera_house_has_the_title_of_its_own_document_and_the_site_of_its_design()
    {
        Plant plant = Reading.Read("gallery/opera-house/as-built.yaml", Source()).Plant!;

        Assert.Equal("Opera house as found on site", plant.Title.Title);
        Assert.Equal("B", plant.Title.Revision);
        Assert.Equal("2026-03-20", plant.Title.Date);
        Assert.Equal("Lantern Opera House", plant.Title.Site);
        Assert.Equal("OH-01", plant.Title.Number);
    }
}
