using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Labels of one style side by side, so that a file says the style once: the smallest first, of one height by their anchors.
/// </summary>
internal static class LabelStyles
{
    public static List<SceneElement> SideBySide(List<Label> labels)
    {
        // There are a handful of styles, and labels of one style come in runs.
        var styles = new List<(double CapHeight, Anchor Anchor)>();
        var styleOf = new int[labels.Count];
        for (int i = 0; i < styleOf.Length; i++)
        {
            (double, Anchor) style = (labels[i].CapHeightMm, labels[i].Anchor);
            int nth = i > 0 && styles[styleOf[i - 1]] == style ? styleOf[i - 1] : styles.IndexOf(style);
            if (nth < 0)
            {
                nth = styles.Count;
                styles.Add(style);
            }

            styleOf[i] = nth;
        }

        var sorted = new List<SceneElement>(labels.Count);
        foreach (int nth in Enumerable.Range(0, styles.Count).OrderBy(s => styles[s]))
        {
            for (int i = 0; i < styleOf.Length; i++)
            {
                if (styleOf[i] == nth)
                    sorted.Add(labels[i]);
            }
        }

        return sorted;
    }
}
