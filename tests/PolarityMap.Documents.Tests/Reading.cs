using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests;

/// <summary>Reads documents from memory and prints what came of them, for comparing with lines written by hand.</summary>
internal static class Reading
{
    /// <summary>The plant and the problems of a text that is the document <c>p</c>.</summary>
    public static (Plant? Plant, string Problems) Read(string text) => Read("p", new MemorySource().Add("p", text));

    public static (Plant? Plant, string Problems) Read(string path, IDocumentSource source)
    {
        var problems = new ProblemList();
        Plant? plant = PlantDocument.Read(path, source, problems);
        Assert.Equal(plant is null, !problems.IsEmpty);
        return (plant, problems.ToString());
    }

    /// <summary>The plant of a text with nothing wrong in it.</summary>
    public static Plant Plant(string text)
    {
        (Plant? plant, string problems) = Read(text);
        Assert.Equal("", problems);
        return plant!;
    }

    /// <summary>The problems of a text that gives no plant.</summary>
    public static string Problems(string text)
    {
        (Plant? plant, string problems) = Read(text);
        Assert.Null(plant);
        return problems;
    }

    /// <summary>The codes of a plant's findings, in order, with blanks between them.</summary>
    public static string Codes(Plant plant) => string.Join(' ', Checker.Check(TracedPlant.Of(plant)).Select(f => f.Rule.Code));

    /// <summary>A mating as <c>A = B</c>, with its keys when it is of arrays and the adapter when there is one.</summary>
    public static string Show(Plant plant, Mating mating)
    {
        string Port(PortRef port, int position) => position == 0 ? plant.Address(port) : plant.Address(port, position);
        string keys = plant.Port(mating.A).Face.Family == ConnectorFamily.Array ? " " + mating.Keys.Word() : "";
        string adapter = mating.Through is { } through ? " in " + plant.Address(through) : "";
        return $"{Port(mating.A, mating.PositionOfA)} = {Port(mating.B, mating.PositionOfB)}{keys}{adapter}";
    }

    /// <summary>Every mating of a plant, one in a line.</summary>
    public static string Matings(Plant plant) => string.Join('\n', plant.Matings.Select(m => Show(plant, m)));

    /// <summary>The matings of a text with nothing wrong in it.</summary>
    public static string Matings(string text) => Matings(Plant(text));

    public static Part Part(Plant plant, string name) => plant.Parts.Single(p => p.Name == name);
}
