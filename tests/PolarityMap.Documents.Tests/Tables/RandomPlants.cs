using System.Text;
using CsCheck;

namespace PolarityMap.Documents.Tests.Tables;

/// <summary>
/// Documents of small plants with everything that a connection schedule has to tell: cords with and without names, trunks of several
/// legs, keys both ways, panels, plugs alone in adapters, simplex cords, splices, harnesses, conversions, plugs that do not fit or
/// find a port taken, and notes that are unfriendly to tables.
/// </summary>
internal static class RandomPlants
{
    private static readonly string[] s_notes =
        ["plain", "=1+1", "+49", "-5", "@home", "with, comma", "with; semicolon", "a \"quoted\" word", "'apostrophe", "'=both", "_x0041_", "Bühne 舞台", " lead and trail ", "two  blanks", "#hash: colon", "{ brace", "[1, 2]", "null", "yes"];

    public static Gen<string> Document { get; } =
        Gen.Select(Gen.Int[0, 9].Array[1, 5], Gen.Int[0, 1_000_000].Array[64]).Select(static (makes, lots) => Write(makes, lots));

    private static string Write(int[] makes, int[] lots)
    {
        var parts = new StringBuilder();
        var runs = new StringBuilder();
        int next = 0;
        int Below(int n) => lots[next++ % lots.Length] % n;
        string Of(params string[] words) => words[Below(words.Length)];
        string Cord() => Of("A-to-B cord 2 m", "A-to-A cord", "A-to-B cord 0.3 m", "noted cord 1.5 m");
        string Key() => Of("opposed", "aligned");
        void Part(string name, string rest) =>
            parts.Append($"  {name}: {{ {rest}, note: \"{s_notes[Below(s_notes.Length)].Replace("\"", "\\\"", StringComparison.Ordinal)}\" }}\n");
        void Run(string run) => runs.Append("  - ").Append(run).Append('\n');
        for (int i = 0; i < makes.Length; i++)
        {
            string n = $"{i}";
            switch (makes[i])
            {
                case 0 or 1:
                    string size = Of("8", "12"), legs = Of("1", "2", "3"), last = Of("2", "3", "4");
                    Part($"S{n}", "kind: duplex interface, ports: 4, network: red net");
                    Part($"R{n}", "kind: duplex interface, ports: 4, room: Stage");
                    Part($"K{n}-[1..2]", $"kind: cassette, wiring: {Of("straight", "U1", "U2", "straight-reversed")}, base: {size}, keys: {Key()}, networks: [red net, blue net]");
                    Part($"T{n}", $"kind: trunk, type: {Of("Type-A", "Type-B", "Type-C")}, base: {size}, legs: {legs}, length: 20 m");
                    Run($"S{n}/1..{last}, {Cord()}, K{n}-1/1..{last}");
                    Run($"K{n}-1/rear, {Key()}, T{n}{(legs == "1" ? "" : "/2")}, {Key()}, K{n}-2/rear");
                    Run($"R{n}/[2,1,4,3], {Cord()}, K{n}-2/1..4");
                    break;
                case 2:
                    Part($"S{n}", "kind: duplex interface, ports: 3");
                    Part($"P{n}", "kind: duplex panel, ports: 4");
                    Run($"S{n}/1, {Cord()}, P{n}/1, {Cord()}, S{n}/2");
                    Run($"S{n}/3, {Cord()}, P{n}/3");
                    break;
                case 3:
                    Part($"Q{n}", "kind: parallel interface, ports: 2");
                    Part($"A{n}", $"kind: array panel, ports: 3, keys: {Key()}");
                    Part($"L{n}", "kind: trunk, type: Type-B, length: 5 m");
                    Run($"Q{n}/1, Type-B cord 3 m, A{n}/1, L{n}, A{n}/2, Type-A cord 2 m, Q{n}/2");
                    Run($"A{n}/3, Type-A cord 1 m");
                    break;
                case 4:
                    Part($"U{n}", "kind: single-fibre interface, application: 1000BASE-BX10-U");
                    Part($"D{n}", "kind: single-fibre interface, application: 1000BASE-BX10-D, ports: 2");
                    Part($"K{n}", "kind: U1 cassette");
                    Run($"U{n}, simplex cord 4 m, K{n}/3:B");
                    Run($"K{n}/3:A, simplex cord 4 m, D{n}/2");
                    break;
                case 5:
                    Part($"F{n}-[1..2]", $"kind: field termination, fibres: 4, wiring: {Of("consecutive", "reverse-pair", "consecutive-turned")}, method: {Of("direct", "pigtail")}");
                    Part($"C{n}-[1..2]", "kind: cable, fibres: 4, length: 90 m");
                    Part($"J{n}", $"kind: splice, fibres: 4{Of("", ", wiring: [[1, 2], [2, 1], [3, 4], [4, 3]]")}");
                    Run($"F{n}-1/bare, C{n}-1, J{n}, C{n}-2, F{n}-2/bare");
                    break;
                case 6:
                    Part($"Q{n}", "kind: parallel interface, application: 40GBASE-SR4, breakout: 4x");
                    Part($"S{n}", "kind: duplex interface, ports: 4, application: 10GBASE-SR");
                    Part($"H{n}", "kind: harness, length: 5 m");
                    Run($"Q{n}/1, H{n}");
                    Run($"H{n}/leg1..4, S{n}/{Of("1..4", "4..1")}");
                    break;
                case 7:
                    Part($"M{n}", $"kind: {Of("2x12 to 3x8 module", "24 to 2x12 module", "16 to 2x8 module")}");
                    Part($"S{n}", "kind: duplex interface, ports: 2");
                    break;
                case 8:
                    // Plugs that do not fit, and a port that is taken already.
                    Part($"S{n}", "kind: duplex interface, ports: 2");
                    Part($"K{n}", "kind: U2 cassette");
                    Part($"W{n}", "kind: duplex cord, type: A-to-B");
                    Run($"S{n}/1, W{n}, K{n}/rear");
                    Run($"S{n}/2, {Cord()}, K{n}/1");
                    Run($"K{n}/2, {Cord()}, S{n}/2");
                    break;
                default:
                    // Nothing but a ring: it has no end at all.
                    Part($"G{n}-[1..2]", "kind: U1 cassette");
                    Part($"E{n}", "kind: trunk, type: Type-A, length: 9 m");
                    Run($"G{n}-1/rear, {Key()}, E{n}, {Key()}, G{n}-2/rear");
                    Run($"G{n}-1/1..6, {Cord()}, G{n}-2/1..6");
                    break;
            }
        }

        return $"""
            plant: "=Drawn by lot, with a \"quote\""
            networks:
              red net: {"{"} colour: red, key: K 1, may-share: none {"}"}
              blue net:
            defaults: {"{"} fibre: {Of("OM3", "OS2")}, pins: {Of("cassettes", "trunks")} {"}"}
            types:
              noted cord: {"{"} kind: A-to-B cord, jacket: "=red, or so", duplex-loss: 0.2 dB {"}"}
            parts:
            {parts}{(runs.Length > 0 ? "runs:\n" : "")}{runs}
            """;
    }
}
