namespace PolarityMap.Drawing.Scene;

/// <summary>An upright rectangle. Without a stroke it has no outline, without a fill it is open.</summary>
public sealed record Box(
    double X,
    double Y,
    double Width,
    double Height,
    double CornerRadius = 0,
    Colour? Stroke = null,
    double StrokeWidthMm = LineWidths.Outline,
    Colour? Fill = null) : SceneElement;

/// <summary>A straight line with square-cut ends.</summary>
public sealed record Line(
    double X1,
    double Y1,
    double X2,
    double Y2,
    Colour Stroke,
    double WidthMm,
    DashKind Dash = DashKind.Continuous) : SceneElement;

/// <summary>A closed outline through the points.</summary>
public sealed record Polygon(
    IReadOnlyList<Point> Points,
    Colour? Stroke = null,
    double StrokeWidthMm = LineWidths.Outline,
    Colour? Fill = null) : SceneElement;

/// <summary>A circle about a centre.</summary>
public sealed record Circle(
    double CentreX,
    double CentreY,
    double Radius,
    Colour? Stroke = null,
    double StrokeWidthMm = LineWidths.Outline,
    Colour? Fill = null) : SceneElement;

/// <summary>A line along a route.</summary>
public sealed record Curve(Route Route, Colour Stroke, double WidthMm, DashKind Dash = DashKind.Continuous) : SceneElement;
