using System.Globalization;

namespace PolarityMap.Acceptance.Svg;

/// <summary>Reads path data of absolute M, L, H and C, and cuts each curve into short straight pieces.</summary>
internal static class SvgPath
{
    private const int Pieces = 8;

    public static Spot[] Flatten(string data)
    {
        var points = new List<Spot>();
        int at = 0;
        while (at < data.Length)
        {
            char command = data[at++];
            int end = at;
            while (end < data.Length && data[end] is not ('M' or 'L' or 'H' or 'C'))
                end++;
            double[] n = [.. data[at..end].Split([' ', ','], StringSplitOptions.RemoveEmptyEntries).Select(t => double.Parse(t, CultureInfo.InvariantCulture))];
            at = end;
            switch (command)
            {
                case 'M' when points.Count == 0 && n.Length == 2:
                case 'L' when points.Count > 0 && n.Length == 2:
                    points.Add(new Spot(n[0], n[1]));
                    break;
                case 'H' when points.Count > 0 && n.Length == 1:
                    points.Add(points[^1] with { X = n[0] });
                    break;
                case 'C' when points.Count > 0 && n.Length == 6:
                    Curve(points, points[^1], new Spot(n[0], n[1]), new Spot(n[2], n[3]), new Spot(n[4], n[5]));
                    break;
                default:
                    throw new FormatException($"Path data of another form: '{data}'.");
            }
        }

        return [.. points];
    }

    /// <summary>Boxes that share one path: each goes right, down, left, and closes.</summary>
    public static IEnumerable<Rect> Boxes(string data)
    {
        foreach (string box in data.Split('z', StringSplitOptions.RemoveEmptyEntries))
        {
            double[] n = [.. box.Split(['M', ',', 'h', 'v'], StringSplitOptions.RemoveEmptyEntries).Select(t => double.Parse(t, CultureInfo.InvariantCulture))];
            if (n.Length != 5 || n[2] != -n[4])
                throw new FormatException($"Not a box: '{box}'.");
            yield return new Rect(n[0], n[1], n[2], n[3]);
        }
    }

    private static void Curve(List<Spot> points, Spot a, Spot b, Spot c, Spot d)
    {
        for (int i = 1; i <= Pieces; i++)
        {
            double t = (double)i / Pieces, s = 1 - t;
            double wa = s * s * s, wb = 3 * s * s * t, wc = 3 * s * t * t, wd = t * t * t;
            points.Add(new Spot((wa * a.X) + (wb * b.X) + (wc * c.X) + (wd * d.X), (wa * a.Y) + (wb * b.Y) + (wc * c.Y) + (wd * d.Y)));
        }
    }
}
