using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>
/// A part of another fibre class: one that its strands have elsewhere, or that an application of theirs is specified for. Never a
/// lower class of the same core: it would take from the channel what the better fibre was bought for.
/// </summary>
internal sealed class OtherFibre : ChangeKind
{
    public override string Name => "other-fibre";

    public override string Title => "a part of another fibre class";

    public override bool MayClear(Rule rule) => rule.Code is "F01" or "F02" or "F03" or "F04" or "L02" or "L05";

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part fibred = context.Plant.Parts[part];
        if (fibred.Fibre is null || PartKinds.Find(fibred.Kind) is not { } kind || !kind.Has("fibre"))
            yield break;
        SortedSet<string> wanted = Classes(context, part);
        foreach (FibreClass fibre in InOrder())
        {
            if (!wanted.Contains(fibre.Name) || (fibre.Core == fibred.Fibre.Core && fibre.Rank <= fibred.Fibre.Rank))
                continue;
            string text = $"put {ChangeWords.A(ChangeWords.Noun(fibred))} of {fibre} in the place of {ChangeWords.Name(context.Plant, part)}";
            if (context.Alter(this, part, text, PartWork.Replace(fibred), fibre.Name, new Setting("fibre", fibre.Name)) is { } change)
                yield return change;
        }
    }

    /// <summary>Multimode as far as need be, single-mode from the best, which is what one buys.</summary>
    private static IEnumerable<FibreClass> InOrder() =>
        FibreClass.All.Where(f => f.IsMultimode).Concat(FibreClass.All.Where(f => !f.IsMultimode).OrderByDescending(f => f.Rank));

    /// <summary>The classes on the strands of a part, and those that the applications at their ends are specified for.</summary>
    private static SortedSet<string> Classes(ChangeContext context, int part)
    {
        var classes = new SortedSet<string>(StringComparer.Ordinal);
        var seen = new HashSet<int>();
        int first = context.Graph.FirstPositionOf(part);
        for (int p = first; p < first + context.Plant.Parts[part].Shape.PositionCount; p++)
        {
            if (!seen.Add(context.Traced.StrandOf(p)))
                continue;
            foreach (int q in context.Traced.Strands[context.Traced.StrandOf(p)])
            {
                if (context.Plant.Parts[context.Graph.PartOf(q)].Fibre is { } fibre)
                    classes.Add(fibre.Name);
                if (context.Graph.HasLane(q) && context.Plant.Port(context.Graph.PlaceOf(q).Port).Application is { } application)
                    classes.UnionWith(application.Limits(context.Plant.Practice.Limits).Select(l => l.Fibre));
            }
        }

        return classes;
    }
}
