using CsCheck;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Tests.Planning;

/// <summary>Random briefs: small plants with everything that a brief can ask for, many that can be met and many that cannot.</summary>
internal static class RandomBriefs
{
    private static readonly string[] s_multimode = ["10GBASE-SR", "25GBASE-SR", "1000BASE-SX", "100GBASE-SR1", "40GBASE-SR4", "100GBASE-SR4", "400GBASE-SR4", "400GBASE-SR8", "100GBASE-SR10"];

    private static readonly string[] s_singleMode = ["10GBASE-LR", "1000BASE-LX10", "100GBASE-DR", "400GBASE-DR4", "100GBASE-LR4", "800GBASE-DR8", "1000BASE-BX10-U"];

    public static Gen<Brief> Any { get; } = Gen.Int[0, 1_000_000].Array[80].Select(static lots => Make(new Draw(lots)));

    /// <summary>The same brief for the same number, wherever and whenever it is asked for.</summary>
    public static Brief Numbered(int number)
    {
        // A multiplicative sequence modulo a prime, after Lehmer.
        var lots = new int[80];
        long lot = (number * 7_919L) + 1;
        for (int i = 0; i < lots.Length; i++)
            lots[i] = (int)((lot = lot * 48_271 % 2_147_483_647) % 1_000_001);
        return Make(new Draw(lots));
    }

    private static Brief Make(Draw draw)
    {
        FibreClass fibre = FibreClass.Find(draw.Of("OM3", "OM4", "OM4", "OM5", "OS2", "OS2", "OS1a", "OM1"))!;
        int networks = draw.From(1, 3), rooms = draw.From(1, 3), groups = draw.From(1, 4);
        bool keys = draw.From(0, 3) > 0;
        Brief brief = new()
        {
            Title = new PlantTitle("Random"),
            Fibre = fibre,
            Networks = [.. Enumerable.Range(0, networks).Select(n => Network(draw, n, fibre, keys))],
            Rooms = Rooms(draw, rooms),
            Outlets = [],
            Method = draw.From(0, 4) == 0 ? null : PlanMethod.All[draw.From(0, 4)],
            Base = draw.From(0, 4) == 0 ? null : PlanCandidate.Bases[draw.From(0, 3)],
            Separation = draw.From(0, 1) == 0 ? SeparationPolicy.Own : SeparationPolicy.Gathered,
            Spare = new Percentage(draw.Number(0, 0, 10, 25, 50, 100)),
            Slack = new Slack(new Percentage(draw.Number(0, 5, 10)), Metres(draw.Number(0, 0, 3))),
            StockLengths = draw.From(0, 2) == 0 ? [Metres(10), Metres(25), Metres(50), Metres(100), Metres(150)] : [],
            TrunkLegs = draw.From(0, 3) switch { 0 or 1 => [1, 2, 4, 8, 12], 2 => [1, 2, 3, 6], _ => [1] },
            OneCassette = draw.From(0, 3) == 0,
            Angled = draw.From(0, 4) switch { 0 => true, 1 => false, _ => null },
            ArrayLoss = draw.From(0, 3) == 0 ? null : new Decibel(0.25m),
            DuplexLoss = draw.From(0, 3) == 0 ? null : new Decibel(0.15m),
            Margin = draw.From(0, 5) == 0 ? new Decibel(0.3m) : null,
            CassettesPerPanel = draw.From(2, 6),
            AdaptersPerPanel = draw.From(2, 6),
            PortsPerSwitch = draw.From(4, 24),
        };
        return brief with { Outlets = [.. Enumerable.Range(0, groups).Select(g => Outlets(draw, brief, g))] };
    }

    private static BriefNetwork Network(Draw draw, int n, FibreClass fibre, bool keys)
    {
        string[] names = fibre.IsMultimode ? s_multimode : s_singleMode;
        string now = draw.From(0, 30) == 0 ? draw.Of(s_multimode) : draw.Of([.. names.Take(4), .. names]);
        string? later = draw.From(0, 3) == 0 ? draw.Of(names) : null;
        var network = new Network($"net {n + 1}", draw.Of("red", "blue", "green") + n, new SourcePlace("brief", 0, 0)) { Key = keys ? $"K{n + 1}" : null };
        return new BriefNetwork(network, $"N{n + 1}", Application.Find(now)!)
        {
            Later = later is null || later == now ? null : Application.Find(later),
            Switches = draw.From(0, 6) == 0 ? draw.From(1, 2) : null,
        };
    }

    private static List<BriefRoom> Rooms(Draw draw, int count)
    {
        var place = new SourcePlace("brief", 0, 0);
        int main = draw.From(0, 4) == 0 ? 2 : 1;
        List<BriefRoom> rooms = [.. Enumerable.Range(0, main).Select(m => new BriefRoom($"Main {m + 1}", $"M{m + 1}", place) { From = m, Rack = m == 0 ? "R1" : null })];
        for (int r = 0; r < count; r++)
            rooms.Add(new BriefRoom($"Room {r + 1}", $"Z{r + 1}", place) { Distance = Metres(draw.Number(5, 20, 40, 62, 90, 140, 320)), From = draw.From(0, main - 1) });
        return rooms;
    }

    private static BriefOutlets Outlets(Draw draw, Brief brief, int group)
    {
        int[] links = [.. brief.Networks.Select(n => draw.From(0, n.Application.IsParallel ? 1 : 3))];
        if (links.Sum() == 0)
            links[draw.From(0, links.Length - 1)] = 1;
        PlannedName name = draw.From(0, 4) == 0 ? PlannedName.One($"BOX{(char)('a' + group)}") : new PlannedName($"D{(char)('a' + group)}-", draw.From(1, 9), draw.From(1, 6), draw.Of("", "", "-x"));
        int room = draw.From(0, brief.Rooms.Count - 1);

        // An outlet in a room with switches has a way of its own, or its cable would have no length.
        bool isThere = draw.From(0, 1) == 0 && brief.Rooms[room].Distance is not null;
        return new BriefOutlets(name, room, links, new SourcePlace("brief", 0, 0))
        {
            Distance = isThere ? null : Metres(draw.Number(3, 12, 25, 60)),
        };
    }

    private static Length Metres(int metres) => Length.FromMillimetres(metres * 1_000L);

    private sealed class Draw(int[] lots)
    {
        private int _next;

        public int From(int least, int most) => least + (lots[_next++ % lots.Length] % (most - least + 1));

        public T Of<T>(params T[] words) => words[From(0, words.Length - 1)];

        public int Number(params int[] numbers) => Of(numbers);
    }
}
