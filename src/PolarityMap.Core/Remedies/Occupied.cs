using PolarityMap.Core.Deviations;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies;

/// <summary>What a growing set of changes takes up, so that among thousands it is seen at once what still goes with all of them.</summary>
internal sealed class Occupied
{
    private readonly HashSet<ChangeId> _changes = [];
    private readonly HashSet<int> _parts = [];
    private readonly HashSet<int> _inside = [];
    private readonly HashSet<int> _outside = [];
    private readonly HashSet<PortRef> _plugs = [];
    private readonly HashSet<(PortRef, int)> _ports = [];

    /// <summary>True when a change is among them, or goes with each of them as <see cref="Change.GoesWith"/> has it.</summary>
    public bool LeavesRoomFor(Change change)
    {
        if (_changes.Contains(change.Id))
            return true;
        foreach (Rejoined join in change.Patch.Inside)
        {
            if (_inside.Contains(join.Position))
                return false;
        }

        foreach (Rejoined join in change.Patch.Outside)
        {
            if (_outside.Contains(join.Position))
                return false;
        }

        return change.Differences.All(d => d switch
        {
            PartDiffers part => !_parts.Contains(part.Part),
            PlugPut put => !_plugs.Contains(put.Plug) && !_ports.Contains((put.Port, put.Position)),
            _ => true,
        });
    }

    public void Add(Change change)
    {
        if (!_changes.Add(change.Id))
            return;
        foreach (Rejoined join in change.Patch.Inside)
            _inside.Add(join.Position);
        foreach (Rejoined join in change.Patch.Outside)
            _outside.Add(join.Position);
        foreach (Difference difference in change.Differences)
        {
            if (difference is PartDiffers part)
                _parts.Add(part.Part);
            if (difference is PlugPut put)
            {
                _plugs.Add(put.Plug);
                _ports.Add((put.Port, put.Position));
            }
        }
    }
}
