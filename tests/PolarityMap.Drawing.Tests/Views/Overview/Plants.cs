using System.Runtime.CompilerServices;
using System.Text;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents;
using PolarityMap.Documents.Text;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Overview;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Overview;

/// <summary>Documents to draw, from the gallery and written here.</summary>
internal static class Plants
{
    private static readonly string s_root = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(ThisFile())!, "..", "..", "..", ".."));

    /// <summary>Every document of the gallery, as paths from the repository's root.</summary>
    public static IReadOnlyList<string> Gallery { get; } =
    [
        .. Directory.EnumerateFiles(Path.Combine(s_root, "gallery"), "*.yaml", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(s_root, f).Replace('\\', '/')).Order(StringComparer.Ordinal),
    ];

    /// <summary>Switches, cassettes and trunks for 3456 strands, of one network.</summary>
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
        """;

    /// <summary>Fan-outs, lines that change places, lines past columns, and a cord that closes a ring.</summary>
    public const string Ring = """
        plant: Fan-outs, a swap and a ring
        parts:
          CORE-A: { kind: duplex interface, ports: 8, room: Rack 1 }
          CORE-B: { kind: duplex interface, ports: 8, room: Rack 2 }
          EDGE-A: { kind: duplex interface, ports: 8, room: Rack 3 }
          EDGE-B: { kind: duplex interface, ports: 8, room: Rack 4 }
          KA: { kind: straight cassette, base: 12, room: Rack 1 }
          KB: { kind: straight cassette, base: 12, room: Rack 2 }
          KC: { kind: straight cassette, base: 12, room: Rack 3 }
          KD: { kind: straight cassette, base: 12, room: Rack 4 }
          TA: { kind: Type-A trunk, length: 20 m }
          TB: { kind: Type-A trunk, length: 30 m }
        runs:
          - CORE-A/1..4, A-to-B cord 2 m, KA/1..4
          - CORE-B/1..4, A-to-B cord 2 m, KB/1..4
          - CORE-A/5..6, A-to-B cord 3 m, KB/5..6
          - CORE-B/5..6, A-to-B cord 3 m, KA/5..6
          - KA/rear, TA, KD/rear
          - KB/rear, TB, KC/rear
          - KC/1..3, A-to-A cord 2 m, EDGE-B/1..3
          - KC/4..6, A-to-A cord 2 m, EDGE-A/1..3
          - KD/1..3, A-to-A cord 2 m, EDGE-A/4..6
          - KD/4..6, A-to-A cord 2 m, EDGE-B/4..6
          - CORE-A/7, A-to-B cord 40 m, EDGE-B/7
          - EDGE-B/8, A-to-B cord 5 m, CORE-B/7
        """;

    /// <summary>Harnesses, a panel, two cables mated with each other, cables with an open end, a trunk with legs left over.</summary>
    public const string Mixed = """
        plant: Breakouts, a panel and an open end
        types:
          cord of eight: { kind: Type-B cord, base: 8 }
        parts:
          QS: { kind: parallel interface, ports: 4, application: 40GBASE-SR4 }
          SRV[1..8]: { kind: duplex interface }
          H[1..2]: { kind: harness, length: 5 m }
          QR: { kind: parallel interface, application: 40GBASE-SR4 }
          P: { kind: array panel, ports: 1, keys: aligned }
          T: { kind: Type-B trunk, base: 8, legs: 4, spare: 3..4, length: 30 m }
          OPEN: { kind: cord of eight, length: 7 m }
        runs:
          - QS/1..2, H[1..2]/array
          - H1/leg[1..4], SRV[1..4]/1
          - H2/leg[1..4], SRV[5..8]/1
          - QS/3, cord of eight 2 m, P/1, T/1, aligned, cord of eight 2 m, QR/1
          - QS/4, OPEN
        """;

    /// <summary>So many networks, each with a switch, cassettes, a trunk and devices, side by side.</summary>
    public static string SideBySide(int networks)
    {
        string[] colours = ["red", "blue", "green", "yellow", "white", "grey", "black", "orange", "violet", "pink", "turquoise", "brown"];
        var text = new StringBuilder("plant: Networks side by side\nnetworks:\n");
        for (int n = 1; n <= networks; n++)
            text.Append($"  net{n}: {{ colour: {colours[(n - 1) % colours.Length]} }}\n");
        text.Append("parts:\n");
        for (int n = 1; n <= networks; n++)
        {
            text.Append($$"""
                  N{{n}}-SW: { kind: duplex interface, ports: 12, network: net{{n}}, room: Equipment room }
                  N{{n}}-K[1..2]: { kind: straight cassette, base: 12, network: net{{n}}, room: Equipment room }
                  N{{n}}-T: { kind: Type-A trunk, legs: 4, spare: 3..4, length: 40 m, network: net{{n}} }
                  N{{n}}-Z[1..2]: { kind: straight cassette, base: 12, network: net{{n}}, room: Hall }
                  N{{n}}-D[1..12]: { kind: duplex interface, network: net{{n}}, room: Hall }

                """);
        }

        text.Append("runs:\n");
        for (int n = 1; n <= networks; n++)
        {
            text.Append($$"""
                  - N{{n}}-SW/1..12, A-to-B cord 2 m, N{{n}}-K[1..2]/1..6
                  - N{{n}}-K[1..2]/rear, N{{n}}-T/1..2, N{{n}}-Z[1..2]/rear
                  - N{{n}}-Z[1..2]/1..6, A-to-A cord 5 m, N{{n}}-D[1..12]/1

                """);
        }

        return text.ToString();
    }

    /// <summary>A chain of cassettes from room to room; each room has two, joined by cords.</summary>
    public static string Chain(int rooms)
    {
        var text = new StringBuilder("plant: From room to room\nparts:\n  SW-L: { kind: duplex interface, ports: 6 }\n  SW-R: { kind: duplex interface, ports: 6 }\n");
        for (int r = 1; r <= rooms; r++)
            text.Append($"  IN{r}: {{ kind: straight cassette, base: 12, room: Room {r} }}\n  OUT{r}: {{ kind: straight cassette, base: 12, room: Room {r} }}\n  T{r}: {{ kind: Type-A trunk, length: {r}0 m }}\n");
        text.Append("runs:\n  - SW-L/1..6, A-to-B cord 2 m, OUT1/1..6\n");
        for (int r = 1; r < rooms; r++)
            text.Append($"  - OUT{r}/rear, T{r}, IN{r + 1}/rear\n  - IN{r + 1}/1..6, A-to-A cord 1 m, {(r + 1 < rooms ? $"OUT{r + 1}" : "SW-R")}/1..6\n");
        return text.ToString();
    }

    /// <summary>Interfaces of different rooms, and for each pair of numbers a cord from the one to the other.</summary>
    public static string Web(int interfaces, IReadOnlyList<(int From, int To)> cords)
    {
        var text = new StringBuilder("plant: A web\nparts:\n");
        for (int i = 0; i < interfaces; i++)
            text.Append($"  S{(char)('A' + i)}: {{ kind: duplex interface, ports: {Math.Max(1, cords.Count(c => c.From == i) + cords.Count(c => c.To == i))} }}\n");
        text.Append("runs:\n");
        var used = new int[interfaces];
        foreach ((int from, int to) in cords)
            text.Append($"  - S{(char)('A' + from)}/{++used[from]}, A-to-B cord {1 + ((from + to) % 3)} m, S{(char)('A' + to)}/{++used[to]}\n");
        return text.ToString();
    }

    /// <summary>What is drawn of a document of the gallery.</summary>
    public static ViewInput OfFile(string path, Choice? choice = null) => Of(Path.Combine(s_root, path), new Files(), choice);

    /// <summary>What is drawn of a document.</summary>
    public static ViewInput OfText(string text, Choice? choice = null) => Of("plant.yaml", new Memory(text), choice);

    /// <summary>The layout of an input that one sheet takes.</summary>
    public static OverviewFit Fit(ViewInput input) => new OverviewPlan(input).Fit() ?? new OverviewPlan(input).Grown();

    /// <summary>The only sheet of an input, drawn.</summary>
    public static DrawingSheet Sheet(ViewInput input) => Assert.Single(new OverviewView().Plan(input)).Draw(new SheetPlace(1, 1));

    private static ViewInput Of(string path, IDocumentSource source, Choice? choice)
    {
        var problems = new ProblemList();
        Plant? plant = PlantDocument.Read(path, source, problems);
        Assert.Equal("", problems.ToString());
        TracedPlant traced = TracedPlant.Of(plant!);
        return new ViewInput(traced, Selection.Of(traced, Checker.Check(traced), choice ?? new Choice()));
    }

    private static string ThisFile([CallerFilePath] string path = "") => path;

    private sealed class Files : IDocumentSource
    {
        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            bytes = File.ReadAllBytes(path);
            why = "";
            return true;
        }
    }

    private sealed class Memory(string text) : IDocumentSource
    {
        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            bytes = Encoding.UTF8.GetBytes(text);
            why = "";
            return true;
        }
    }
}
