using PolarityMap.Core.Parts;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>The rules of flat and angled end faces against the wedge between two faces turned in space.</summary>
public sealed class WedgeRuleTests
{
    public static TheoryData<string, string, string> Matings
    {
        get
        {
            var matings = new TheoryData<string, string, string>();
            foreach (string one in PolishWords.All)
            {
                foreach (string other in PolishWords.All)
                {
                    matings.Add(one, other, "opposed");
                    matings.Add(one, other, "aligned");
                }
            }

            return matings;
        }
    }

    // Source: trade facts 7.2 and 10: flat on angled gapes by 8 degrees and is never mated; two slopes gape by 16 or not at all.
    [Theory]
    [MemberData(nameof(Matings))]
    public void A_mating_of_two_arrays_is_at_fault_when_a_wedge_stays_and_the_code_tells_which(string one, string other, string keys)
    {
        double wedge = FerruleSpace.WedgeDegrees(one, other, keys == "opposed");
        string expected = Math.Round(wedge) switch { 0 => "", 8 => "M05", 16 => "M06", _ => throw new InvalidOperationException($"a wedge of {wedge}") };

        // Two cords in a panel, a trunk at a cassette's rear, a cord at a conversion module's front, written from either end.
        foreach (bool backwards in (bool[])[false, true])
        {
            Assert.Equal(expected, MechanicalCodes(new Runs()
                .Part("X", "array cord", v => v.Set("type", "Type-B").Set("polish", one))
                .Part("Y", "array cord", v => v.Set("type", "Type-B").Set("polish", other).Set("pins", "both"))
                .Part("P", "array panel", v => v.Set("keys", keys))
                .Run("X/far", "@P/1", "Y/near")
                .Write(backwards)));
            Assert.Equal(expected, MechanicalCodes(new Runs()
                .Part("K", "cassette", v => v.Set("wiring", "U1").Set("keys", keys).Set("polish", one))
                .Part("T", "trunk", v => v.Set("type", "Type-B").Set("polish", other))
                .Run("K/rear", "T/near")
                .Write(backwards)));
            Assert.Equal(expected, MechanicalCodes(new Runs()
                .Part("M", "conversion module", v => v.Set("conversion", "16 to 2x8").Set("front-keys", keys).Set("polish", one))
                .Part("X", "array cord", v => v.Set("type", "Type-B").Set("polish", other))
                .Run("M/1", "X/near")
                .Write(backwards)));
        }
    }

    private static string MechanicalCodes(Bench bench) =>
        string.Join(' ', bench.Check().Where(f => f.Rule.Family == "mechanical").Select(f => f.Rule.Code));
}
