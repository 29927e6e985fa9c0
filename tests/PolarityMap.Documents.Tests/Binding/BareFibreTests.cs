using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Documents.Tests.Binding;

/// <summary>Cables whose bare fibres are spliced or terminated in the field.</summary>
public class BareFibreTests
{
    private const string Parts =
        """
        plant: P
        types:
          indoor cable: { kind: cable, fibres: 4, fibre: OM4 }
        parts:
          SW-[1..2]: { kind: duplex interface, ports: 2 }
          FT-L: { kind: field termination, fibres: 4 }
          FT-R: { kind: field termination, fibres: 4, wiring: reverse-pair, method: pigtail }
          CABLE: { kind: cable, fibres: 4, length: 40 m }
          C[1..2]: { kind: cable, fibres: 4 }
          SPLICE: { kind: splice, fibres: 4, splice-loss: 0.1 dB }
        runs:

        """;

    private static Plant Read(params string[] runs) => Reading.Plant(Parts + string.Concat(runs.Select(r => $"  - {r}\n")));

    [Fact]
    public void A_cable_lies_between_two_terminations() =>
        Assert.Equal("FT-L/bare = CABLE/near\nCABLE/far = FT-R/bare", Reading.Matings(Read("FT-L/bare, CABLE, FT-R/bare")));

    [Fact]
    public void Two_cables_meet_in_a_splice() =>
        Assert.Equal(
            "FT-L/bare = C1/near\nC1/far = SPLICE/near\nSPLICE/far = C2/near\nC2/far = FT-R/bare",
            Reading.Matings(Read("FT-L/bare, C1, SPLICE, C2, FT-R/bare")));

    [Fact]
    public void A_cable_and_a_splice_need_no_name()
    {
        Plant plant = Reading.Plant(
            Parts.Replace("parts:", "  field splice: { kind: splice, fibres: 4 }\nparts:", StringComparison.Ordinal)
            + "  - FT-L/bare, indoor cable 30 m, field splice, indoor cable 20 m, FT-R/bare\n");

        Assert.Equal(["cable 30 m OM4", "splice  ", "cable 20 m OM4"], plant.Parts.Where(p => p.IsInline).Select(p => $"{p.Kind} {p.Length} {p.Fibre}"));
    }

    /// <summary>
    /// Fibres in order at one end and each pair exchanged at the other make the one crossing that duplex cabling needs
    /// (TIA-568-A 12.7.1 and ISO/IEC 14763-2: reverse-pair positioning), so transmit meets receive.
    /// </summary>
    [Fact]
    public void Terminations_of_reverse_pairs_join_transmit_to_receive() =>
        Assert.Equal("", Reading.Codes(Reading.Plant(
            Parts.Replace("  C[1..2]: { kind: cable, fibres: 4 }\n  SPLICE: { kind: splice, fibres: 4, splice-loss: 0.1 dB }\n", "", StringComparison.Ordinal)
            + """
              - SW-1/1..2, A-to-B cord 2 m, FT-L/1..2
              - FT-L/bare, CABLE, FT-R/bare
              - FT-R/1..2, A-to-B cord 2 m, SW-2/1..2
            links:
              - SW-1/1..2 to SW-2/1..2

            """)));

    [Fact]
    public void What_is_stated_of_splices_comes_with_the_part()
    {
        Plant plant = Read("FT-L/bare, C1, SPLICE, C2, FT-R/bare");

        Assert.Equal("0.10 dB", Reading.Part(plant, "SPLICE").SpliceLoss.ToString());
        Assert.Equal((1, 0, 1, 0), (Reading.Part(plant, "SPLICE").Shape.Splices, Reading.Part(plant, "C1").Shape.Splices, Reading.Part(plant, "FT-R").Shape.Splices, Reading.Part(plant, "FT-L").Shape.Splices));
    }

    [Theory]
    [InlineData("FT-L/bare, C1, C2, FT-R/bare", "p:12:20: C1/far and C2/near are joined by neither splice nor connector")]
    [InlineData("FT-L/bare, SPLICE, C1", "p:12:16: FT-L/bare and SPLICE/near are joined by neither splice nor connector")]
    [InlineData("FT-L/bare:2, C1", "p:12:18: position 2 of FT-L/bare does not mate with C1/near (4 bare fibres)")]
    public void Bare_fibres_need_a_splice_or_a_termination_between_them(string run, string problem) =>
        Assert.StartsWith(problem, Reading.Problems(Parts + $"  - {run}\n"), StringComparison.Ordinal);
}
