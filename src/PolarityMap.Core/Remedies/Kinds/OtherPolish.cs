using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>A cable or housing with other end faces.</summary>
internal sealed class OtherPolish : ChangeKind
{
    private static readonly (string Near, string Far)[] s_attributes = [("polish", "far-polish"), ("duplex-polish", "far-duplex-polish")];

    public override string Name => "other-polish";

    public override string Title => "a part with other end faces";

    public override bool MayClear(Rule rule) => rule.Code is "M05" or "M06";

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part polished = context.Plant.Parts[part];
        if (polished.Shape.IsInterface || PartKinds.Find(polished.Kind) is not { } kind)
            yield break;
        foreach ((string near, string far) in s_attributes)
        {
            if (kind.Attributes.FirstOrDefault(s => s.Name == near) is not { } spec)
                continue;
            foreach (string word in spec.Words)
            {
                foreach (string? other in kind.Has(far) ? (string?[])[.. spec.Words] : [null])
                {
                    Setting[] settings = other is null ? [new(near, word)] : [new(near, word), new(far, other)];
                    if (context.Alter(this, part, Text(context, part, word, other), PartWork.Replace(polished), $"{near} {word} {other}", settings) is { } change && Differs(polished.Shape, change))
                        yield return change;
                }
            }
        }
    }

    /// <summary>What is not stated may be so already.</summary>
    private static bool Differs(Shape before, Change change)
    {
        Shape after = ((PartDiffers)change.Differences[^1]).Changed.Shape;
        return Enumerable.Range(0, before.Ports.Count).Any(i => before.Ports[i].Polish != after.Ports[i].Polish);
    }

    private static string Text(ChangeContext context, int part, string near, string? far)
    {
        Part polished = context.Plant.Parts[part];
        string place = $"in the place of {ChangeWords.Name(context.Plant, part)}";
        string noun = ChangeWords.Noun(polished);
        if (far is null || far == near)
            return $"put {ChangeWords.A(noun)} with {near} end faces {place}";
        return polished.Shape.Ports.Count == 2
            ? $"put {ChangeWords.A(noun)} {place} that is {near} {ChangeWords.In(context, new PortRef(part, 0))} and {far} {ChangeWords.In(context, new PortRef(part, 1))}"
            : $"put {ChangeWords.A(noun)} {place} that is {near} at its near end and {far} at its far end";
    }
}
