using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Groups strands that belong on one sheet: those that meet in a connector, or in two connectors that a part joins inside, such
/// as all ports of a cassette, or both ends of a trunk's leg. Ports of a switch and legs of a trunk stand for themselves.
/// </summary>
internal static class Bundles
{
    /// <summary>The groups in the order of their first strands.</summary>
    public static List<List<Piece>> Of(StrandHops hops, IReadOnlyList<Piece> pieces)
    {
        TracedPlant traced = hops.Traced;
        var groups = new Groups(pieces.Count);

        // For each port, or the first of those that a part joins inside, the first piece that comes by.
        var first = new int[hops.Ports.Count];
        Array.Fill(first, -1);
        var joinedPorts = new Dictionary<Shape, int[]>(ReferenceEqualityComparer.Instance);
        var joinedOfPart = new int[]?[traced.Plant.Parts.Count];
        for (int i = 0; i < pieces.Count; i++)
        {
            foreach (Hop hop in hops.Of(pieces[i].Strand).AsSpan(pieces[i].First, pieces[i].Count))
            {
                Join(hop.In, i);
                Join(hop.Out, i);
            }
        }

        // A mating that cannot be made joins no strand, and its parts stand side by side all the same.
        foreach (Mating mating in hops.Refused.All)
        {
            int a = first[Place(mating.A)], b = first[Place(mating.B)];
            if (a >= 0 && b >= 0)
                groups.Join(a, b);
        }

        var bundles = new List<List<Piece>>();
        var bundleOf = new int[pieces.Count];
        Array.Fill(bundleOf, -1);
        for (int i = 0; i < pieces.Count; i++)
        {
            int root = groups.Find(i);
            if (bundleOf[root] < 0)
            {
                bundleOf[root] = bundles.Count;
                bundles.Add([]);
            }

            bundles[bundleOf[root]].Add(pieces[i]);
        }

        return bundles;

        void Join(int position, int piece)
        {
            if (position < 0)
                return;
            int place = Place(hops.Ports.RefOf(hops.Ports.NumberAt(position)));
            if (first[place] >= 0)
                groups.Join(first[place], piece);
            else
                first[place] = piece;
        }

        int Place(PortRef port)
        {
            // Parts of one shape are many, and every position of theirs comes by.
            int[] joined = joinedOfPart[port.Part] ??= Joined(traced.Plant.Parts[port.Part].Shape);
            return hops.Ports.NumberOf(new PortRef(port.Part, joined[port.Port]));
        }

        int[] Joined(Shape shape)
        {
            if (!joinedPorts.TryGetValue(shape, out int[]? joined))
                joinedPorts[shape] = joined = JoinedPorts(shape);
            return joined;
        }
    }

    /// <summary>The same strands by the port they start from: what is never parted.</summary>
    public static List<List<Piece>> ByFirstPort(StrandHops hops, IReadOnlyList<Piece> pieces)
    {
        var byPort = new Dictionary<PortRef, List<Piece>>();
        var order = new List<List<Piece>>();
        foreach (Piece piece in pieces)
        {
            Hop hop = hops.Of(piece.Strand)[piece.First];
            PortRef port = hops.Ports.RefOf(hops.Ports.NumberAt(hop.In >= 0 ? hop.In : hop.Out));
            if (!byPort.TryGetValue(port, out List<Piece>? own))
                order.Add(byPort[port] = own = []);
            own.Add(piece);
        }

        return order;
    }

    /// <summary>For each port of a shape the first port that the inside joins it to.</summary>
    private static int[] JoinedPorts(Shape shape)
    {
        var portOf = new int[shape.Inside.Count];
        for (int port = 0; port < shape.Ports.Count; port++)
        {
            for (int p = 0; p < shape.Ports[port].PositionCount; p++)
                portOf[shape.Ports[port].FirstPosition + p] = port;
        }

        var groups = new Groups(shape.Ports.Count);
        for (int p = 0; p < portOf.Length; p++)
        {
            if (shape.Inside[p] >= 0)
                groups.Join(portOf[p], portOf[shape.Inside[p]]);
        }

        var joined = new int[shape.Ports.Count];
        for (int port = 0; port < joined.Length; port++)
            joined[port] = groups.Find(port);
        return joined;
    }

    /// <summary>Disjoint sets: each member knows its group's lowest number.</summary>
    private sealed class Groups
    {
        private readonly int[] _parent;

        public Groups(int count)
        {
            _parent = new int[count];
            for (int i = 0; i < count; i++)
                _parent[i] = i;
        }

        public int Find(int i)
        {
            while (_parent[i] != i)
                i = _parent[i] = _parent[_parent[i]];
            return i;
        }

        public void Join(int a, int b)
        {
            a = Find(a);
            b = Find(b);
            if (a < b)
                _parent[b] = a;
            else
                _parent[a] = b;
        }
    }
}
