namespace PolarityMap.Drawing.Scene;

/// <summary>An upright rectangle on the sheet, in mm.</summary>
public readonly record struct Area(double X, double Y, double Width, double Height)
{
    public double Right => X + Width;

    public double Bottom => Y + Height;

    public double CentreX => X + (Width / 2);

    public double CentreY => Y + (Height / 2);
}
