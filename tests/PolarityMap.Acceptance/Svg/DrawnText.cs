namespace PolarityMap.Acceptance.Svg;

/// <summary>An upright rectangle in mm, Y downwards.</summary>
internal readonly record struct Rect(double X, double Y, double Width, double Height)
{
    public double Right => X + Width;

    public double Bottom => Y + Height;

    public bool Contains(double x, double y) => x >= X && x <= Right && y >= Y && y <= Bottom;

    public bool Contains(Rect other) => other.X >= X && other.Right <= Right && other.Y >= Y && other.Bottom <= Bottom;

    /// <summary>True when both share more than <paramref name="slack"/> mm in either direction.</summary>
    public bool Overlaps(Rect other, double slack) =>
        Math.Min(Right, other.Right) - Math.Max(X, other.X) > slack && Math.Min(Bottom, other.Bottom) - Math.Max(Y, other.Y) > slack;

    public Rect Grown(double by) => new(X - by, Y - by, Width + (2 * by), Height + (2 * by));
}

/// <summary>One text element.</summary>
/// <param name="Layer">Id of the outermost named group it stands in.</param>
/// <param name="Content">Its characters.</param>
/// <param name="CapHeight">Height of its capitals.</param>
/// <param name="Capitals">From the foot to the top of its capitals, as wide as its letters.</param>
/// <param name="Letters">The same down to the foot of g, j, p, q, y where there is one.</param>
/// <param name="Fill">Colour of the letters.</param>
internal sealed record DrawnText(string Layer, string Content, double CapHeight, Rect Capitals, Rect Letters, string Fill)
{
    public double MiddleX => Capitals.X + (Capitals.Width / 2);

    public double MiddleY => Capitals.Y + (Capitals.Height / 2);
}
