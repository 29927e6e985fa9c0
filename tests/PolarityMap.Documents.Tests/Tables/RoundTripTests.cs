using CsCheck;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Tables;
using PolarityMap.Documents.Tables.Import;
using Xunit;

namespace PolarityMap.Documents.Tests.Tables;

/// <summary>What is exported and imported again has the same strands, address by address.</summary>
public sealed class RoundTripTests
{
    public static TheoryData<string> Examples => [.. Repository.Examples()];

    private static Plant Example(string path)
    {
        var source = new MemorySource();
        foreach (string file in Repository.Examples())
            source.Add(file, File.ReadAllText(Path.Combine(Repository.Root, file)));
        return Reading.Read(path, source).Plant!;
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_connections_of_an_example_alone_give_its_strands_back(string path)
    {
        Plant plant = Example(path);
        Told.SameStrands(plant, Told.FromCsv(CsvWriter.Write(Told.Schedule(plant, "connections"))));
    }

    // With networks and settings in the workbook the rules see the same plant, as far as it is not a matter of as-built differences.
    // How many findings there are depends on the lines of a document, of which a table has more.
    [Theory]
    [MemberData(nameof(Examples))]
    public void The_workbook_of_an_example_gives_its_strands_and_findings_back(string path)
    {
        Plant plant = Example(path);
        ImportedTable table = Told.FromXlsx(XlsxWriter.Write(Told.All(plant)));
        Told.SameStrands(plant, table);
        if (!plant.Parts.Any(p => p.IsAsBuilt))
            Assert.Equal(Codes(plant), Codes(table.Plant!));
    }

    [Fact]
    public void A_plant_of_any_make_has_its_strands_back() =>
        RandomPlants.Document.Sample(
            document =>
            {
                Plant plant = Reading.Plant(document);
                Told.SameStrands(plant, Told.FromCsv(CsvWriter.Write(Told.Schedule(plant, "connections"))));
                Told.SameStrands(plant, Told.FromXlsx(XlsxWriter.Write(Told.All(plant))));
            },
            iter: 60);

    [Fact]
    public void What_is_imported_is_exported_as_it_came()
    {
        byte[] once = CsvWriter.Write(Told.Schedule(Example("gallery/opera-house/plant.yaml"), "connections"));
        byte[] twice = CsvWriter.Write(Told.Schedule(Told.FromCsv(once).Plant!, "connections"));
        Assert.Equal(Lines(once), Lines(twice));

        // Strands may be numbered in another order.
        static string[] Lines(byte[] csv) => [.. System.Text.Encoding.UTF8.GetString(csv).Split("\r\n").Select(l => l[(l.IndexOf(',') + 1)..]).Order(StringComparer.Ordinal)];
    }

    private static string Codes(Plant plant) =>
        string.Join(' ', Checker.Check(TracedPlant.Of(plant)).Select(f => f.Rule.Code).Distinct().Order(StringComparer.Ordinal));
}
