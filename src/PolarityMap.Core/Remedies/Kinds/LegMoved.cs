using PolarityMap.Core.Checks;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>A trunk or one leg of it moves to a port that is free.</summary>
internal sealed class LegMoved : ChangeKind
{
    private const int Minutes = 6;

    public override string Name => "leg-moved";

    public override string Title => "a trunk's leg moved to a free port";

    public override bool MayClear(Rule rule) => false;

    public override IEnumerable<Change> Toward(ChangeContext context, IReadOnlyList<int> way, IReadOnlyList<int> meant) =>
        PatchMoved.Toward(context, this, way, meant, cord: false, Minutes);
}
