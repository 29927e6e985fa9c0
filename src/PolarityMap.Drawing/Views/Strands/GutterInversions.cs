namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Inversions between columns, which no drawing can have fewer crossings than.</summary>
internal static class GutterInversions
{
    public static long Of(Layout layout)
    {
        long count = 0;
        var rightSlot = new int[layout.SlotCount];
        var order = new List<int>(layout.SlotCount);
        for (int c = 1; c < layout.Columns.Count; c++)
        {
            Array.Fill(rightSlot, -1);
            foreach (Row row in layout.RowsAtLeft(c))
                rightSlot[row.Before!.Slot] = row.Slot;
            order.Clear();
            bool rising = true;
            foreach (int slot in rightSlot)
            {
                if (slot < 0)
                    continue;
                rising &= order.Count == 0 || order[^1] < slot;
                order.Add(slot);
            }

            if (!rising)
                count += Overview.Inversions.Of([.. order]);
        }

        return count;
    }
}
