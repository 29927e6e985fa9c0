using System.Text.Json;
using Xunit;

namespace PolarityMap.Acceptance.Data;

/// <summary>
/// A reader that has only the text of the plant: it joins what parts join inside and what matings join, by the rules for keys as
/// summaries of TIA-568.3 tell them, and must come to the strands that the program tells. It shares no code with the program.
/// </summary>
public sealed class PlantTextTests
{
    public static TheoryData<string> Documents => GalleryDocuments.All;

    [Theory]
    [MemberData(nameof(Documents))]
    public void The_text_of_a_plant_is_enough_to_trace_it(string document)
    {
        JsonElement plant = Data(document, "plant"), strands = Data(document, "strands");
        Dictionary<string, string> inside = Inside(plant), outside = Outside(plant);
        var seen = new HashSet<string>();
        foreach (JsonElement strand in strands.GetProperty("strands").EnumerateArray())
        {
            string[] told = [.. strand.GetProperty("hops").EnumerateArray().SelectMany(h => (string?[])[h.GetProperty("in").GetString(), h.GetProperty("out").GetString()]).OfType<string>()];
            Assert.All(told, address => Assert.True(seen.Add(address), $"{address} is on two strands"));
            bool isLoop = strand.GetProperty("loop").GetBoolean();
            if (!isLoop)
            {
                Assert.Equal(strand.GetProperty("from").GetProperty("address").GetString(), told[0]);
                Assert.Equal(strand.GetProperty("to").GetProperty("address").GetString(), told[^1]);
            }

            // Each step from one address to the next is a join of a part and a join of a mating by turns, and the ends have no other.
            bool within = isLoop || inside.ContainsKey(told[0]);
            for (int i = 0; i + 1 < told.Length; i++, within = !within)
                Assert.Equal(told[i + 1], (within ? inside : outside).GetValueOrDefault(told[i]));
            if (!isLoop)
            {
                Assert.DoesNotContain(told[0], (IReadOnlyDictionary<string, string>)(inside.ContainsKey(told[0]) ? outside : inside));
                Assert.DoesNotContain(told[^1], (IReadOnlyDictionary<string, string>)(within ? inside : outside));
            }
        }

        Assert.Equal(Positions(plant).Count(), seen.Count);
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void Links_findings_and_strands_name_each_other(string document)
    {
        JsonElement[] strands = [.. Data(document, "strands").GetProperty("strands").EnumerateArray()];
        JsonElement findings = Data(document, "findings");
        Assert.Equal(Enumerable.Range(1, strands.Length), strands.Select(s => s.GetProperty("number").GetInt32()));
        foreach (string what in (string[])["links", "findings"])
        {
            JsonElement[] all = [.. findings.GetProperty(what).EnumerateArray()];
            for (int i = 0; i < all.Length; i++)
            {
                IEnumerable<int> named = all[i].GetProperty("strands").EnumerateArray().Select(s => s.GetInt32()).Distinct().Order();
                Assert.Equal(named, strands.Where(s => s.GetProperty(what).EnumerateArray().Any(n => n.GetInt32() == i)).Select(s => s.GetProperty("number").GetInt32()));
            }
        }
    }

    private static JsonElement Data(string document, string what) => JsonDocument.Parse(GalleryDocuments.Run(document, "data", what).Out).RootElement;

    private static IEnumerable<(string Part, JsonElement Port)> Ports(JsonElement plant) =>
        plant.GetProperty("parts").EnumerateArray().SelectMany(p => p.GetProperty("ports").EnumerateArray().Select(q => (p.GetProperty("name").GetString()!, q)));

    private static IEnumerable<string> Positions(JsonElement plant) =>
        Ports(plant).Where(p => !p.Port.GetProperty("adapter").GetBoolean()).SelectMany(p => Addresses($"{p.Part}/{p.Port.GetProperty("name").GetString()}", p.Port));

    private static string[] Addresses(string port, JsonElement shape)
    {
        int count = shape.GetProperty("rows").GetInt32() * shape.GetProperty("columns").GetInt32();
        return shape.GetProperty("face").GetString() switch
        {
            "simplex" => [port],
            "duplex" => [$"{port}:A", $"{port}:B"],
            _ => [.. Enumerable.Range(1, count).Select(n => $"{port}:{n}")],
        };
    }

    private static Dictionary<string, string> Inside(JsonElement plant)
    {
        var joins = new Dictionary<string, string>();
        foreach (JsonElement part in plant.GetProperty("parts").EnumerateArray())
        {
            foreach (JsonElement pair in part.GetProperty("joins").EnumerateArray())
                Join(joins, $"{part.GetProperty("name").GetString()}/{pair[0].GetString()}", $"{part.GetProperty("name").GetString()}/{pair[1].GetString()}");
        }

        return joins;
    }

    private static Dictionary<string, string> Outside(JsonElement plant)
    {
        var joins = new Dictionary<string, string>();
        Dictionary<string, JsonElement> ports = Ports(plant).ToDictionary(p => $"{p.Part}/{p.Port.GetProperty("name").GetString()}", p => p.Port);
        foreach (JsonElement mating in plant.GetProperty("matings").EnumerateArray().Where(m => m.GetProperty("fits").GetBoolean()))
        {
            string a = mating.GetProperty("a").GetString()!, b = mating.GetProperty("b").GetString()!;

            // A simplex plug in one position of a duplex port.
            if (!ports.TryGetValue(a, out JsonElement face) || !ports.ContainsKey(b))
            {
                Join(joins, a, b);
                continue;
            }

            string[] from = Addresses(a, face), to = Addresses(b, ports[b]);
            int rows = face.GetProperty("rows").GetInt32(), columns = face.GetProperty("columns").GetInt32();
            for (int i = 0; i < from.Length; i++)
            {
                // Two connectors look at each other: left meets right. Turning one half round, key up to key down, mirrors once more.
                int row = i / columns, column = i % columns, mirrored = (row * columns) + columns - 1 - column;
                int meets = mating.GetProperty("keys").GetString() switch
                {
                    "opposed" => ((rows - 1 - row) * columns) + column,
                    "aligned" => mirrored,
                    _ => face.GetProperty("face").GetString() == "duplex" ? 1 - i : i,
                };
                Join(joins, from[i], to[meets]);
            }
        }

        return joins;
    }

    private static void Join(Dictionary<string, string> joins, string a, string b)
    {
        joins.Add(a, b);
        joins.Add(b, a);
    }
}
