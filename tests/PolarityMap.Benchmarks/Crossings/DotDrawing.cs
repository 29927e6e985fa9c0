using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using PolarityMap.Acceptance.Svg;
using PolarityMap.Benchmarks.Drawing;

namespace PolarityMap.Benchmarks.Crossings;

/// <summary>A graph as Graphviz's <c>dot</c> draws it.</summary>
internal static class DotDrawing
{
    private const int PiecesOfACurve = 16;
    private const double MmOfAPoint = 25.4 / 72;
    private const double MmOfAnInch = 25.4;

    /// <summary>Number of pairs of edges of different strands that cross outside every node. A pair counts once, however often it crosses.</summary>
    /// <exception cref="InvalidOperationException">dot cannot draw the graph.</exception>
    public static int Crossings(DotGraph graph)
    {
        using JsonDocument drawing = JsonDocument.Parse(Draw(graph.ToString()));
        var edges = new Dictionary<int, List<Spot[]>>();
        int count = 0;
        foreach (JsonElement edge in List(drawing, "edges"))
        {
            int strand = int.Parse(edge.GetProperty("strand").GetString()!);
            if (!edges.TryGetValue(strand, out List<Spot[]>? own))
                edges[strand] = own = [];
            own.Add(Flatten(edge.GetProperty("pos").GetString()!));
            count++;
        }

        SelfCheck.Demand(count == graph.Edges, "dot drew every edge");
        Rect[] nodes = [.. List(drawing, "objects").Select(Node)];
        List<DrawnStrand> strands = [.. edges.Select(e => new DrawnStrand(e.Key, "", e.Value, []))];
        return Geometry.Crossings(strands)
            .Where(c => !Array.Exists(nodes, n => n.Contains(c.At.X, c.At.Y)))
            .Select(c => (c.A.Strand.Number, c.A.Route, c.B.Strand.Number, c.B.Route))
            .Distinct()
            .Count();
    }

    private static IEnumerable<JsonElement> List(JsonDocument drawing, string name) =>
        drawing.RootElement.TryGetProperty(name, out JsonElement list) ? list.EnumerateArray() : [];

    private static string Draw(string graph)
    {
        var start = new ProcessStartInfo("dot", "-Tjson") { RedirectStandardInput = true, RedirectStandardOutput = true };
        using Process dot = Process.Start(start)!;
        dot.StandardInput.Write(graph);
        dot.StandardInput.Close();
        string drawing = dot.StandardOutput.ReadToEnd();
        dot.WaitForExit();
        return dot.ExitCode == 0 ? drawing : throw new InvalidOperationException("dot cannot draw the graph");
    }

    private static Rect Node(JsonElement node)
    {
        Spot middle = SpotOf(node.GetProperty("pos").GetString()!);
        double width = Number(node.GetProperty("width").GetString()!) * MmOfAnInch;
        double height = Number(node.GetProperty("height").GetString()!) * MmOfAnInch;
        return new Rect(middle.X - (width / 2), middle.Y - (height / 2), width, height);
    }

    /// <summary>The corner points of a chain of cubics: a start, then three points for each.</summary>
    private static Spot[] Flatten(string spline)
    {
        Spot[] points = [.. spline.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(SpotOf)];
        SelfCheck.Demand(points.Length % 3 == 1, "dot draws an edge as one chain of cubics");
        var flat = new List<Spot> { points[0] };
        for (int i = 0; i + 3 < points.Length; i += 3)
        {
            for (int k = 1; k <= PiecesOfACurve; k++)
            {
                double t = (double)k / PiecesOfACurve, s = 1 - t;
                double a = s * s * s, b = 3 * s * s * t, c = 3 * s * t * t, d = t * t * t;
                flat.Add(new Spot(
                    (a * points[i].X) + (b * points[i + 1].X) + (c * points[i + 2].X) + (d * points[i + 3].X),
                    (a * points[i].Y) + (b * points[i + 1].Y) + (c * points[i + 2].Y) + (d * points[i + 3].Y)));
            }
        }

        return [.. flat];
    }

    private static Spot SpotOf(string pair)
    {
        int comma = pair.IndexOf(',');
        return new Spot(Number(pair[..comma]) * MmOfAPoint, Number(pair[(comma + 1)..]) * MmOfAPoint);
    }

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
