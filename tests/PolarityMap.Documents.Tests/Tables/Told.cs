using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Tables;
using PolarityMap.Documents.Tables.Import;
using Xunit;

namespace PolarityMap.Documents.Tests.Tables;

/// <summary>What the tests of tables share: schedules of plants, and strands as texts that can be compared.</summary>
internal static class Told
{
    public static Schedule Schedule(Plant plant, string name) => ScheduleCatalogue.Find(name)!.Of(ScheduleInput.Of(TracedPlant.Of(plant)));

    public static IReadOnlyList<Schedule> All(Plant plant)
    {
        var input = ScheduleInput.Of(TracedPlant.Of(plant));
        return [.. ScheduleCatalogue.All.Select(k => k.Of(input))];
    }

    /// <summary>The texts of a column, empty cells as empty texts.</summary>
    public static string[] Column(Schedule schedule, string key)
    {
        int at = schedule.Columns.ToList().FindIndex(c => c.Key == key);
        Assert.True(at >= 0, $"no column {key}");
        return [.. schedule.Rows.Select(r => r[at].Text ?? r[at].Number?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "")];
    }

    public static ImportedTable FromCsv(byte[] csv, bool keepGood = false) =>
        TablePlant.Import([CsvReader.Read("table", csv)], [], "A plant", keepGood);

    public static ImportedTable FromCsv(string csv, bool keepGood = false) => FromCsv(System.Text.Encoding.UTF8.GetBytes(csv), keepGood);

    public static ImportedTable FromXlsx(byte[] xlsx, bool keepGood = false) =>
        TablePlant.Import(XlsxReader.Read(xlsx, out IReadOnlyList<TableProblem> cells), cells, "A plant", keepGood);

    /// <summary>
    /// Every strand of a plant as the addresses along it, told from the end that comes first in the alphabet; of a loop, which has no
    /// end, its addresses in alphabetical order. Sorted.
    /// </summary>
    public static string[] Strands(Plant plant, Func<string, string>? rename = null)
    {
        TracedPlant traced = TracedPlant.Of(plant);
        var strands = new string[traced.Strands.Count];
        for (int s = 0; s < strands.Length; s++)
        {
            string[] way = [.. traced.Strands[s].ToArray().Select(p => Address(traced, p, rename))];
            if (traced.Strands.IsLoop(s))
                Array.Sort(way, StringComparer.Ordinal);
            string told = string.Join(' ', way), back = string.Join(' ', way.Reverse());
            strands[s] = string.CompareOrdinal(told, back) < 0 ? told : back;
        }

        Array.Sort(strands, StringComparer.Ordinal);
        return strands;
    }

    private static string Address(TracedPlant traced, int position, Func<string, string>? rename)
    {
        string address = traced.Address(position);
        if (rename is null)
            return address;
        string part = traced.Plant.Parts[traced.Graph.PartOf(position)].Name;
        return rename(part) + address[part.Length..];
    }

    /// <summary>Compares the strands of a plant with those of the plant made from its table. A cord whose name does not follow from its ends has a name without strokes there.</summary>
    public static void SameStrands(Plant before, ImportedTable table)
    {
        Assert.True(table.Plant is not null, string.Join('\n', table.Rejected));
        Assert.Empty(table.Rejected);
        var names = new HashSet<string>(table.Plant.Parts.Select(p => p.Name));
        string Renamed(string name) => names.Contains(name) ? name : name.Replace('/', '.').Replace(':', '.');
        Assert.Equal(Strands(before, Renamed), Strands(table.Plant));
    }
}
