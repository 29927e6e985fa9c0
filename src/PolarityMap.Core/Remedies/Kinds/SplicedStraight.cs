using System.Globalization;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>A splice made anew, fibre n to fibre n.</summary>
internal sealed class SplicedStraight : ChangeKind
{
    public override string Name => "spliced-straight";

    public override string Title => "fibres spliced number to number";

    public override string Caution => RemedyCautions.Shards;

    public override bool MayClear(Rule rule) => false;

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part splice = context.Plant.Parts[part];
        if (splice.Kind != "splice" || splice.Values?.WiringList("wiring") is null)
            yield break;
        DuplexPair[] straight = [.. Enumerable.Range(1, splice.Shape.PositionCount / 2).Select(n => new DuplexPair(n, n))];
        string value = $"[{string.Join(", ", straight.Select(p => string.Create(CultureInfo.InvariantCulture, $"[{p.A}, {p.B}]")))}]";
        string text = $"splice the fibres of {ChangeWords.Name(context.Plant, part)} anew, each to its own number";
        if (context.Alter(this, part, text, PartWork.Replace(splice), "", new Setting("wiring", value) { Pairs = straight }) is { Patch.IsEmpty: false } change)
            yield return change;
    }
}
