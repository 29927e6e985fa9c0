using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>Strands of one network that enter a part or ports of another.</summary>
public sealed class Stray
{
    private readonly List<int> _strands = [];
    private readonly List<PortRef> _entries = [];
    private readonly HashSet<PortRef> _seen = [];

    internal Stray(int network, int foreign, int part, SourcePlace source)
    {
        Network = network;
        Foreign = foreign;
        Part = part;
        Source = source;
    }

    /// <summary>The strands' own network, that of their interfaces.</summary>
    public int Network { get; }

    /// <summary>The network of the part or of its ports.</summary>
    public int Foreign { get; }

    /// <summary>The part at which the strands, told in the direction of the runs, leave their network.</summary>
    public int Part { get; }

    /// <summary>The stop of the document that brings the first of the strands there.</summary>
    public SourcePlace Source { get; }

    /// <summary>The strands, each once.</summary>
    public IReadOnlyList<int> Strands => _strands;

    /// <summary>The ports of the part that they enter; of a cable, the ports that it is plugged into.</summary>
    public IReadOnlyList<PortRef> Entries => _entries;

    internal void Add(int strand, PortRef entry)
    {
        if (_strands.Count == 0 || _strands[^1] != strand)
            _strands.Add(strand);
        if (_seen.Add(entry))
            _entries.Add(entry);
    }
}
