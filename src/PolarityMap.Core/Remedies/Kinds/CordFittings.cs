using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>A cord whose connectors are those of the ports that its ends are plugged into.</summary>
internal sealed class CordFittings : ChangeKind
{
    public override string Name => "cord-fittings";

    public override string Title => "a cord with the connectors of its ports";

    public override bool MayClear(Rule rule) => rule.Code == "M03";

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part cord = context.Plant.Parts[part];
        if (cord.Kind is not ("duplex cord" or "simplex cord"))
            yield break;
        string near = Wanted(context, new PortRef(part, 0)), far = Wanted(context, new PortRef(part, 1));
        if (near == cord.Shape.Ports[0].Connector && far == cord.Shape.Ports[1].Connector)
            yield break;
        string plugs = near == far ? $"{near} plugs" : $"{near} {ChangeWords.In(context, new PortRef(part, 0))} and {far} {ChangeWords.In(context, new PortRef(part, 1))}";
        string text = $"put a cord with {plugs} in the place of {ChangeWords.Name(context.Plant, part)}";
        if (context.Alter(this, part, text, PartWork.Replace(cord), $"{near} {far}", new Setting("connector", near), new Setting("far-connector", far)) is { } change)
            yield return change;
    }

    /// <summary>The connector of the port that a plug sits in; its own where that port names none.</summary>
    private static string Wanted(ChangeContext context, PortRef plug) =>
        ChangeWords.Socket(context, plug) is { } socket && context.Plant.Port(socket).Connector is { Length: > 0 } name && name != "MPO"
            ? name
            : context.Plant.Port(plug).Connector;
}
