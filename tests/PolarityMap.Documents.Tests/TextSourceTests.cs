using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests;

public class TextSourceTests
{
    [Fact]
    public void A_document_that_is_not_there_is_a_problem_with_its_name()
    {
        var problems = new ProblemList();
        Assert.Null(PlantDocument.Read("other.yaml", new TextSource("plant.yaml", "plant: x"), problems));
        Assert.Contains("there is no document 'other.yaml'", problems.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_that_is_larger_than_wanted_is_not_handed_out() =>
        Assert.False(new TextSource("a", "öö").TryRead("a", 3, out _, out _));

    [Fact]
    public void Documents_find_each_other()
    {
        var problems = new ProblemList();
        var source = new TextSource(new Dictionary<string, string>
        {
            ["plant.yaml"] = "plant: x\ninclude: [cords.yaml]\nparts:\n  A: duplex interface\n  B: duplex interface\nruns:\n  - A/1, red cord, B/1\n",
            ["cords.yaml"] = "catalogue: Cords\ntypes:\n  red cord: { kind: A-to-B cord, length: 2 m }\n",
        });
        Assert.NotNull(PlantDocument.Read("plant.yaml", source, problems));
        Assert.Equal("", problems.ToString());
    }
}
