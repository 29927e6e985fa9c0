using PolarityMap.Core.Checks;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>A trunk of another type.</summary>
internal sealed class OtherTrunk : ChangeKind
{
    public override string Name => "other-trunk";

    public override string Title => "a trunk of another type";

    public override bool MayClear(Rule rule) => false;

    public override IEnumerable<Change> AtPart(ChangeContext context, int part) =>
        context.Plant.Parts[part].Kind == "trunk" ? OtherArrayCord.OfType(this, context, part, "trunk") : [];
}
