using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Strands;

/// <summary>A strand's visit to one part.</summary>
/// <param name="Part">Index of the part.</param>
/// <param name="In">The position where the strand enters, or -1 where it begins.</param>
/// <param name="Out">The position where it leaves, or -1 where it ends.</param>
public readonly record struct Hop(int Part, int In, int Out);

/// <summary>
/// A plant with its strands: the one record that rules, views and commands read.
/// </summary>
public sealed class TracedPlant
{
    private readonly int[] _strandOf;
    private readonly int[] _number;
    private Mating?[]? _matingAt;

    private TracedPlant(Plant plant, StrandGraph graph, StrandSet strands)
    {
        Plant = plant;
        Graph = graph;
        Strands = strands;
        _strandOf = new int[graph.PositionCount];
        _number = new int[strands.Count];
        for (int s = 0; s < strands.Count; s++)
        {
            foreach (int p in strands[s])
                _strandOf[p] = s;
        }

        Number();
    }

    public Plant Plant { get; }

    public StrandGraph Graph { get; }

    public StrandSet Strands { get; }

    /// <summary>Traces every strand of a plant, each told in the direction of the runs.</summary>
    public static TracedPlant Of(Plant plant)
    {
        StrandGraph graph = StrandGraph.Of(plant);
        StrandSet strands = Tracer.Trace(graph);
        Flow.Orient(plant, graph, strands);
        return new TracedPlant(plant, graph, strands);
    }

    /// <summary>The strand that a position is on.</summary>
    public int StrandOf(int position) => _strandOf[position];

    /// <summary>
    /// The number a strand is shown by, from 1. Strands that an interface lights or listens to come first, in the order of
    /// the interface positions that they begin at in the direction of the runs, or of those that they end at where none is at
    /// their beginning: a plug that is moved changes where a strand ends, and no other strand's number.
    /// </summary>
    public int NumberOf(int strand) => _number[strand];

    /// <summary>True when something is plugged in along the strand and one of its ends is a lane of an interface.</summary>
    public bool IsActive(int strand)
    {
        ReadOnlySpan<int> positions = Strands[strand];
        return positions.Length > 1 && !Strands.IsLoop(strand)
            && (Graph.HasLane(positions[0]) || Graph.HasLane(positions[^1]));
    }

    /// <summary>The other end of the strand that ends at this position.</summary>
    public int OtherEnd(int end)
    {
        ReadOnlySpan<int> positions = Strands[_strandOf[end]];
        return positions[0] == end ? positions[^1] : positions[0];
    }

    /// <summary>The mating of a whole port, or of the single position that a simplex plug takes; null when nothing is mated there.</summary>
    public Mating? MatingAt(int position)
    {
        Mating?[] at = _matingAt ??= MatingsByPort(Plant);
        if (at[Plant.NumberOf(Graph.PlaceOf(position).Port)] is { } mating)
            return mating;
        int partner = Graph.Outside[position];
        return partner >= 0 ? at[Plant.NumberOf(Graph.PlaceOf(partner).Port)] : null;
    }

    /// <summary>The visits of a strand to parts, in order; of a loop, from its first position once round.</summary>
    public IReadOnlyList<Hop> Hops(int strand)
    {
        var hops = new List<Hop>((Strands[strand].Length / 2) + 1);
        Hops(strand, hops);
        return hops;
    }

    /// <summary>As <see cref="Hops(int)"/>, into a list that is used again for strand after strand.</summary>
    public void Hops(int strand, List<Hop> hops)
    {
        hops.Clear();
        ReadOnlySpan<int> positions = Strands[strand];
        int i = 0;
        if (Graph.Inside[positions[0]] < 0)
        {
            hops.Add(new Hop(Graph.PartOf(positions[0]), -1, positions[0]));
            i = 1;
        }

        for (; i < positions.Length; i += 2)
            hops.Add(new Hop(Graph.PartOf(positions[i]), positions[i], i + 1 < positions.Length ? positions[i + 1] : -1));
    }

    /// <summary>The address <c>PART/PORT:POSITION</c> of a position.</summary>
    public string Address(int position)
    {
        PositionPlace place = Graph.PlaceOf(position);
        return Plant.Address(place.Port, place.Position);
    }

    private void Number()
    {
        var active = new List<int>(Strands.Count);
        bool isInOrder = true;
        for (int s = 0; s < Strands.Count; s++)
        {
            if (!IsActive(s))
                continue;
            isInOrder &= active.Count == 0 || LaneEnd(active[^1]) < LaneEnd(s);
            active.Add(s);
        }

        if (!isInOrder)
            active.Sort((a, b) => LaneEnd(a).CompareTo(LaneEnd(b)));
        int next = 1;
        foreach (int s in active)
            _number[s] = next++;
        for (int s = 0; s < Strands.Count; s++)
        {
            if (_number[s] == 0)
                _number[s] = next++;
        }
    }

    /// <summary>The interface position at a strand's beginning, or where none is there at its end.</summary>
    private int LaneEnd(int strand)
    {
        ReadOnlySpan<int> positions = Strands[strand];
        return Graph.HasLane(positions[0]) ? positions[0] : positions[^1];
    }

    /// <summary>For each port of the plant the mating that takes the whole of it. Few ask, so it is made when one does.</summary>
    private static Mating?[] MatingsByPort(Plant plant)
    {
        var at = new Mating?[plant.PortCount];
        foreach (Mating mating in plant.Matings)
        {
            if (mating.PositionOfA == 0)
                at[plant.NumberOf(mating.A)] = mating;
            if (mating.PositionOfB == 0)
                at[plant.NumberOf(mating.B)] = mating;
        }

        return at;
    }
}
