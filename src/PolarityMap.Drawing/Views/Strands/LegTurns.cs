using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Decides for each leg of a cable whether it is drawn turned over.</summary>
internal sealed class LegTurns(StrandHops hops, Layout layout)
{
    private readonly TracedPlant traced = hops.Traced;

    // The legs of the cable at hand that are decided, each by a row of a port.
    private readonly List<(int Leg, DrawnPort By)> _decided = [];

    /// <summary>
    /// True when a leg had rows that might have decided otherwise than the first one did, so that the order of the rows matters.
    /// </summary>
    public bool DependOnOrder { get; private set; }

    /// <summary>Turns the legs of a cable, from the mating at its left.</summary>
    public void Turn(Node node)
    {
        if (!traced.Plant.Parts[node.Part].Shape.IsCable)
            return;
        _decided.Clear();
        foreach (Row row in node.Left)
        {
            int mate = traced.Graph.Outside[row.Position];
            if (mate < 0 || row.Before is null || !Decides(row) || row.Mating is not { } mating)
                continue;
            PortRef other = hops.Ports.At(mate).Ref;
            node.SetTurn(row.Port.Shape.Leg, TurnOf(other, node.Column - 1).Over(traced.Plant.Port(other).Face, mating.Keys));
        }

        // A chain of cords ends at a part that cannot turn: the last cord is twisted, as a hand would, and not its mating.
        if (node.Right.Count == 2 && node.Right[0] is { Port.Shape: { Leg: 0, Face.Family: ConnectorFamily.Duplex } } last && last.Mating is { } end && node.Left.Count == 2)
        {
            int mate = traced.Graph.Outside[last.Position];
            PortRef other = mate < 0 ? default : hops.Ports.At(mate).Ref;
            if (mate >= 0 && !traced.Plant.Parts[other.Part].Shape.IsCable && last.Port == node.Right[1].Port)
                node.RightTurn = default(Turn).Over(traced.Plant.Port(other).Face, end.Keys);
        }

        // The legs of a harness have no left end of their own: they turn to what they meet at the right, unless that turns too.
        foreach (Row row in node.Right)
        {
            int mate = traced.Graph.Outside[row.Position];
            if (row.Port.Shape.Leg == 0 || mate < 0 || !Decides(row) || row.Mating is not { } mating)
                continue;
            PortRef other = hops.Ports.At(mate).Ref;
            if (!traced.Plant.Parts[other.Part].Shape.IsCable)
                node.SetTurn(row.Port.Shape.Leg, default(Turn).Over(traced.Plant.Port(other).Face, mating.Keys));
        }
    }

    /// <summary>True when the row is the first of its leg.</summary>
    private bool Decides(Row row)
    {
        int leg = row.Port.Shape.Leg;
        for (int i = _decided.Count - 1; i >= 0; i--)
        {
            if (_decided[i].Leg != leg)
                continue;
            DependOnOrder |= _decided[i].By != row.Port || row.Port.Mating is null;
            return false;
        }

        _decided.Add((leg, row.Port));
        return true;
    }

    /// <summary>How a port is drawn in the nearest column left of the given one in which it stands.</summary>
    private Turn TurnOf(PortRef port, int column)
    {
        Node? nearest = null;
        for (Node? box = layout.LastBoxOf.GetValueOrDefault(port.Part); box is not null; box = box.Other)
        {
            if (box.Column <= column && (nearest is null || box.Column > nearest.Column))
                nearest = box;
        }

        return nearest?.RightTurnOf(traced.Plant.Port(port).Leg) ?? default;
    }
}
