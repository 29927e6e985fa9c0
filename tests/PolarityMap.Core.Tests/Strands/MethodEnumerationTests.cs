using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Oracles;
using PolarityMap.Core.Tests.Parts;
using Xunit;

namespace PolarityMap.Core.Tests.Strands;

/// <summary>
/// Every duplex method and every two-row reading, of every size, with every choice of cords, one to three links in series (one
/// or two of two rows), written from either end: the trace and the checker against the reference model.
/// </summary>
public sealed class MethodEnumerationTests
{
    /// <summary>A link as both sides build it: the product's words and the reference model's maps.</summary>
    private sealed record Choice(string Trunk, string LeftWiring, string RightWiring, bool Opposed, SlowLink Slow);

    public static TheoryData<string, int> Methods
    {
        get
        {
            var methods = new TheoryData<string, int>();
            foreach (MethodIngredients method in MethodTables.Ingredients)
            {
                foreach (int fibres in (int[])[8, 12, 16])
                    methods.Add(method.Method, fibres);
            }

            return methods;
        }
    }

    public static TheoryData<string, string, string, int> TwoRowReadings
    {
        get
        {
            var readings = new TheoryData<string, string, string, int>();
            foreach (int fibres in (int[])[24, 32])
            {
                foreach (TwoRowWorksRow row in PartTables.TwoRowTrunks)
                    readings.Add("straight", row.Trunk, row.RightTransition, fibres);
                foreach (TwoRowUniversalRow row in PartTables.TwoRowUniversals)
                    readings.Add(row.Transition, row.Trunk, row.Transition, fibres);
            }

            return readings;
        }
    }

    // Source: trade facts 3, 6.1 and 6.2 for the methods, 3.2 rule 2 for links in series: light lands on a receiver when
    // A-to-B cords and crossing links are odd together, and a Method A link does not cross. Proved.
    [Theory]
    [MemberData(nameof(Methods))]
    public void A_method_in_series_works_when_cords_and_crossing_links_are_odd(string method, int fibres)
    {
        MethodIngredients parts = MethodTables.IngredientsOf(method);
        SlowLink slow = SlowModel.Link(parts.LeftTransition, parts.Adapters, parts.Trunk, parts.Adapters, parts.RightTransition, fibres);
        AssertSeries(new Choice(parts.Trunk, parts.LeftTransition, parts.RightTransition, parts.Adapters == "Type-A", slow), crosses: method != "A", fibres, most: 3);
    }

    // Source: trade facts 5, two-row trunk with cassettes, and 3.2 rule 2: what needs an A-to-A cord does not cross. Proved
    // for rows of twelve; rows of sixteen by the same words.
    [Theory]
    [MemberData(nameof(TwoRowReadings))]
    public void A_two_row_reading_in_series_works_when_cords_and_crossing_links_are_odd(string left, string trunk, string right, int fibres)
    {
        bool crosses = trunk is not ("straight-by-number" or "rows-exchanged");
        foreach (bool opposed in (bool[])[false, true])
        {
            SlowLink slow = TwoRowModel.Link(left, trunk, right, opposed, fibres / 2);
            int most = fibres == 24 && opposed ? 2 : 1;
            AssertSeries(new Choice(trunk, TypedWiringTests.TwoRowName(left), TypedWiringTests.TwoRowName(right), opposed, slow), crosses, fibres, most);
        }
    }

    private static void AssertSeries(Choice link, bool crosses, int fibres, int most)
    {
        for (int links = 1; links <= most; links++)
        {
            foreach (string[] cords in EveryCords(links + 1))
            {
                bool odd = (cords.Count(c => c == "A-to-B") + (crosses ? links : 0)) % 2 == 1;
                SlowLink[] slow = [.. Enumerable.Repeat(link.Slow, links)];
                string what = $"{links} of {link.Trunk} with {string.Join(", ", cords)}, {fibres} fibres";
                Assert.True(odd == SlowModel.Works(cords, slow, fibres / 2), what);
                foreach (bool backwards in (bool[])[false, true])
                {
                    TracedPlant traced = Series(link, cords, fibres).Write(backwards).Trace();
                    for (int port = 1; port <= fibres / 2; port++)
                    {
                        Assert.Equal(SlowModel.Answer(cords, slow, port, "Tx"), traced.Answer(port, "Tx"));
                        Assert.Equal(SlowModel.Answer(cords, slow, port, "Rx"), traced.Answer(port, "Rx"));
                    }

                    traced.AssertVerdict(odd, what);
                }
            }
        }
    }

    private static Runs Series(Choice link, IReadOnlyList<string> cords, int fibres)
    {
        int ports = fibres / 2;
        Runs runs = new Runs().Part("L", "duplex interface", v => v.Set("ports", ports)).Part("R", "duplex interface", v => v.Set("ports", ports));
        string keys = link.Opposed ? "opposed" : "aligned";
        for (int i = 1; i < cords.Count; i++)
        {
            runs.Part($"KL{i}", "cassette", v => v.Set("wiring", link.LeftWiring).Set("base", fibres).Set("keys", keys))
                .Part($"T{i}", "trunk", v => v.Set("type", link.Trunk).Set("base", fibres))
                .Part($"KR{i}", "cassette", v => v.Set("wiring", link.RightWiring).Set("base", fibres).Set("keys", keys))
                .Run($"KL{i}/rear", $"T{i}", $"KR{i}/rear");
        }

        for (int i = 1; i <= cords.Count; i++)
        {
            string type = cords[i - 1];
            for (int port = 1; port <= ports; port++)
            {
                runs.Part($"C{i}-{port}", "duplex cord", v => v.Set("type", type))
                    .Run(i == 1 ? $"L/{port}" : $"KR{i - 1}/{port}", $"C{i}-{port}", i == cords.Count ? $"R/{port}" : $"KL{i}/{port}");
            }
        }

        for (int port = 1; port <= ports; port++)
            runs.Link($"L/{port}", $"R/{port}");
        return runs;
    }

    private static IEnumerable<string[]> EveryCords(int count)
    {
        for (int bits = 0; bits < 1 << count; bits++)
            yield return [.. Enumerable.Range(0, count).Select(i => (bits >> i & 1) == 0 ? "A-to-B" : "A-to-A")];
    }
}
