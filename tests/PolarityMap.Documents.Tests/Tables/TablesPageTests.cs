using PolarityMap.Core.Checks;
using PolarityMap.Core.Schedules;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Tables;
using PolarityMap.Documents.Tables.Import;
using Xunit;

namespace PolarityMap.Documents.Tests.Tables;

/// <summary>What docs/tables.md says holds.</summary>
public sealed class TablesPageTests
{
    private static readonly string s_page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "tables.md"));

    private static TableSheet[] Examples() =>
        [.. s_page.Split("```csv\n")[1..].Select((text, i) => CsvReader.Read($"{i}", System.Text.Encoding.UTF8.GetBytes(text[..text.IndexOf("```", StringComparison.Ordinal)])))];

    [Fact]
    public void Every_schedule_stands_there_with_all_its_columns()
    {
        foreach (ScheduleKind kind in ScheduleCatalogue.All)
        {
            string row = s_page.Split('\n').Single(l => l.StartsWith($"| `{kind.Name}` |", StringComparison.Ordinal));
            string[] words = [.. kind.Columns.Select(c => string.Equals(c.Heading, Plain(c.Key), StringComparison.OrdinalIgnoreCase) ? $"`{c.Key}`" : $"`{c.Key}` ({c.Heading})")];
            Assert.EndsWith($"| {string.Join(", ", words)} |", row, StringComparison.Ordinal);
        }

        static string Plain(string key) => key.Replace('-', ' ');
    }

    [Fact]
    public void The_tables_made_by_hand_become_a_plant_without_findings()
    {
        TableSheet[] examples = Examples();
        ImportedTable table = TablePlant.Import(examples[..2], [], "Two switches over one trunk", keepGood: false);
        Assert.Empty(table.Rejected);
        Assert.Equal(6, table.Plant!.Links.Count);
        Assert.Empty(Checker.Check(TracedPlant.Of(table.Plant)));
    }

    [Fact]
    public void The_hops_become_a_plant()
    {
        ImportedTable table = TablePlant.Import(Examples()[2..], [], "Two switches", keepGood: false);
        Assert.Empty(table.Rejected);
        Assert.Equal("SW-L/1 = CORD/near\nCORD/far = SW-R/1", Reading.Matings(table.Plant!));
    }

    [Fact]
    public void The_limits_are_those_of_the_reader()
    {
        Assert.Contains($"At most {TableLimits.FileBytes >> 20} MiB, {TableLimits.UnpackedBytes >> 20} MiB unpacked, {TableLimits.Rows:#,0} rows, {TableLimits.Columns} columns.", s_page, StringComparison.Ordinal);
    }
}
