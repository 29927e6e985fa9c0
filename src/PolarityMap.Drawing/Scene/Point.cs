namespace PolarityMap.Drawing.Scene;

/// <summary>A place on the sheet in mm: X to the right, Y downwards, from the sheet's top left corner.</summary>
public readonly record struct Point(double X, double Y)
{
    public static implicit operator Point((double X, double Y) pair) => new(pair.X, pair.Y);

    /// <summary>The same place from a pair of mm.</summary>
    public static Point ToPoint((double X, double Y) pair) => pair;
}
