using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>The separation of a plant of twenty thousand strands: what is found at scale is what one trunk would show.</summary>
public sealed class LargeSharingTests
{
    private const int Trunks = 2_500;
    private const int FibresOfTrunk = 8;

    [Fact]
    public void Twenty_thousand_strands_in_shared_trunks_are_counted_and_told_once_for_all_that_are_alike()
    {
        TracedPlant traced = Campus(swapped: -1);
        Assert.Equal(Trunks * FibresOfTrunk, Enumerable.Range(0, traced.Strands.Count).Count(traced.IsActive));
        var context = new CheckContext(traced);
        Assert.Equal(Trunks, context.Separation.Sharing.Shared(SharedPlace.Sheath));
        Assert.Equal(2 * Trunks, context.Separation.Sharing.Shared(SharedPlace.Cassette));
        Assert.Equal(2 * Trunks, context.Separation.Sharing.Shared(SharedPlace.Array));
        Finding[] findings = [.. Checker.Check(context).Where(f => f.Rule.Family == "separation")];
        Assert.Equal(["S02", "S03", "S04"], findings.Select(f => f.Rule.Code));
        Assert.Contains($"and {Trunks - 1} more alike", findings[0].Message);
        Assert.Contains($"and {(2 * Trunks) - 1} more alike", findings[1].Message);
    }

    [Fact]
    public void One_cord_of_sound_among_twenty_thousand_strands_of_lighting_and_sound_is_found()
    {
        Finding finding = Assert.Single(Checker.Check(Campus(swapped: 1_876)), f => f.Rule.Code == "S01");
        Assert.Equal("2 strands of lighting enter C1876-0, a part of sound, at L1876/1", finding.Message);
    }

    /// <summary>
    /// Trunks of four pairs, two of lighting and two of sound, all described on the same lines; lighting forbids what they share.
    /// The first cord of one trunk is of sound.
    /// </summary>
    private static TracedPlant Campus(int swapped)
    {
        Shape cassette = Bench.ShapeOf("cassette", v => v.Set("wiring", "U1").Set("base", 8));
        Shape trunk = Bench.ShapeOf("trunk", v => v.Set("type", "Type-B").Set("base", 8));
        Shape cord = Bench.ShapeOf("duplex cord", v => v.Set("type", "A-to-B"));
        Shape ports = Bench.ShapeOf("duplex interface", v => v.Set("ports", 2));
        int rear = cassette.FindPort("rear");
        var builder = new PlantBuilder();
        var place = new SourcePlace("campus.yaml", 1, 1);
        builder.AddNetwork(new Network("lighting", null, place) { MayShare = [] });
        builder.AddNetwork(new Network("sound", null, place));
        int Add(string name, Shape shape, int network) => builder.AddPart(new Part(name, "", shape, place) { Network = network });
        void Mate(int a, int portA, int b, int portB, Keying keys) => builder.AddMating(new Mating(new PortRef(a, portA), new PortRef(b, portB), keys, place));
        for (int n = 0; n < Trunks; n++)
        {
            int t = Add($"T{n}", trunk, -1), kl = Add($"KL{n}", cassette, -1), kr = Add($"KR{n}", cassette, -1);
            Mate(kl, rear, t, 0, Keying.Opposed);
            Mate(t, 1, kr, rear, Keying.Opposed);
            for (int network = 0; network < 2; network++)
            {
                int l = Add(network == 0 ? $"L{n}" : $"S{n}", ports, network), r = Add($"R{n}-{network}", ports, network);
                for (int port = 0; port < 2; port++)
                {
                    int pair = (2 * network) + port;
                    int near = Add($"C{n}-{pair}", cord, n == swapped && pair == 0 ? 1 : -1), far = Add($"D{n}-{pair}", cord, -1);
                    Mate(l, port, near, 0, Keying.Aligned);
                    Mate(near, 1, kl, pair, Keying.Aligned);
                    Mate(kr, pair, far, 0, Keying.Aligned);
                    Mate(far, 1, r, port, Keying.Aligned);
                }
            }
        }

        return TracedPlant.Of(builder.Build());
    }
}
