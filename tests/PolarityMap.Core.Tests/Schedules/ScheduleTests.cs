using PolarityMap.Core.Schedules;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Schedules;

/// <summary>What holds for every schedule of every plant.</summary>
public sealed class ScheduleTests
{
    public static TheoryData<string> Names => [.. ScheduleCatalogue.All.Select(k => k.Name)];

    /// <summary>Plants with something for every schedule to tell.</summary>
    private static TracedPlant[] Plants() =>
    [
        Channels.Method("B").Trace(),
        Spliced().Trace(),
        new Bench().Add("S", "duplex interface", v => v.Set("ports", 4)).Trace(),
        new Bench().Trace(),
    ];

    /// <summary>Two terminations, a splice between two cables of four fibres, and a cable whose far end is left bare.</summary>
    internal static Bench Spliced() => new Bench()
        .Add("S", "duplex interface", v => v.Set("ports", 2))
        .Add("F", "field termination", v => v.Set("fibres", 4))
        .Add("C1", "cable", v => v.Set("fibres", 4))
        .Add("J", "splice", v => v.Set("fibres", 4))
        .Add("C2", "cable", v => v.Set("fibres", 4))
        .Cord("P", "S/1", "A-to-B", "F/1")
        .Mate("F/bare", "C1/near").Mate("C1/far", "J/near").Mate("J/far", "C2/near");

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_row_has_a_cell_for_every_column_and_of_its_kind(string name)
    {
        foreach (TracedPlant plant in Plants())
        {
            Schedule schedule = ScheduleCatalogue.Find(name)!.Of(ScheduleInput.Of(plant));
            Assert.Equal(schedule.Columns.Count, schedule.Columns.Select(c => c.Key).Distinct().Count());
            Assert.All(schedule.Columns, c => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", c.Key));
            Assert.All(schedule.Rows, row =>
            {
                Assert.Equal(schedule.Columns.Count, row.Count);
                for (int i = 0; i < row.Count; i++)
                {
                    CellKind kind = schedule.Columns[i].Kind;
                    Assert.True(row[i].IsEmpty || (kind != CellKind.Blank && (kind == CellKind.Text) == (row[i].Text is not null)), $"{name}, {schedule.Columns[i].Key}");
                }
            });
        }
    }

    [Fact]
    public void Names_and_titles_are_told_apart_and_fit_a_sheet()
    {
        Assert.Equal(ScheduleCatalogue.All.Count, ScheduleCatalogue.All.Select(k => k.Name).Distinct().Count());
        Assert.All(ScheduleCatalogue.All, k => Assert.InRange(k.Title.Length, 1, 31));
        Assert.Null(ScheduleCatalogue.Find("connection"));
    }

    [Fact]
    public void The_same_plant_gives_the_same_schedules() =>
        Assert.Equal(
            ScheduleCatalogue.All.SelectMany(k => k.Of(ScheduleInput.Of(Plants()[0])).Rows.SelectMany(r => r)),
            ScheduleCatalogue.All.SelectMany(k => k.Of(ScheduleInput.Of(Plants()[0])).Rows.SelectMany(r => r)));

    [Fact]
    public void Steps_and_cautions_stand_with_the_work_sheet_and_say_where_they_come_from()
    {
        Assert.NotEmpty(FieldTerminationNotes.Preparation);
        Assert.All([.. FieldTerminationNotes.Cautions, .. FieldTerminationNotes.Preparation], n => Assert.EndsWith(".", n.Text, StringComparison.Ordinal));
        Assert.All([.. FieldTerminationNotes.Cautions, .. FieldTerminationNotes.Preparation], n => Assert.NotEqual("", n.Source));
        Assert.Contains(FieldTerminationNotes.Cautions, n => n.Text.Contains("Never look into a fibre end", StringComparison.Ordinal));
        Assert.Contains(FieldTerminationNotes.Cautions, n => n.Text.Contains("needles", StringComparison.Ordinal));
        Assert.Contains(FieldTerminationNotes.Cautions, n => n.Text.Contains("alcohol", StringComparison.Ordinal));
        Assert.Contains(FieldTerminationNotes.Cautions, n => n.Text.Contains("Local codes", StringComparison.Ordinal));
    }
}
