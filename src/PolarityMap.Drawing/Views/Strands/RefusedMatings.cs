using PolarityMap.Core.Plants;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// The matings of a plant that cannot be made. They join no strand, and their parts stand side by side all the same. Found once
/// for each planning, and by part, so that a sheet asks only for those of its own parts.
/// </summary>
internal sealed class RefusedMatings
{
    private readonly Dictionary<int, List<Mating>> _fromPart = [];
    private readonly HashSet<PortRef> _rightPorts = [];

    public RefusedMatings(Plant plant)
    {
        var all = new List<Mating>();
        foreach (Mating mating in plant.Matings)
        {
            if (plant.Fits(mating))
                continue;
            all.Add(mating);
            _rightPorts.Add(mating.B);
            if (!_fromPart.TryGetValue(mating.A.Part, out List<Mating>? own))
                _fromPart[mating.A.Part] = own = [];
            own.Add(mating);
        }

        All = all;
    }

    public IReadOnlyList<Mating> All { get; }

    /// <summary>Those whose first port is one of the part, in the order of the plant.</summary>
    public IReadOnlyList<Mating> From(int part) => All.Count > 0 && _fromPart.TryGetValue(part, out List<Mating>? own) ? own : [];

    /// <summary>True when a port is the second of such a mating.</summary>
    public bool IsRightOfOne(PortRef port) => All.Count > 0 && _rightPorts.Contains(port);
}
