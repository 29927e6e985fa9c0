namespace PolarityMap.Benchmarks.Locating;

/// <summary>
/// A plant of any size in which every kind of deviation can occur: trunks with legs between cassettes, cables that are spliced and
/// terminated in the field, parallel links over array cords, reversible cords of one of two networks, and a free port and a spare leg in each. A unit has 31 links.
/// </summary>
internal static class EveryKindDocument
{
    public const int LinksOfAUnit = 31;

    /// <param name="units">Number of units.</param>
    public static string Of(int units) => $$"""
        plant: {{units * LinksOfAUnit}} links of every kind
        networks:
          house: { colour: red }
          stage: { colour: blue }
        types:
          house cord: { kind: A-to-B cord, network: house, reversible: yes }
        parts:
          SW-L[1..{{units}}]: { kind: duplex interface, ports: 25, network: house }
          SW-R[1..{{units}}]: { kind: duplex interface, ports: 25, network: house }
          K-L[1..{{4 * units}}]: { kind: U1 cassette, base: 12 }
          K-R[1..{{4 * units}}]: { kind: U1 cassette, base: 12 }
          T[1..{{units}}]: { kind: Type-B trunk, base: 12, legs: 5, spare: [5], length: 60 m }
          F-L[1..{{units}}]: { kind: duplex interface, ports: 6, network: house }
          F-R[1..{{units}}]: { kind: duplex interface, ports: 6, network: house }
          E-L[1..{{units}}]: { kind: consecutive termination, fibres: 12 }
          E-R[1..{{units}}]: { kind: reverse-pair termination, fibres: 12 }
          C-L[1..{{units}}]: { kind: cable, fibres: 12, length: 50 m }
          C-R[1..{{units}}]: { kind: cable, fibres: 12, length: 50 m }
          S[1..{{units}}]: { kind: splice, fibres: 12 }
          Q-L[1..{{units}}]: { kind: parallel interface, network: stage }
          Q-R[1..{{units}}]: { kind: parallel interface, network: stage }
          P-L[1..{{units}}]: { kind: array panel, ports: 1, keys: aligned }
          P-R[1..{{units}}]: { kind: array panel, ports: 1, keys: aligned }
          B[1..{{units}}]: { kind: Type-B trunk, length: 30 m, pins: both }
        runs:
          - SW-L[1..{{units}}]/1..24, house cord 2 m, K-L[1..{{4 * units}}]/1..6
          - K-L[1..{{4 * units}}]/rear, T[1..{{units}}]/1..4, K-R[1..{{4 * units}}]/rear
          - K-R[1..{{4 * units}}]/1..6, house cord 2 m, SW-R[1..{{units}}]/1..24
          - F-L[1..{{units}}]/1..6, house cord 2 m, E-L[1..{{units}}]/1..6
          - E-L[1..{{units}}]/bare, C-L[1..{{units}}], S[1..{{units}}], C-R[1..{{units}}], E-R[1..{{units}}]/bare
          - E-R[1..{{units}}]/1..6, house cord 2 m, F-R[1..{{units}}]/1..6
          - Q-L[1..{{units}}]/1, Type-B cord 2 m, P-L[1..{{units}}]/1, B[1..{{units}}], P-R[1..{{units}}]/1, Type-B cord 2 m, Q-R[1..{{units}}]/1
        links:
          - SW-L[1..{{units}}]/1..24 to SW-R[1..{{units}}]/1..24
          - F-L[1..{{units}}]/1..6 to F-R[1..{{units}}]/1..6
          - Q-L[1..{{units}}]/1 to Q-R[1..{{units}}]/1

        """;
}
