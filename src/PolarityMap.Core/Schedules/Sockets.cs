using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Schedules;

/// <summary>Where every plug of a plant sits, and what sits in every adapter.</summary>
internal sealed class Sockets
{
    private readonly Plant _plant;
    private readonly Mating?[] _at;
    private readonly Mating?[] _inAdapter;
    private readonly OpenPlug?[] _waiting;

    public Sockets(Plant plant)
    {
        _plant = plant;
        _at = new Mating?[plant.PortCount];
        _inAdapter = new Mating?[plant.PortCount];
        _waiting = new OpenPlug?[plant.PortCount];
        foreach (Mating mating in plant.Matings)
        {
            // A port that simplex plugs share has a mating for each of them, and the first stands for it.
            _at[plant.NumberOf(mating.A)] ??= mating;
            _at[plant.NumberOf(mating.B)] ??= mating;
            if (mating.Through is { } adapter)
                _inAdapter[plant.NumberOf(adapter)] ??= mating;
        }

        foreach (OpenPlug plug in plant.OpenPlugs)
        {
            _waiting[plant.NumberOf(plug.Plug)] ??= plug;
            _waiting[plant.NumberOf(plug.Adapter)] ??= plug;
        }
    }

    /// <summary>The first mating of a port, or null.</summary>
    public Mating? MatingAt(PortRef port) => _at[_plant.NumberOf(port)];

    /// <summary>The mating in an adapter, or null.</summary>
    public Mating? MatingIn(PortRef adapter) => _inAdapter[_plant.NumberOf(adapter)];

    /// <summary>The plug that waits in an adapter alone, or the adapter that it waits in; or null.</summary>
    public OpenPlug? WaitingAt(PortRef port) => _waiting[_plant.NumberOf(port)];

    /// <summary>The port that meets a port, or null.</summary>
    public PortRef? Across(PortRef port) => MatingAt(port) is { } mating ? mating.A == port ? mating.B : mating.A : null;

    /// <summary>What a hand finds a plug in: the adapter of a panel, or the port that it is plugged into; null where it is in nothing.</summary>
    public PortRef? HolderOf(PortRef plug) =>
        MatingAt(plug) is { } mating ? mating.Through ?? (mating.A == plug ? mating.B : mating.A) : WaitingAt(plug)?.Adapter;

    /// <summary>The address of <see cref="HolderOf"/>, with the position where a simplex plug takes one; empty where it is in nothing.</summary>
    public string HolderWords(PortRef plug)
    {
        if (HolderOf(plug) is not { } holder)
            return "";
        int position = MatingAt(plug) is { Through: null } mating ? mating.A == plug ? mating.PositionOfB : mating.PositionOfA : 0;
        return position > 0 ? _plant.Address(holder, position) : _plant.Address(holder);
    }
}
