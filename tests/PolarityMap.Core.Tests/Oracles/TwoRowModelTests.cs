using Xunit;

namespace PolarityMap.Core.Tests.Oracles;

/// <summary>The two-row model is the typed tables at twelve columns and stays true at sixteen. No product code is called.</summary>
public sealed class TwoRowModelTests
{
    // Source: trade facts 2.2 and 5, beside the typed tables.
    [Fact]
    public void At_twelve_columns_it_is_what_is_typed()
    {
        foreach (var row in PartTables.TwoRowTrunks)
        {
            Assert.Equal(PartTables.TwoRowCable(row.Trunk).ToDictionary(j => j.Near, j => j.Far), TwoRowModel.Cable(row.Trunk, 12));
            Assert.Equal(Typed(PartTables.TwoRowTransition(row.RightTransition)), TwoRowModel.Transition(row.RightTransition, 12));
        }

        foreach (var row in PartTables.TwoRowUniversals)
            Assert.Equal(Typed(PartTables.TwoRowUniversal(row.Transition)), TwoRowModel.Transition(row.Transition, 12));
    }

    // Source: trade facts 5, two-row trunk with cassettes. Proved for rows of twelve; the words name no width.
    [Fact]
    public void The_typed_channels_work_at_twelve_and_at_sixteen_columns()
    {
        foreach (var columns in new[] { 12, 16 })
        {
            foreach (var opposed in new[] { false, true })
            {
                Assert.All(PartTables.TwoRowTrunks, r => Assert.True(
                    SlowModel.Works(["A-to-B", r.RightCord], [TwoRowModel.Link("straight", r.Trunk, r.RightTransition, opposed, columns)], columns)));
                Assert.All(PartTables.TwoRowUniversals, r => Assert.True(
                    SlowModel.Works([r.BothCords, r.BothCords], [TwoRowModel.Link(r.Transition, r.Trunk, r.Transition, opposed, columns)], columns)));
            }
        }
    }

    private static Dictionary<(int Port, char Position), int> Typed(IReadOnlyList<PortWiring> rows) =>
        rows.SelectMany(r => new[] { ((r.Port, 'A'), r.A), ((r.Port, 'B'), r.B) }).ToDictionary(p => p.Item1, p => p.Item2);
}
