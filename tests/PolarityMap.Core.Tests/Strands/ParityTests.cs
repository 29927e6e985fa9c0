using CsCheck;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Strands;

/// <summary>The parity rules of the trade facts on random chains.</summary>
public sealed class ParityTests
{
    private static readonly Gen<string> Cable = Gen.OneOf("Type-A", "Type-B", "Type-C");
    private static readonly Gen<string> Adapter = Gen.OneOf("Type-A", "Type-B");
    private static readonly Gen<string> Cord = Gen.OneOf("A-to-B", "A-to-A");
    private static readonly Gen<string> Method = Gen.OneOf<string>([.. MethodTables.Ingredients.Select(i => i.Method)]);

    // Source: trade facts 3.2, rule 1. Proved.
    [Fact]
    public void An_array_run_is_reversed_by_an_odd_count_of_type_b_cables_and_aligned_matings() =>
        Gen.Select(Cable.Array[1, 8], Adapter.Array[7], Gen.OneOf(8, 12)).Sample((cables, adapters, fibres) =>
        {
            TracedPlant traced = Channels.ArrayChain(new Bench(), cables, adapters, fibres).Trace();
            bool reversed = (cables.Count(c => c == "Type-B") + adapters.Take(cables.Length - 1).Count(a => a == "Type-B")) % 2 == 1;
            bool flipped = cables.Count(c => c == "Type-C") % 2 == 1;
            foreach (int near in fibres == 8 ? PartTables.EightOfTwelve : Enumerable.Range(1, 12))
            {
                int far = reversed ? 13 - near : near;
                if (flipped)
                    far = far % 2 == 1 ? far + 1 : far - 1;
                Assert.Equal($"X{cables.Length}/far:{far}", traced.Meets($"X1/near:{near}"));
            }
        }, iter: 200);

    // Source: trade facts 3.2, rule 2. Proved.
    [Fact]
    public void Light_lands_on_a_receiver_when_a_to_b_cords_and_crossing_links_are_odd_together() =>
        Gen.Select(Method.Array[0, 3], Cord.Array[4], Gen.OneOf(8, 12)).Sample((methods, spareCords, fibres) =>
        {
            string[] cords = spareCords[..(methods.Length + 1)];
            LinkParts[] links = [.. methods.Select(m => LinkParts.Of(MethodTables.IngredientsOf(m)))];
            bool lands = (cords.Count(c => c == "A-to-B") + methods.Count(m => m != "A")) % 2 == 1;
            TracedPlant traced = Channels.Series(cords, links, fibres).Trace();
            for (int port = 1; port <= fibres / 2; port++)
                Assert.Equal((port, lands ? "Rx" : "Tx"), traced.Answer(port, "Tx"));
        }, iter: 150);

    // Source: trade facts 3.2, rule 2, its example. Proved; 2 sources for the one A-to-A cord of a single link.
    [Fact]
    public void Two_method_a_links_in_series_work_with_three_a_to_b_cords()
    {
        LinkParts link = LinkParts.Of(MethodTables.IngredientsOf("A"));
        Assert.Equal("", Channels.Links(Channels.Series(["A-to-B", "A-to-B", "A-to-B"], [link, link], 12), 6).Codes());
    }

    // Source: trade facts 3.2, rule 3: both transceiver matings count as aligned. Proved.
    [Fact]
    public void A_parallel_channel_works_lane_for_lane_when_reversals_are_odd_and_type_c_cables_even() =>
        Gen.Select(Cable.Array[1, 7], Adapter.Array[6]).Sample((cables, adapters) =>
        {
            int reversals = 2 + cables.Count(c => c == "Type-B") + adapters.Take(cables.Length - 1).Count(a => a == "Type-B");
            bool works = reversals % 2 == 1 && cables.Count(c => c == "Type-C") % 2 == 0;
            TracedPlant traced = Channels.Parallel(cables, adapters).Trace();
            bool laneForLane = PartTables.FourLanes.All(lane =>
                traced.Meets($"QL/1:{lane.ReceptacleTx}") == $"QR/1:{lane.ReceptacleRx}"
                && traced.Meets($"QL/1:{lane.ReceptacleRx}") == $"QR/1:{lane.ReceptacleTx}");
            Assert.Equal(works, laneForLane);
        }, iter: 200);
}
