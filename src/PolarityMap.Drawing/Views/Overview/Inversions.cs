namespace PolarityMap.Drawing.Views.Overview;

/// <summary>
/// Crossings of a drawing between two columns: the inversions of the right ends when sorted by the left ones, counted by merge
/// sort (Simple and Efficient Bilayer Cross Counting, J. Graph Algorithms Appl. 8(2), 2004).
/// </summary>
internal static class Inversions
{
    /// <summary>Pairs of which the first is greater. The values are sorted on the way.</summary>
    public static long Of(int[] values) => Sort(values, new int[values.Length], 0, values.Length);

    private static long Sort(int[] values, int[] buffer, int from, int to)
    {
        if (to - from < 2)
            return 0;
        int middle = (from + to) / 2;
        long count = Sort(values, buffer, from, middle) + Sort(values, buffer, middle, to);
        int left = from, right = middle;
        for (int i = from; i < to; i++)
        {
            if (left < middle && (right >= to || values[left] <= values[right]))
            {
                buffer[i] = values[left++];
                continue;
            }

            buffer[i] = values[right++];
            count += middle - left;
        }

        Array.Copy(buffer, from, values, from, to - from);
        return count;
    }
}
