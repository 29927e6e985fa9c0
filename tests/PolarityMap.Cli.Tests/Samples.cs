using PolarityMap.Core.Checks;

namespace PolarityMap.Cli.Tests;

/// <summary>Documents to call the program with.</summary>
internal static class Samples
{
    /// <summary>Two switches over one straight trunk: method A, with an A-to-A cord at the right. All of it is right.</summary>
    public const string Clean = """
        plant: Three links over one trunk
        networks:
          stage: { colour: red }
          house: { colour: blue }
        parts:
          SW-L: { kind: duplex interface, ports: 3, network: stage }
          SW-R: { kind: duplex interface, ports: 3, network: stage }
          DESK: { kind: duplex interface, network: house }
          LAMP: { kind: duplex interface, network: house }
          K-L: { kind: straight cassette, keys: opposed }
          K-R: { kind: straight cassette, keys: opposed }
          TRUNK: { kind: Type-A trunk, length: 30 m }
        runs:
          - SW-L/1..3, A-to-B cord 2 m, K-L/1..3
          - K-L/rear, TRUNK, K-R/rear
          - K-R/1..3, A-to-A cord 2 m, SW-R/1..3
          - DESK/1, A-to-B cord 5 m, LAMP/1
        links:
          - SW-L/1..3 to SW-R/1..3
          - DESK/1 to LAMP/1

        """;

    /// <summary>Three mistakes in the parts, on lines 3, 4 and 5: a kind, an attribute and a unit.</summary>
    public const string Broken = """
        plant: With mistakes
        parts:
          SW-L: { kind: duplx interface }
          SW-R: { kind: duplex interface, prts: 6 }
          TRUNK: { kind: Type-A trunk, length: 30 }
        runs:
          - SW-L/1, A-to-B cord 2 m, SW-R/1

        """;

    /// <summary>Three mistakes in the runs and links, on lines 6, 7 and 9: a part, a port and ranges of different length.</summary>
    public const string Misnamed = """
        plant: With mistakes
        parts:
          SW-L: { kind: duplex interface, ports: 6 }
          SW-R: { kind: duplex interface, ports: 6 }
        runs:
          - SWL/1, A-to-B cord 2 m, SW-R/1
          - SW-L/7, A-to-B cord 2 m, SW-R/2
        links:
          - SW-L/1..3 to SW-R/1..2

        """;

    /// <summary>
    /// Links over two trunks: the first fits by what its parts state, the second has a cord without length and loss and is over
    /// its limit, then one both ways on a fibre, one that is not lit; two ports that say nothing of their purpose have no link.
    /// </summary>
    public const string Losses = """
        plant: Eight matings in one link
        defaults: { fibre: OM4, margin: 0.6 dB }
        types:
          good cord: { kind: A-to-B cord, duplex-loss: 0.15 dB }
          good cassette: { kind: U1 cassette, array-loss: 0.35 dB, duplex-loss: 0.15 dB }
          good trunk: { kind: Type-B trunk, array-loss: 0.35 dB }
        parts:
          SW-L: { kind: duplex interface, ports: 2, application: 10GBASE-SR }
          SW-R: { kind: duplex interface, ports: 2, application: 10GBASE-SR }
          BX-U: { kind: single-fibre interface, application: 1000BASE-BX10-U }
          BX-D: { kind: single-fibre interface, application: 1000BASE-BX10-D }
          PLAIN-[1..4]: duplex interface
          LINE: { kind: simplex cord, fibre: OS2, length: 500 m }
          K-[1..4]: good cassette
          T-1: { kind: good trunk, length: 40 m }
          T-2: { kind: good trunk, length: 44 m }
        runs:
          - SW-L/1..2, good cord 2 m, K-1/1..2
          - K-1/rear, T-1, K-2/rear
          - K-2/1..2, good cord 5 m, K-3/1..2
          - K-3/rear, T-2, K-4/rear
          - K-4/1, good cord 2 m, SW-R/1
          - K-4/2, A-to-B cord, SW-R/2
          - BX-U/1, LINE, BX-D/1
          - PLAIN-1/1, A-to-B cord 500 m, PLAIN-2/1
          - PLAIN-3/1, A-to-A cord 2 m, PLAIN-4/1
        links:
          - SW-L/1..2 to SW-R/1..2
          - BX-U/1 to BX-D/1
          - PLAIN-3/1 to PLAIN-4/1

        """;

    /// <summary>
    /// Three desks on a cable each that lighting and sound share, which lighting may do in a sheath only. Ports and cords are
    /// keyed, but those of office are not.
    /// </summary>
    public const string Desks = """
        plant: Three desks on shared cables
        networks:
          lighting: { colour: red, key: K1, may-share: [sheath] }
          sound: { colour: blue, key: K2, may-share: [sheath, cassette, array, panel] }
          office: { colour: grey }
        types:
          red cord: { kind: A-to-B cord, network: lighting }
          blue cord: { kind: A-to-B cord, network: sound }
          four of two: { kind: U1 cassette, base: 8, networks: [lighting, sound, office, office] }
        parts:
          LX: { kind: duplex interface, ports: 3, network: lighting }
          SD: { kind: duplex interface, ports: 3, network: sound }
          ZB[1..3]: four of two
          DC[1..3]: { kind: Type-B trunk, base: 8, length: 25 m }
          DESK[1..3]: { kind: outlet, wiring: U1, base: 8, networks: [lighting, sound, office, office] }
          LX-D[1..3]: { kind: duplex interface, network: lighting }
          SD-D[1..3]: { kind: duplex interface, network: sound }
          LX-C[1..3]: { kind: red cord, keyed: far }
          SD-C[1..3]: { kind: blue cord, keyed: far }
          LX-E[1..3]: { kind: red cord, keyed: near }
          SD-E[1..3]: { kind: blue cord, keyed: near }
        runs:
          - LX/1..3, LX-C[1..3], ZB[1..3]/1
          - SD/1..3, SD-C[1..3], ZB[1..3]/2
          - ZB[1..3]/rear, DC[1..3], DESK[1..3]/rear
          - DESK[1..3]/1, LX-E[1..3], LX-D[1..3]/1
          - DESK[1..3]/2, SD-E[1..3], SD-D[1..3]/1
        links:
          - LX/1..3 to LX-D[1..3]/1
          - SD/1..3 to SD-D[1..3]/1

        """;

    public const string EmptyOfLight = """
        plant: Spare fibres only
        parts:
          K-L: straight cassette
          K-R: straight cassette
          TRUNK: { kind: Type-A trunk, length: 30 m }
        runs:
          - K-L/rear, TRUNK, K-R/rear

        """;

    /// <summary>Two A-to-A cords straight between two switches, both reversible in the field.</summary>
    public const string Reversible = """
        plant: Two reversible cords
        parts:
          SW-L: { kind: duplex interface, ports: 2 }
          SW-R: { kind: duplex interface, ports: 2 }
          C[1..2]: { kind: A-to-A cord, reversible: yes }
        runs:
          - SW-L/1..2, C[1..2], SW-R/1..2
        links:
          - SW-L/1..2 to SW-R/1..2

        """;

    public static string Fault(string code) => RuleCatalogue.Find(code)!.Example;
}
