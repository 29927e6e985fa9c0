using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>What is drawn together: a network, a room, a trunk, or all.</summary>
/// <param name="Name">What its files are called.</param>
/// <param name="Words">What it shows, such as <c>Network lighting</c>; empty for the whole choice.</param>
/// <param name="Pieces">Its strands, or the stretches of them that lie in it, in the order of their numbers.</param>
internal sealed record Section(string Name, string Words, IReadOnlyList<Piece> Pieces);

/// <summary>Divides what was chosen into sections.</summary>
internal static class Sections
{
    public static List<Section> Of(StrandHops hops, ViewInput input) => input.Division switch
    {
        SheetDivision.Network when input.Traced.Plant.Networks.Count > 1 && input.Selection.Choice.Network < 0 => ByNetwork(hops, input),
        SheetDivision.Trunk => ByTrunk(hops, input),
        SheetDivision.Room => ByRoom(hops, input),
        _ => [new Section(input.Selection.Choice is { Network: >= 0 and var n } ? input.Traced.Plant.Networks[n].Name : "strands", input.Selection.Words, [.. input.Selection.Strands.Select(hops.Whole)])],
    };

    /// <summary>A strand that touches several networks is drawn with each; one that touches none comes last.</summary>
    private static List<Section> ByNetwork(StrandHops hops, ViewInput input)
    {
        IReadOnlyList<Network> networks = input.Traced.Plant.Networks;
        var pieces = new List<Piece>[networks.Count + 1];
        for (int n = 0; n < pieces.Length; n++)
            pieces[n] = [];
        var touched = new HashSet<int>();
        foreach (int strand in input.Selection.Strands)
        {
            touched.Clear();
            foreach (Hop hop in hops.Of(strand))
            {
                int network = input.Traced.Plant.Parts[hop.Part].Network;
                if (network >= 0 && touched.Add(network))
                    pieces[network].Add(hops.Whole(strand));
            }

            if (touched.Count == 0)
                pieces[^1].Add(hops.Whole(strand));
        }

        var sections = new List<Section>();
        for (int n = 0; n < pieces.Length; n++)
        {
            if (pieces[n].Count > 0)
                sections.Add(n < networks.Count ? new Section(networks[n].Name, $"Network {networks[n].Name}", pieces[n]) : new Section("no-network", "No network", pieces[n]));
        }

        return sections;
    }

    /// <summary>A strand is drawn with the longest cable of more than two fibres that it passes.</summary>
    private static List<Section> ByTrunk(StrandHops hops, ViewInput input)
    {
        var order = new List<int>();
        var pieces = new Dictionary<int, List<Piece>>();
        foreach (int strand in input.Selection.Strands)
        {
            int trunk = StrandColours.CableOf(input.Traced, hops.Of(strand))?.Part ?? -1;
            if (!pieces.TryGetValue(trunk, out List<Piece>? own))
            {
                pieces[trunk] = own = [];
                order.Add(trunk);
            }

            own.Add(hops.Whole(strand));
        }

        // What passes no such cable comes last.
        return
        [
            .. order.Where(t => t >= 0).Select(t => new Section(input.Traced.Plant.Parts[t].Name, $"Trunk {input.Traced.Plant.Parts[t].Name}", pieces[t])),
            .. order.Where(t => t < 0).Select(t => new Section("no-trunk", "No trunk", pieces[t])),
        ];
    }

    /// <summary>
    /// A strand is cut where it leaves a room. What has no room, such as a cable, goes with the part before it. Where a strand comes
    /// back to a room, that stretch has a section of its own.
    /// </summary>
    private static List<Section> ByRoom(StrandHops hops, ViewInput input)
    {
        IReadOnlyList<Part> parts = input.Traced.Plant.Parts;
        var order = new List<(string Room, int Visit)>();
        var pieces = new Dictionary<(string Room, int Visit), List<Piece>>();
        var visits = new Dictionary<string, int>();
        foreach (int strand in input.Selection.Strands)
        {
            IReadOnlyList<Hop> way = hops.Of(strand);
            visits.Clear();
            string room = "";
            for (int i = 0; i < way.Count && room.Length == 0; i++)
                room = parts[way[i].Part].Room ?? "";
            int from = 0;
            for (int i = 0; i <= way.Count; i++)
            {
                string here = i == way.Count ? "" : parts[way[i].Part].Room ?? room;
                if (i < way.Count && here == room)
                    continue;
                int visit = visits[room] = visits.GetValueOrDefault(room) + 1;
                if (!pieces.TryGetValue((room, visit), out List<Piece>? own))
                {
                    pieces[(room, visit)] = own = [];
                    order.Add((room, visit));
                }

                own.Add(new Piece(strand, from, i - from));
                from = i;
                room = here;
            }
        }

        return [.. order.Select(key => new Section(
            (key.Room.Length == 0 ? "no-room" : key.Room) + (key.Visit > 1 ? $"-{key.Visit}" : ""),
            (key.Room.Length == 0 ? "No room" : key.Room) + (key.Visit > 1 ? $", visit {key.Visit}" : ""),
            pieces[key]))];
    }
}
