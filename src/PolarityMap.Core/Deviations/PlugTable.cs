using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations;

/// <summary>Which mating each port of a plant is in.</summary>
public sealed class PlugTable
{
    /// <summary>The port is in no mating, but simplex plugs sit in positions of it.</summary>
    private const int Split = -2;

    private readonly Plant _plant;
    private readonly int[] _matingAt;
    private readonly Dictionary<PortRef, PortRef> _plugIn = [];
    private readonly Dictionary<PortRef, PortRef> _adapterOf = [];

    public PlugTable(Plant plant)
    {
        _plant = plant;
        _matingAt = new int[plant.PortCount];
        Array.Fill(_matingAt, -1);
        for (int i = 0; i < plant.Matings.Count; i++)
        {
            Mating mating = plant.Matings[i];
            _matingAt[plant.NumberOf(mating.A)] = mating.PositionOfA == 0 ? i : Split;
            _matingAt[plant.NumberOf(mating.B)] = mating.PositionOfB == 0 ? i : Split;
            if (mating.Through is { } through)
                _matingAt[plant.NumberOf(through)] = i;
        }

        foreach (OpenPlug open in plant.OpenPlugs)
        {
            _plugIn[open.Adapter] = open.Plug;
            _adapterOf[open.Plug] = open.Adapter;
        }
    }

    /// <summary>
    /// The index of the mating that takes the whole of a port, or that is made in it where it is an adapter; -1 where nothing is
    /// mated or where simplex plugs sit in single positions.
    /// </summary>
    public int At(PortRef port) => Math.Max(-1, _matingAt[_plant.NumberOf(port)]);

    /// <summary>True when simplex plugs sit in single positions of a port.</summary>
    public bool HoldsSimplex(PortRef port) => _matingAt[_plant.NumberOf(port)] == Split;

    /// <summary>The plug that waits in an adapter with nothing before it, or null.</summary>
    public PortRef? WaitingIn(PortRef adapter) => _plugIn.TryGetValue(adapter, out PortRef plug) ? plug : null;

    /// <summary>The adapter that a plug waits in with nothing before it, or null.</summary>
    public PortRef? AdapterOf(PortRef plug) => _adapterOf.TryGetValue(plug, out PortRef adapter) ? adapter : null;

    /// <summary>The mating of a port, or null; see <see cref="At"/>.</summary>
    public Mating? Of(PortRef port) => At(port) is >= 0 and int i ? _plant.Matings[i] : null;

    /// <summary>The port that a port is mated to, or null.</summary>
    public PortRef? PartnerOf(PortRef port) => Of(port) is not { } mating ? null : mating.A == port ? mating.B : mating.B == port ? mating.A : null;
}
