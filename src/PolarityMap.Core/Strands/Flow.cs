using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Strands;

/// <summary>
/// The direction in which strands are told and drawn: that in which the runs are written. A strand most of whose matings run
/// the other way is turned; a tie leaves it as it was traced.
/// </summary>
internal static class Flow
{
    public static void Orient(Plant plant, StrandGraph graph, StrandSet strands)
    {
        // One bit a position: it is on the side from which a run comes to the mating.
        var upstream = new ulong[(graph.PositionCount + 63) / 64];
        foreach (Mating mating in plant.Matings)
        {
            int first = graph.PositionOf(mating.A, Math.Max(1, mating.PositionOfA));
            int last = mating.PositionOfA > 0 ? first : first + plant.Port(mating.A).Face.Count - 1;
            for (int p = first; p <= last; p++)
                upstream[p >> 6] |= 1UL << p;
        }

        for (int strand = 0; strand < strands.OpenCount; strand++)
        {
            ReadOnlySpan<int> positions = strands[strand];
            int along = 0;
            for (int i = 0; i + 1 < positions.Length; i++)
            {
                if (graph.Outside[positions[i]] != positions[i + 1])
                    continue;
                along += (upstream[positions[i] >> 6] >> positions[i] & 1) != 0 ? 1 : -1;
            }

            if (along < 0)
                strands.Turn(strand);
        }
    }
}
