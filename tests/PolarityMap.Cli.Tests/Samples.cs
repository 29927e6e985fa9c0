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
