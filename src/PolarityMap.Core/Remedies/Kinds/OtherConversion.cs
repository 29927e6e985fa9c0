using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>A conversion module or harness whose narrow ports are the other way round.</summary>
internal sealed class OtherConversion : ChangeKind
{
    public override string Name => "other-conversion";

    public override string Title => "a conversion of the other type";

    public override bool MayClear(Rule rule) => false;

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part conversion = context.Plant.Parts[part];
        if (conversion.Kind is not ("conversion module" or "conversion harness") || conversion.Values?.Word("type") is not { } type)
            yield break;
        string other = type == "straight" ? "reversed" : "straight";
        string text = $"put a {other} conversion {ChangeWords.Noun(conversion)} in the place of {ChangeWords.Name(context.Plant, part)}";
        if (context.Alter(this, part, text, PartWork.Replace(conversion), other, new Setting("type", other)) is { Patch.IsEmpty: false } change)
            yield return change;
    }
}
