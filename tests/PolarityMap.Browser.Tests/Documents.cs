namespace PolarityMap.Browser.Tests;

/// <summary>Plants written for these tests.</summary>
internal static class Documents
{
    public const string Campus = """
        plant: Campus of 3456 strands
        parts:
          SW-L[1..72]: { kind: duplex interface, ports: 24 }
          SW-R[1..72]: { kind: duplex interface, ports: 24 }
          K-L[1..288]: { kind: straight cassette, base: 12 }
          K-R[1..288]: { kind: straight cassette, base: 12 }
          T[1..36]: { kind: Type-A trunk, base: 12, legs: 8, length: 60 m }
        runs:
          - SW-L[1..72]/1..24, A-to-B cord 2 m, K-L[1..288]/1..6
          - K-L[1..288]/rear, T[1..36]/1..8, K-R[1..288]/rear
          - K-R[1..288]/1..6, A-to-A cord 2 m, SW-R[1..72]/1..24
        links:
          - SW-L[1..72]/1..24 to SW-R[1..72]/1..24
        """;

    public const string BothWays = """
        plant: One fibre both ways
        parts:
          HEAD: { kind: single-fibre interface, ports: 3, application: 1000BASE-BX10-D, room: Head end }
          KIOSK: { kind: single-fibre interface, ports: 2, application: 1000BASE-BX10-U, room: Kiosk }
        runs:
          - HEAD/1..2, simplex cord 5 m, KIOSK/1..2
        links:
          - HEAD/1..2 to KIOSK/1..2
        """;

    public const string Unfriendly = """
        plant: "</script><script>document.title='taken'</script> & \"friends\""
        parts:
          ONE: { kind: duplex interface, ports: 2, room: "=<img src=x onerror=document.title=1>" }
          TWO: { kind: duplex interface, ports: 2, room: "]]></svg></script><b>'\"&amp;" }
        runs:
          - ONE/1..2, A-to-B cord 2 m, TWO/1..2
        """;
}
