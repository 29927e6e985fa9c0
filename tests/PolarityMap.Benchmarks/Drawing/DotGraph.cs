using System.Text;
using PolarityMap.Core.Strands;

namespace PolarityMap.Benchmarks.Drawing;

/// <summary>
/// Strands as a graph for Graphviz's <c>dot</c>, from left to right: a record node for each part that a strand passes, with the
/// positions where strands enter as fields at its left and those where they leave at its right, and a coloured edge for each
/// strand in each mating. What a part does inside is no edge, as its fields say nothing of it.
/// </summary>
internal sealed class DotGraph
{
    private static readonly string[] Colours =
        ["blue", "orange", "green", "brown", "grey50", "grey80", "red", "black", "gold", "purple", "pink", "turquoise"];

    private readonly TracedPlant _traced;
    private readonly StringBuilder _text = new();

    /// <param name="traced">The plant.</param>
    /// <param name="strands">The strands shown.</param>
    /// <param name="order">Order of the positions at one side of a part; null for the number order of ports and positions.</param>
    public DotGraph(TracedPlant traced, IReadOnlyList<int> strands, Comparison<int>? order = null)
    {
        _traced = traced;
        var parts = new SortedDictionary<int, (List<int> Left, List<int> Right)>();
        foreach (int strand in strands)
        {
            foreach (Hop hop in traced.Hops(strand))
            {
                if (!parts.TryGetValue(hop.Part, out (List<int> Left, List<int> Right) part))
                    parts[hop.Part] = part = ([], []);
                if (hop.In >= 0)
                    part.Left.Add(hop.In);
                if (hop.Out >= 0)
                    part.Right.Add(hop.Out);
            }
        }

        _text.Append("digraph plant {\nrankdir=LR;\nnode [shape=record];\nedge [dir=none];\n");
        foreach ((int number, (List<int> left, List<int> right)) in parts)
        {
            // Positions are numbered in the order of ports and of positions in them.
            left.Sort(order ?? Comparer<int>.Default.Compare);
            right.Sort(order ?? Comparer<int>.Default.Compare);
            AddNode(number, left, right);
        }

        foreach (int strand in strands)
        {
            IReadOnlyList<Hop> hops = traced.Hops(strand);
            for (int i = 1; i < hops.Count; i++)
                AddEdge(strand, hops[i - 1], hops[i]);
            if (traced.Strands.IsLoop(strand))
                AddEdge(strand, hops[^1], hops[0]);
        }

        _text.Append("}\n");
        Prove(strands);
    }

    public int Nodes { get; private set; }

    public int Edges { get; private set; }

    /// <summary>The graph in dot's language.</summary>
    public override string ToString() => _text.ToString();

    private void AddNode(int part, List<int> left, List<int> right)
    {
        Nodes++;
        _text.Append($"n{part} [label=\"{{");
        AddFields(left);
        _text.Append('|');
        AddWord(_traced.Plant.Parts[part].Name);
        _text.Append('|');
        AddFields(right);
        _text.Append("}\"];\n");
    }

    private void AddFields(List<int> positions)
    {
        _text.Append('{');
        for (int i = 0; i < positions.Count; i++)
        {
            PositionPlace place = _traced.Graph.PlaceOf(positions[i]);
            _text.Append(i > 0 ? "|" : "").Append($"<p{positions[i]}>");
            AddWord($"{_traced.Plant.Port(place.Port).Name}:{_traced.Plant.Port(place.Port).Face.PositionName(place.Position)}");
        }

        _text.Append('}');
    }

    /// <summary>A word with what has a meaning of its own in a record's label behind strokes.</summary>
    private void AddWord(string word)
    {
        foreach (char c in word)
            _text.Append(c is '{' or '}' or '|' or '<' or '>' or '"' or '\\' ? "\\" : "").Append(c);
    }

    private void AddEdge(int strand, Hop from, Hop to)
    {
        Edges++;
        int number = _traced.NumberOf(strand);
        _text.Append($"n{from.Part}:p{from.Out}:e -> n{to.Part}:p{to.In}:w [color={Colours[(number - 1) % Colours.Length]},strand={number}];\n");
    }

    /// <summary>Counts the graph's nodes and edges once more from the arrays of the trace, without the visits to parts.</summary>
    private void Prove(IReadOnlyList<int> strands)
    {
        var parts = new HashSet<int>();
        int mated = 0;
        foreach (int strand in strands)
        {
            foreach (int position in _traced.Strands[strand])
            {
                parts.Add(_traced.Graph.PartOf(position));
                mated += _traced.Graph.Outside[position] >= 0 ? 1 : 0;
            }
        }

        SelfCheck.Demand(Nodes == parts.Count, "the graph has a node for each part on a strand");
        SelfCheck.Demand(Edges * 2 == mated, "the graph has an edge for each mating that a strand passes");
    }
}
