using PolarityMap.Core.Parts;

namespace PolarityMap.Drawing.Tests.Views.EndFace;

/// <summary>Plants whose matings are drawn in the tests.</summary>
internal static class FacePlants
{
    /// <summary>A cassette's rear and the near end of a trunk.</summary>
    public static FaceBench RearAndTrunk(int fibres, string type, Keying keys, string? polish = null) => new FaceBench()
        .Add("CAS", "cassette", v => v.Set("wiring", "straight").Set("base", fibres).SetPolish(polish))
        .Add("TRUNK", "trunk", v => v.Set("type", type).Set("base", fibres).SetPolish(polish))
        .Mate("CAS/rear", "TRUNK/near", keys);

    /// <summary>As <see cref="RearAndTrunk"/>, with the trunk's far end in a second cassette.</summary>
    public static FaceBench TrunkBetweenCassettes(int fibres, string type, Keying keys) => RearAndTrunk(fibres, type, keys)
        .Add("CAS2", "cassette", v => v.Set("wiring", "straight").Set("base", fibres))
        .Mate("TRUNK/far", "CAS2/rear", keys);

    /// <summary>A transceiver, a cord, and the front of a cassette.</summary>
    public static FaceBench Duplex() => new FaceBench()
        .Add("SW", "duplex interface")
        .Add("CORD", "duplex cord", v => v.Set("type", "A-to-B"))
        .Add("CAS", "cassette", v => v.Set("wiring", "straight"))
        .Mate("SW/1", "CORD/near")
        .Mate("CORD/far", "CAS/1");

    /// <summary>A simplex plug in A of a port and another in B.</summary>
    public static FaceBench SimplexInDuplex() => new FaceBench()
        .Add("CAS", "cassette", v => v.Set("wiring", "straight"))
        .Add("S1", "simplex cord")
        .Add("S2", "simplex cord")
        .Mate("S1/near", "CAS/1:A")
        .Mate("CAS/1:B", "S2/near");

    /// <summary>A cable of bare fibres and a splice.</summary>
    public static FaceBench Bare(int fibres) => new FaceBench()
        .Add("CABLE", "cable", v => v.Set("fibres", fibres))
        .Add("JOINT", "splice", v => v.Set("fibres", fibres))
        .Mate("CABLE/far", "JOINT/near");

    /// <summary>A harness of four legs at four transceivers, and its array plug in a cassette.</summary>
    public static FaceBench Harness()
    {
        FaceBench bench = new FaceBench()
            .Add("CAS", "cassette", v => v.Set("wiring", "straight").Set("base", 8))
            .Add("H", "harness")
            .Add("SW", "duplex interface", v => v.Set("ports", 4))
            .Mate("CAS/rear", "H/array");
        for (int leg = 1; leg <= 4; leg++)
            bench.Mate($"H/leg{leg}", $"SW/{leg}");
        return bench;
    }

    /// <summary>A ferrule of 16 against one of 12.</summary>
    public static FaceBench Refused() => new FaceBench()
        .Add("CAS", "cassette", v => v.Set("wiring", "straight").Set("base", 16))
        .Add("TRUNK", "trunk", v => v.Set("type", "Type-B"))
        .Mate("CAS/rear", "TRUNK/near");

    /// <summary>Names far longer than their room.</summary>
    public static FaceBench LongNames() => new FaceBench()
        .Add("TRANSCEIVER-OF-THE-NORTHERN-EQUIPMENT-ROOM-IN-THE-SECOND-BASEMENT-RACK-14", "duplex interface")
        .Add("A-CORD-WITH-A-NAME-THAT-NO-LABEL-EVER-TOOK-IN-ONE-PIECE", "duplex cord", v => v.Set("type", "A-to-B"))
        .Mate("TRANSCEIVER-OF-THE-NORTHERN-EQUIPMENT-ROOM-IN-THE-SECOND-BASEMENT-RACK-14/1", "A-CORD-WITH-A-NAME-THAT-NO-LABEL-EVER-TOOK-IN-ONE-PIECE/near");

    /// <summary>Every plant by name, for checks that hold on all of them.</summary>
    public static FaceBench Named(string name) => name switch
    {
        "8 of 12 aligned" => TrunkBetweenCassettes(8, "Type-B", Keying.Aligned),
        "12 opposed" => TrunkBetweenCassettes(12, "Type-A", Keying.Opposed),
        "16 aligned" => TrunkBetweenCassettes(16, "Type-B", Keying.Aligned),
        "2x12 opposed" => TrunkBetweenCassettes(24, "fully-reversed", Keying.Opposed),
        "2x16 aligned" => TrunkBetweenCassettes(32, "fully-reversed", Keying.Aligned),
        "angled that gape" => RearAndTrunk(12, "Type-B", Keying.Aligned, "angled"),
        "lanes" => new FaceBench().Add("QS", "parallel interface").Add("C", "array cord", v => v.Set("type", "Type-B")).Mate("QS/1", "C/near"),
        "two directions" => new FaceBench().Add("BX", "single-fibre interface", v => v.Set("application", "1000BASE-BX10-D")).Add("C", "simplex cord").Mate("BX/1", "C/near"),
        "duplex" => Duplex(),
        "simplex in duplex" => SimplexInDuplex(),
        "bare 8" => Bare(8),
        "bare 24" => Bare(24),
        "bare 144" => Bare(144),
        "harness" => Harness(),
        "refused" => Refused(),
        "long names" => LongNames(),
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "no such plant"),
    };

    public static IReadOnlyList<string> Names { get; } =
    [
        "8 of 12 aligned", "12 opposed", "16 aligned", "2x12 opposed", "2x16 aligned", "angled that gape", "lanes", "two directions", "duplex", "simplex in duplex",
        "bare 8", "bare 24", "bare 144", "harness", "refused", "long names",
    ];

    private static void SetPolish(this AttributeValues values, string? polish)
    {
        if (polish is not null)
            values.Set("polish", polish);
    }
}
