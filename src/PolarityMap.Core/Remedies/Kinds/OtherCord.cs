using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>An A-to-B cord in the place of an A-to-A cord, or the other way round.</summary>
internal sealed class OtherCord : ChangeKind
{
    public override string Name => "other-cord";

    public override string Title => "a duplex cord of the other type";

    public override bool MayClear(Rule rule) => false;

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part cord = context.Plant.Parts[part];
        if (cord.Kind != "duplex cord" || cord.Values?.Word("type") is not { } type)
            yield break;
        string other = type == "A-to-A" ? "A-to-B" : "A-to-A";
        if (context.Alter(this, part, $"put an {other} cord in the place of {ChangeWords.Name(context.Plant, part)}", PartWork.Replace(cord), other, new Setting("type", other)) is { } change)
            yield return change;
    }
}
