using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>A cable or housing with its guide pins at other ends.</summary>
internal sealed class OtherPins : ChangeKind
{
    private static readonly string[] s_attributes = ["pins", "front-pins"];

    public override string Name => "other-pins";

    public override string Title => "a part with other guide pins";

    public override bool MayClear(Rule rule) => rule.Code is "M01" or "M02";

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part pinned = context.Plant.Parts[part];
        if (pinned.Shape.IsInterface || PartKinds.Find(pinned.Kind) is not { } kind)
            yield break;
        foreach (AttributeSpec spec in kind.Attributes.Where(s => s_attributes.Contains(s.Name)))
        {
            foreach (string word in spec.Words)
            {
                string text = $"put {ChangeWords.A(ChangeWords.Noun(pinned))} {Words(context, part, word)} in the place of {ChangeWords.Name(context.Plant, part)}";
                if (context.Alter(this, part, text, PartWork.Replace(pinned), $"{spec.Name} {word}", new Setting(spec.Name, word)) is { } change && Differs(pinned.Shape, change))
                    yield return change;
            }
        }
    }

    /// <summary>What is not stated may be so already.</summary>
    private static bool Differs(Shape before, Change change)
    {
        Shape after = ((PartDiffers)change.Differences[^1]).Changed.Shape;
        return Enumerable.Range(0, before.Ports.Count).Any(i => before.Ports[i].Pinned != after.Ports[i].Pinned);
    }

    private static string Words(ChangeContext context, int part, string word) => word switch
    {
        "none" => "without pins",
        "both" => "with pins at both ends",
        "near" or "far" when context.Plant.Parts[part].Shape.Ports.Count == 2 => $"with pins only {ChangeWords.In(context, new PortRef(part, word == "near" ? 0 : 1))}",
        "near" or "far" => $"with pins at its {word} end only",
        "pinned" => "with pins",
        _ => "without pins",
    };
}
