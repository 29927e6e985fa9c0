using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>
/// The two plugs at one end of a cord change places by hand, where the cord is made for it: both fibres in one jacket
/// (mechanism: two public sources).
/// </summary>
internal sealed class ReversedCord : ChangeKind
{
    public override string Name => "reversed-cord";

    public override string Title => "the plugs at one end of a cord exchanged";

    public override bool MayClear(Rule rule) => false;

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part cord = context.Plant.Parts[part];
        if (!cord.IsReversible || cord.Values?.Word("reversed") is not { } reversed)
            yield break;

        // What was reversed before is put back.
        (int port, string after) = reversed switch { "near" => (0, "none"), "far" => (1, "none"), "both" => (1, "near"), _ => (1, "far") };
        string end = ChangeWords.End(context, new PortRef(part, port));
        if (context.Alter(this, part, $"exchange the two plugs at {end} (reversible by hand)", 2, after, new Setting("reversed", after)) is { } change)
            yield return change;
    }
}
