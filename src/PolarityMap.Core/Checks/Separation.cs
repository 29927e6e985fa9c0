using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>How the networks of a plant keep apart: what they share, where strands leave theirs, and which cords fit where.</summary>
public sealed class Separation
{
    private readonly CheckContext _context;
    private Sharing? _sharing;
    private IReadOnlyList<FitTable>? _fits;

    internal Separation(CheckContext context)
    {
        _context = context;
        Strands = new StrandNetworks(context);
    }

    /// <summary>The networks of every strand.</summary>
    public StrandNetworks Strands { get; }

    /// <summary>What networks share.</summary>
    public Sharing Sharing => _sharing ??= new Sharing(_context, Strands);

    /// <summary>The network of all strands in a part, or -1 when they have several or none.</summary>
    public int OnlyNetworkIn(int part)
    {
        int only = -1;
        int positions = _context.Plant.Parts[part].Shape.PositionCount;
        int first = positions == 0 ? 0 : _context.Traced.Graph.PositionOf(new PortRef(part, 0), 1);
        for (int p = first; p < first + positions; p++)
        {
            foreach (int network in Strands.Of(_context.Traced.StrandOf(p)))
            {
                if (only >= 0 && network != only)
                    return -1;
                only = network;
            }
        }

        return only;
    }

    /// <summary>The parts at which ports of several networks sit side by side, those alike in one table.</summary>
    public IReadOnlyList<FitTable> Fits => _fits ??= FitTables.Of(_context, Strands);
}
