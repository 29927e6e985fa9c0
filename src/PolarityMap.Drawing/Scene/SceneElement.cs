namespace PolarityMap.Drawing.Scene;

/// <summary>
/// One thing on a sheet. All lengths are mm; children and siblings are drawn in list order, later ones on top.
/// </summary>
public abstract record SceneElement
{
    private protected SceneElement()
    {
    }
}
