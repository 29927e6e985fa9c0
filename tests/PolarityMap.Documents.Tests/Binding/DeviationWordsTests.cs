using System.Text;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Documents.Tests.Binding;

/// <summary>
/// A deviation speaks in the words of a document's as-built section: written there, it gives the plant that the deviation builds.
/// </summary>
public sealed class DeviationWordsTests
{
    /// <summary>The most deviations of one kind that are written for one document.</summary>
    private const int MostOfAKind = 24;

    public static TheoryData<string> Documents =>
    [
        "methods/duplex-A.yaml", "methods/duplex-U2.yaml", "methods/parallel-C.yaml", "arrays/breakout-4x.yaml", "arrays/conversion-2x12-to-3x8.yaml",
        "arrays/single-fibre.yaml", "arrays/spliced-cable.yaml", "arrays/two-rows-of-twelve.yaml", "opera-house/plant.yaml",
    ];

    // Source: the reader of documents, which lays as-built differences by code of its own.
    [Theory]
    [MemberData(nameof(Documents))]
    public void A_difference_that_a_document_can_say_gives_the_same_plant_when_it_says_it(string document)
    {
        var source = new MemorySource().Add("plant.yaml", File.ReadAllText(Path.Combine(Repository.Root, "gallery", document)));
        Plant design = Read("plant.yaml", source);
        var context = new DeviationContext(TracedPlant.Of(design));
        var written = new Dictionary<string, int>();
        foreach (Deviation deviation in context.All())
        {
            if (deviation.Differences.Count == 0 || deviation.Differences.Any(d => d is PartDiffers { Attribute: "" }))
                continue;
            if ((written[deviation.Kind.Name] = written.GetValueOrDefault(deviation.Kind.Name) + 1) > MostOfAKind)
                continue;
            source.Add("built.yaml", "design: plant.yaml\n" + AsBuilt(design, deviation.Differences));
            StrandGraph said = StrandGraph.Of(Read("built.yaml", source));
            StrandGraph built = StrandGraph.Of(context.Build(deviation.Differences)!);
            Assert.True(said.Inside.SequenceEqual(built.Inside) && said.Outside.SequenceEqual(built.Outside), deviation.Text);
        }

        Assert.True(written.Count >= 3, $"{document}: only {string.Join(", ", written.Keys)}");
    }

    // Whatever a deviation says of a part, the document says of it too.
    [Fact]
    public void A_part_as_built_has_the_class_and_network_that_the_deviation_says()
    {
        var source = new MemorySource().Add("plant.yaml", File.ReadAllText(Path.Combine(Repository.Root, "gallery", "opera-house", "plant.yaml")));
        Plant design = Read("plant.yaml", source);
        Deviation fibre = new DeviationContext(TracedPlant.Of(design)).All().First(d => d.Kind.Name == "other-fibre");
        source.Add("built.yaml", "design: plant.yaml\n" + AsBuilt(design, fibre.Differences));
        var differs = (PartDiffers)fibre.Differences[0];
        Assert.Equal("OM3", Read("built.yaml", source).Parts[differs.Part].Fibre!.Name);
        Assert.Equal("OM3", differs.Changed.Fibre!.Name);
    }

    private static Plant Read(string path, MemorySource source)
    {
        (Plant? plant, string problems) = Reading.Read(path, source);
        Assert.Equal("", problems);
        return plant!;
    }

    private static string AsBuilt(Plant plant, IReadOnlyList<Difference> differences)
    {
        var text = new StringBuilder("as-built:\n");
        Section(text, "parts", differences.OfType<PartDiffers>().Select(p => $"'{plant.Parts[p.Part].Name}': {{ {p.Attribute}: {p.Value} }}"), "");
        Section(text, "exchanged", differences.OfType<PlugsExchanged>().Select(p => $"{plant.Address(p.A)} and {plant.Address(p.B)}"), "- ");
        Section(text, "moved", differences.OfType<PlugMoved>().Select(p => $"{plant.Address(p.From)} to {plant.Address(p.To)}"), "- ");
        Section(text, "unplugged", differences.OfType<PlugPulled>().Select(p => plant.Address(p.Port)), "- ");
        return text.ToString();
    }

    private static void Section(StringBuilder text, string name, IEnumerable<string> lines, string bullet)
    {
        string[] all = [.. lines];
        if (all.Length == 0)
            return;
        text.Append($"  {name}:\n");
        foreach (string line in all)
            text.Append($"    {bullet}{line}\n");
    }
}
