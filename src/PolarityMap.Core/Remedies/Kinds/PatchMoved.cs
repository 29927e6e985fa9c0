using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>A cord moves to a port that is free, of the same part or of one beside it.</summary>
internal sealed class PatchMoved : ChangeKind
{
    private const int Minutes = 4;

    public override string Name => "patch-moved";

    public override string Title => "a cord moved to a free port";

    public override bool MayClear(Rule rule) => rule.Family is "mechanical" or "fibre" || rule.Code == "S01";

    public override IEnumerable<Change> AtPort(ChangeContext context, PortRef port)
    {
        if (!ChangeWords.IsSocket(context.Plant, port))
            yield break;
        PortRef[] free = [.. Free(context, port)];
        if (free.Length >= ChangeContext.FewPorts)
            yield break;
        foreach (PortRef other in free)
        {
            if (Move(context, this, port, other, cord: true, Minutes) is { } change)
                yield return change;
        }
    }

    public override IEnumerable<Change> Toward(ChangeContext context, IReadOnlyList<int> way, IReadOnlyList<int> meant) =>
        Toward(context, this, way, meant, cord: true, Minutes);

    /// <summary>A plug of the way moves into the free port at which the light ought to go on.</summary>
    internal static IEnumerable<Change> Toward(ChangeContext context, ChangeKind kind, IReadOnlyList<int> way, IReadOnlyList<int> meant, bool cord, int minutes)
    {
        PortRef end = context.Graph.PlaceOf(meant[^1]).Port;
        if (!ChangeWords.IsSocket(context.Plant, end) || !context.IsFree(end))
            yield break;
        foreach (Joint joint in Joint.Along(context, way))
        {
            if (ChangeWords.IsSocket(context.Plant, joint.There) && Fits(context.Plant, joint.There, end) && Move(context, kind, joint.There, end, cord, minutes) is { } change)
                yield return change;
        }
    }

    private static bool Fits(Plant plant, PortRef from, PortRef to) =>
        from != to && plant.Port(from).Face == plant.Port(to).Face && plant.Port(from).Side == plant.Port(to).Side && Joint.AreBeside(plant, from.Part, to.Part);

    private static IEnumerable<PortRef> Free(ChangeContext context, PortRef port)
    {
        for (int i = 0; i < context.Plant.Parts[port.Part].Shape.Ports.Count; i++)
        {
            var other = port with { Port = i };
            if (Fits(context.Plant, port, other) && context.IsFree(other))
                yield return other;
        }
    }

    private static Change? Move(ChangeContext context, ChangeKind kind, PortRef from, PortRef to, bool cord, int minutes)
    {
        if (context.PartnerOf(from) is not { } plug || PartWork.IsCord(context.Plant.Parts[plug.Part]) != cord || !ChangeWords.IsPlug(context.Plant, plug))
            return null;
        string text = $"move {ChangeWords.Name(context.Plant, plug.Part)} from {context.Plant.Address(from)} to {context.Plant.Address(to)}";
        return context.Replug(kind, from, to, [plug.Part], text, minutes, new PlugMoved(from, to));
    }
}
