using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>The keying of most array matings of each gutter between small boxes.</summary>
internal sealed class CommonKeys(TracedPlant traced, Layout layout)
{
    private readonly Keying?[] _ofColumn = new Keying?[layout.Columns.Count];

    /// <summary>That of the gutter right of a column.</summary>
    public Keying Of(int column) => _ofColumn[column] ??= Find(layout.Columns[column]);

    private Keying Find(List<Node> nodes)
    {
        int aligned = 0, opposed = 0;
        foreach (Node node in nodes)
        {
            if (!node.NameInside)
                continue;
            foreach (Row row in node.Right)
            {
                if (row.Mating is not { } mating || traced.Plant.Port(mating.A).Face.Family != ConnectorFamily.Array)
                    continue;
                if (mating.Keys == Keying.Aligned)
                    aligned++;
                else
                    opposed++;
            }
        }

        return aligned > opposed ? Keying.Aligned : Keying.Opposed;
    }
}
