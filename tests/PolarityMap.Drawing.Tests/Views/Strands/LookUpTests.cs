using CsCheck;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Tests.Views.Overview;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Strands;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Strands;

/// <summary>
/// What a planning looks up once against what the traced plant says each time: it is the one record, and nothing that is kept
/// of it may differ.
/// </summary>
public sealed class LookUpTests
{
    [Fact]
    public void A_position_has_the_port_the_place_and_the_mating_of_the_traced_plant()
    {
        foreach (string path in Plants.Gallery.Where(p => !p.Contains("catalogue", StringComparison.Ordinal)))
        {
            if (Read(path) is not { } input)
                continue;
            TracedPlant traced = input.Traced;
            var ports = new PortTable(traced);
            for (int position = 0; position < traced.Graph.PositionCount; position++)
            {
                PositionPlace place = traced.Graph.PlaceOf(position);
                Assert.Equal(place.Port, ports.At(position).Ref);
                Assert.Equal(place.Position, ports.PlaceOf(position));
                Assert.Same(traced.MatingAt(position), ports.MatingAt(position));
                Assert.Equal(traced.Graph.LaneAt(position), ports.At(position).LaneAt(place.Position));
            }
        }
    }

    [Fact]
    public void A_remembered_plan_leads_every_strand_as_a_new_one() => Gen.Int[1, 16].SelectMany(n => Gen.Shuffle(Enumerable.Range(0, n).ToArray())).Sample(order =>
    {
        var plans = new BraidPlans();
        var byRight = new int[order.Length];
        for (int i = 0; i < order.Length; i++)
            byRight[order[i]] = i;
        BraidPlan plan = BraidPlan.Of(order);
        foreach (BraidPlan kept in (BraidPlan[])[plans.Of(byRight), plans.Of(byRight)])
        {
            for (int i = 0; i < order.Length; i++)
                Assert.Equal(plan.RowsOf(i), kept.RowsOf(i));
        }
    }, iter: 200);

    [Fact]
    public void No_drawing_is_less_high_than_the_rows_that_are_counted_before_it_is_laid_out()
    {
        foreach (string path in Plants.Gallery)
        {
            if (Read(path) is not { } input || input.Selection.Strands.Count == 0)
                continue;
            var hops = new StrandHops(input.Traced);
            Piece[] pieces = [.. input.Selection.Strands.Select(hops.Whole)];
            Sheetful sheetful = Sheetful.OnItsOwnSheet(hops, input, pieces, SheetNames.Plain);
            Assert.NotNull(ColumnPlan.Make(hops, pieces, sheetful.Placement.BandHeight));
            Assert.Null(ColumnPlan.Make(hops, pieces, 0));
        }
    }

    /// <summary>A plant to draw; parts alone, such as a catalogue, are none.</summary>
    private static ViewInput? Read(string path)
    {
        try
        {
            return Plants.OfFile(path, new Choice { WithDark = true });
        }
        catch (Xunit.Sdk.XunitException)
        {
            return null;
        }
    }
}
