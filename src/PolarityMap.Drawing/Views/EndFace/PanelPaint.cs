using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>What a panel paints, by the layer it goes to.</summary>
/// <param name="id">The panel's id on the sheet; those of its faces begin with it.</param>
internal sealed class PanelPaint(string id)
{
    public string Id => id;

    /// <summary>The faces and what meets what: one picture to a reader.</summary>
    public List<SceneElement> Picture { get; } = [];

    /// <summary>Title, names and explanations.</summary>
    public List<SceneElement> Words { get; } = [];

    /// <summary>Signs and words of the findings.</summary>
    public List<SceneElement> Signs { get; } = [];

    /// <summary>Lines of words from a height down; returns where the next line would begin.</summary>
    public static double Write(List<SceneElement> layer, double x, double top, IEnumerable<(string Text, double Cap)> lines, double lineHeight, Anchor anchor = Anchor.Start)
    {
        foreach ((string text, double cap) in lines)
        {
            layer.Add(new Label(x, top + cap, text, cap, anchor, Palette.Ink));
            top += lineHeight;
        }

        return top;
    }
}
