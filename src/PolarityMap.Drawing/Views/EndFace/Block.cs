namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>A piece of a panel that is placed as a whole.</summary>
internal abstract class Block
{
    public abstract double Width { get; }

    public abstract double Height { get; }

    public abstract void Paint(double x, double y, PanelPaint paint);
}
