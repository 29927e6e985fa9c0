using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Oracles;
using PolarityMap.Core.Tests.Parts;
using Xunit;

namespace PolarityMap.Core.Tests.Strands;

/// <summary>Conversions in channels: a module and its twin make Type-B links of their narrow ports, and a harness undoes its like.</summary>
public sealed class ConversionChannelTests
{
    public static TheoryData<string> Names => [.. Conversion.Names];

    /// <summary>
    /// The trunk map that a conversion is for. One row: Type-B. Two rows: as the name says; 24 to 2x12 keeps each row to a port
    /// of its own, which is what reversed-in-row does (trade facts 6.3, by the rule of reversed partners).
    /// </summary>
    private static string TrunkOf(string conversion) => conversion switch
    {
        "2x12 to 3x8" or "3x12 to 4x8" or "16 to 2x8" => "Type-B",
        "24 to 2x12" or "24 to 3x8 in-row" or "32 to 4x8 in-row" => "reversed-in-row",
        "24 to 3x8 full" or "32 to 4x8 full" => "fully-reversed",
        _ => throw new ArgumentOutOfRangeException(nameof(conversion), conversion, "no trunk known for this conversion"),
    };

    // Source: trade facts 6.3: the same module at both ends and Type-B trunks, every port then acts as one Type-B link.
    // Derived and proved. Which maps the other trunks of as many rows give is the reference model's walk.
    [Theory]
    [MemberData(nameof(Names))]
    public void Between_twin_modules_every_narrow_port_is_one_type_b_link_with_the_trunk_it_is_for_and_no_other(string conversion)
    {
        foreach (string trunk in ArrayMap.NamesFor(ArrayBase.Of(Conversion.ByName(conversion).Wide[0]).IsOneRow ? 1 : 2))
        {
            foreach (string keys in (string[])["opposed", "aligned"])
            {
                foreach (bool backwards in (bool[])[false, true])
                {
                    TracedPlant traced = Twins(conversion, [trunk], keys, keys).Write(backwards).Trace();
                    Assert.Equal(trunk == TrunkOf(conversion), IsTypeBThroughout(traced, conversion));
                }
            }
        }
    }

    // Source: trade facts 6.3 and 3.2, rule 1: three reversals are one, and adapters alike come in twos and cancel.
    [Theory]
    [MemberData(nameof(Names))]
    public void Drawn_runs_of_one_or_three_trunks_between_twin_modules_are_type_b_links(string conversion)
    {
        foreach (ulong seed in Lots.Seeds)
        {
            var lots = new Lots(seed);
            string[] trunks = [.. Enumerable.Repeat(TrunkOf(conversion), lots.Coin() ? 3 : 1)];
            TracedPlant traced = Twins(conversion, trunks, lots.Coin() ? "opposed" : "aligned", lots.Coin() ? "opposed" : "aligned").Write(lots.Coin()).Trace();
            Assert.True(IsTypeBThroughout(traced, conversion), $"seed {seed}");
        }
    }

    // Source: trade facts 3.2, rule 3: cord, Type-B link, cord and the two transceiver matings are an odd count of reversals.
    [Theory]
    [MemberData(nameof(Names))]
    public void Four_lane_ports_with_type_b_cords_work_lane_for_lane_through_twin_modules(string conversion)
    {
        int ports = Conversion.ByName(conversion).Narrow.Count;
        foreach (string keys in (string[])["opposed", "aligned"])
        {
            foreach (bool backwards in (bool[])[false, true])
            {
                Runs runs = Twins(conversion, [TrunkOf(conversion)], keys, keys)
                    .Part("L", "parallel interface", v => v.Set("ports", ports))
                    .Part("R", "parallel interface", v => v.Set("ports", ports));
                for (int port = 1; port <= ports; port++)
                {
                    foreach (string side in (string[])["L", "R"])
                        runs.Part($"X{side}{port}", "array cord", v => v.Set("type", "Type-B").Set("base", Conversion.ByName(conversion).Narrow[0]));
                    runs.Run($"L/{port}", $"XL{port}", $"ML/{port}").Run($"MR/{port}", $"XR{port}", $"R/{port}");
                    foreach (LaneRow lane in PartTables.FourLanes)
                        runs.Link($"L/{port}:{lane.Lane}", $"R/{port}:{lane.Lane}");
                }

                TracedPlant traced = runs.Write(backwards).Trace();
                for (int port = 1; port <= ports; port++)
                    Assert.All(PartTables.FourLanes, l => Assert.Equal($"R/{port}:{l.ReceptacleRx}", traced.Meets($"L/{port}:{l.ReceptacleTx}")));
                traced.AssertVerdict(right: true, conversion);
            }
        }
    }

    // Source: algebra. Harnesses of one wiring, narrow ends joined straight (opposed keys, trade facts 2.3).
    [Theory]
    [MemberData(nameof(Names))]
    public void A_harness_and_its_reverse_lead_every_fibre_back_to_its_position(string conversion)
    {
        foreach (string type in (string[])["straight", "reversed"])
            AssertIdentity(conversion, v => v.Set("conversion", conversion).Set("type", type), (port, position) => !ConversionTests.Spare(conversion).Contains((port, position)));
    }

    // Source: algebra, with drawn wirings; a place without a fibre leads nowhere.
    [Theory]
    [MemberData(nameof(Names))]
    public void A_harness_with_its_own_wiring_and_its_reverse_lead_every_fibre_back_to_its_position(string conversion)
    {
        foreach (ulong seed in Lots.Seeds)
        {
            IReadOnlyList<IReadOnlyList<WidePosition>> own = ConversionTests.RandomWiring(Conversion.ByName(conversion), new Lots(seed));
            HashSet<(int, int)> wired = [.. own.SelectMany(r => r).Where(w => w.Port > 0).Select(w => (w.Port, w.Position))];
            AssertIdentity(conversion, v => v.Set("conversion", conversion).Set("wiring", own), (port, position) => wired.Contains((port, position)));
        }
    }

    // Source: trade facts 6.3, the derived rule: opposite positions of a narrow port are reversed partners of one trunk. So a
    // straight harness and a reversed one, joined, are the trunk that the conversion is for.
    [Theory]
    [MemberData(nameof(Names))]
    public void A_straight_harness_and_a_reversed_one_are_the_trunk_that_the_conversion_is_for(string conversion)
    {
        Conversion model = Conversion.ByName(conversion);
        TracedPlant traced = Harnesses(model, v => v.Set("conversion", conversion), v => v.Set("conversion", conversion).Set("type", "reversed")).Write().Trace();
        for (int wide = 1; wide <= model.Wide.Count; wide++)
        {
            foreach ((int near, int far) in TrunkMap(TrunkOf(conversion), model.Wide[wide - 1]).Where(j => !ConversionTests.Spare(conversion).Contains((wide, j.Key))))
                Assert.Equal($"HR/{ConversionTests.Wide("array", wide, model.Wide.Count)}:{far}", traced.Meets($"HL/{ConversionTests.Wide("array", wide, model.Wide.Count)}:{near}"));
        }
    }

    private static void AssertIdentity(string conversion, Action<AttributeValues> set, Func<int, int, bool> isWired)
    {
        Conversion model = Conversion.ByName(conversion);
        TracedPlant traced = Harnesses(model, set, set).Write().Trace();
        for (int wide = 1; wide <= model.Wide.Count; wide++)
        {
            string port = ConversionTests.Wide("array", wide, model.Wide.Count);
            for (int position = 1; position <= model.Wide[wide - 1]; position++)
                Assert.Equal($"{(isWired(wide, position) ? "HR" : "HL")}/{port}:{position}", traced.Meets($"HL/{port}:{position}"));
        }
    }

    /// <summary>Two conversion harnesses, leg to leg through a panel that joins position i to i.</summary>
    private static Runs Harnesses(Conversion conversion, Action<AttributeValues> left, Action<AttributeValues> right)
    {
        Runs runs = new Runs()
            .Part("HL", "conversion harness", v => left(v.Set("pins", "far")))
            .Part("HR", "conversion harness", right)
            .Part("P", "array panel", v => v.Set("ports", conversion.Narrow.Count).Set("keys", "opposed"));
        for (int leg = 1; leg <= conversion.Narrow.Count; leg++)
            runs.Run($"HL/leg{leg}", $"@P/{leg}", $"HR/leg{leg}");
        return runs;
    }

    /// <summary>
    /// Modules ML and MR, their rears joined by trunks in series through panels. A cassette's rear has pins and so have the
    /// far ends inside the series, so that every mating has pins on one side.
    /// </summary>
    private static Runs Twins(string conversion, IReadOnlyList<string> trunks, string keys, string panelKeys)
    {
        Conversion model = Conversion.ByName(conversion);
        Runs runs = new Runs();
        foreach (string module in (string[])["ML", "MR"])
            runs.Part(module, "conversion module", v => v.Set("conversion", conversion).Set("keys", keys).Set("front-keys", keys));
        for (int wide = 1; wide <= model.Wide.Count; wide++)
        {
            int fibres = model.Wide[wide - 1];
            string rear = ConversionTests.Wide("rear", wide, model.Wide.Count);
            var stops = new List<string> { $"ML/{rear}" };
            for (int i = 1; i <= trunks.Count; i++)
            {
                bool last = i == trunks.Count;
                string type = trunks[i - 1];
                runs.Part($"T{wide}-{i}", "trunk", v => v.Set("base", fibres).Set("type", type).Set("pins", last ? "none" : "far"));
                stops.Add($"T{wide}-{i}/near");
                runs.Run([.. stops]);
                stops = [$"T{wide}-{i}/far"];
                if (last)
                    continue;
                runs.Part($"P{wide}-{i}", "array panel", v => v.Set("base", fibres).Set("keys", panelKeys).Set("ports", 1));
                stops.Add($"@P{wide}-{i}/1");
            }

            stops.Add($"MR/{rear}");
            runs.Run([.. stops]);
        }

        return runs;
    }

    /// <summary>True where every used position p of every narrow port comes out at 13 - p of the same port.</summary>
    private static bool IsTypeBThroughout(TracedPlant traced, string conversion)
    {
        Conversion model = Conversion.ByName(conversion);
        bool all = true;
        for (int port = 1; port <= model.Narrow.Count; port++)
        {
            IReadOnlyList<(int Near, int Far)> typed = PartTables.Cable("Type-B", model.Narrow[port - 1]);
            all &= typed.All(j => traced.Meets($"ML/{port}:{j.Near}") == $"MR/{port}:{j.Far}");
        }

        return all;
    }

    /// <summary>The typed map of a trunk; for two rows of sixteen the positions are moved in space (trade facts 5).</summary>
    private static Dictionary<int, int> TrunkMap(string trunk, int fibres) => (trunk, fibres) switch
    {
        ("Type-B", 12) => PartTables.CableTypeB.ToDictionary(j => j.Near, j => j.Far),
        ("Type-B", 16) => PartTables.SixteenFibreTypeB.ToDictionary(j => j.Near, j => j.Far),
        (_, 24) => PartTables.TwoRowCable(trunk).ToDictionary(j => j.Near, j => j.Far),
        ("reversed-in-row", 32) => PartTables.ThirtyTwoAligned.ToDictionary(j => j.From, j => j.To),
        ("fully-reversed", 32) => Enumerable.Range(1, 32).ToDictionary(p => p, p => 33 - p),
        _ => throw new ArgumentOutOfRangeException(nameof(trunk), trunk, "no map for this trunk"),
    };
}
