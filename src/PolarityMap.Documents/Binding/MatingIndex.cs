using PolarityMap.Core.Plants;

namespace PolarityMap.Documents.Binding;

/// <summary>Finds the matings of a plant by their ports, and keeps up with as-built differences.</summary>
internal sealed class MatingIndex
{
    private readonly PlantBuilder _plant;
    private readonly Dictionary<PortRef, int> _at = [];
    private readonly Dictionary<PortRef, int> _through = [];
    private readonly HashSet<PortRef> _several = [];
    private readonly SortedSet<int> _pulled = [];

    public MatingIndex(PlantBuilder plant)
    {
        _plant = plant;
        for (int i = 0; i < plant.Matings.Count; i++)
        {
            Mating mating = plant.Matings[i];
            foreach (PortRef port in (ReadOnlySpan<PortRef>)[mating.A, mating.B])
            {
                if (!_at.TryAdd(port, i))
                    _several.Add(port);
            }

            if (mating.Through is { } adapter)
                _through[adapter] = i;
        }
    }

    /// <summary>The mating that a port is in, or -1.</summary>
    public int At(PortRef port) => _at.GetValueOrDefault(port, -1);

    /// <summary>The mating that a port is in or, when it is an adapter, that it holds; -1 when there is none.</summary>
    public int Held(PortRef port) => _through.TryGetValue(port, out int at) ? at : At(port);

    /// <summary>True when two simplex plugs sit in the port, so that it is in two matings.</summary>
    public bool HoldsSeveral(PortRef port) => _several.Contains(port);

    /// <summary>Says that a port is now in this mating, or in none when it is -1.</summary>
    public void Set(PortRef port, int mating)
    {
        if (mating < 0)
            _at.Remove(port);
        else
            _at[port] = mating;
    }

    /// <summary>Takes a mating out; its index stays good for the others until <see cref="RemovePulled"/>.</summary>
    public void Pull(int mating)
    {
        _pulled.Add(mating);
        foreach (PortRef port in (ReadOnlySpan<PortRef>)[_plant.Matings[mating].A, _plant.Matings[mating].B])
        {
            if (At(port) == mating && !HoldsSeveral(port))
                _at.Remove(port);
        }

        if (_plant.Matings[mating].Through is { } adapter)
            _through.Remove(adapter);
    }

    /// <summary>True when a mating was taken out.</summary>
    public bool IsPulled(int mating) => _pulled.Contains(mating);

    /// <summary>Takes up a mating that was added at the end of the plant.</summary>
    public void Made(int mating)
    {
        Mating made = _plant.Matings[mating];
        foreach (PortRef port in (ReadOnlySpan<PortRef>)[made.A, made.B])
        {
            if (!_at.TryAdd(port, mating))
                _several.Add(port);
        }

        if (made.Through is { } adapter)
            _through[adapter] = mating;
    }

    /// <summary>Removes what was pulled from the plant, the last first, so that no index shifts in between.</summary>
    public void RemovePulled()
    {
        foreach (int mating in _pulled.Reverse())
            _plant.RemoveMating(mating);
    }
}
