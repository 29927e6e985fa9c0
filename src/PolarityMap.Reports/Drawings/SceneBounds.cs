using PolarityMap.Drawing.Scene;

namespace PolarityMap.Reports.Drawings;

/// <summary>The smallest upright rectangle around elements of a scene, in mm. Control points count, so curves lie inside it.</summary>
internal sealed class SceneBounds
{
    private double _left = double.PositiveInfinity;
    private double _top = double.PositiveInfinity;
    private double _right = double.NegativeInfinity;
    private double _bottom = double.NegativeInfinity;

    /// <summary>The rectangle; empty at the corner where nothing was added.</summary>
    public Area Area => _left > _right ? default : new Area(_left, _top, _right - _left, _bottom - _top);

    public void Add(SceneElement element)
    {
        switch (element)
        {
            case SceneGroup group:
                foreach (SceneElement child in group.Children)
                    Add(child);
                break;
            case Box box:
                Add(box.X, box.Y);
                Add(box.X + box.Width, box.Y + box.Height);
                break;
            case Line line:
                Add(line.X1, line.Y1);
                Add(line.X2, line.Y2);
                break;
            case Circle circle:
                Add(circle.CentreX - circle.Radius, circle.CentreY - circle.Radius);
                Add(circle.CentreX + circle.Radius, circle.CentreY + circle.Radius);
                break;
            case Polygon polygon:
                foreach (Point point in polygon.Points)
                    Add(point.X, point.Y);
                break;
            case Label label:
                Area extent = label.Extent();
                Add(extent.X, extent.Y);
                Add(extent.Right, extent.Bottom);
                break;
            case StrandPath strand:
                Add(strand.Route);
                break;
            case Curve curve:
                Add(curve.Route);
                break;
        }
    }

    private void Add(Route route)
    {
        Add(route.Start.X, route.Start.Y);
        foreach (RouteSegment segment in route.Segments)
        {
            Add(segment.Control1.X, segment.Control1.Y);
            Add(segment.Control2.X, segment.Control2.Y);
            Add(segment.End.X, segment.End.Y);
        }
    }

    private void Add(double x, double y)
    {
        _left = Math.Min(_left, x);
        _top = Math.Min(_top, y);
        _right = Math.Max(_right, x);
        _bottom = Math.Max(_bottom, y);
    }
}
