using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>A cable in the colour of its network.</summary>
internal sealed class OtherJacket : ChangeKind
{
    public override string Name => "other-jacket";

    public override string Title => "a cable in its network's colour";

    public override bool MayClear(Rule rule) => rule.Code == "S09";

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part cable = context.Plant.Parts[part];
        if (cable.Jacket is null || !cable.Shape.IsCable)
            yield break;
        int network = cable.Network >= 0 ? cable.Network : context.Check.Separation.OnlyNetworkIn(part);
        if (network < 0 || context.Plant.Networks[network].Colour is not { } colour)
            yield break;
        string text = $"put {ChangeWords.A(ChangeWords.Noun(cable))} with a {colour} jacket in the place of {ChangeWords.Name(context.Plant, part)}";
        if (context.Alter(this, part, text, PartWork.Replace(cable), colour, new Setting("jacket", colour)) is { } change)
            yield return change;
    }
}
