using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations;

/// <summary>Which mating each port of a plant is in.</summary>
public sealed class PlugTable
{
    private readonly Plant _plant;
    private readonly int[] _matingAt;

    public PlugTable(Plant plant)
    {
        _plant = plant;
        _matingAt = new int[plant.PortCount];
        Array.Fill(_matingAt, -1);
        for (int i = 0; i < plant.Matings.Count; i++)
        {
            Mating mating = plant.Matings[i];
            Note(mating.A, mating.PositionOfA, i);
            Note(mating.B, mating.PositionOfB, i);
            if (mating.Through is { } through)
                _matingAt[plant.NumberOf(through)] = i;
        }
    }

    /// <summary>
    /// The index of the mating that takes the whole of a port, or that is made in it where it is an adapter; -1 where nothing is
    /// mated or where simplex plugs sit in single positions.
    /// </summary>
    public int At(PortRef port) => _matingAt[_plant.NumberOf(port)];

    /// <summary>The mating of a port, or null; see <see cref="At"/>.</summary>
    public Mating? Of(PortRef port) => At(port) is >= 0 and int i ? _plant.Matings[i] : null;

    /// <summary>The port that a port is mated to, or null.</summary>
    public PortRef? PartnerOf(PortRef port) => Of(port) is not { } mating ? null : mating.A == port ? mating.B : mating.B == port ? mating.A : null;

    private void Note(PortRef port, int position, int mating)
    {
        if (position == 0)
            _matingAt[_plant.NumberOf(port)] = mating;
    }
}
