using PolarityMap.Core.Planning;

namespace PolarityMap.Documents.Planning;

/// <summary>
/// Divides chains in step into as few lines as ranges allow: each stop of a line is one address, such as <c>K[1..4]/1..6</c>.
/// </summary>
internal static class InStep
{
    /// <summary>The stretches, each as where it begins and how long it is, in order.</summary>
    /// <param name="stops">Stops with equally many ports.</param>
    public static IEnumerable<(int Start, int Length)> Stretches(IReadOnlyList<PlannedStop> stops)
    {
        int count = stops[0].Ports.Count;
        for (int start = 0; start < count;)
        {
            (int First, int Parts)[] reach = [.. stops.Select(s => Reach(s.Ports, start))];
            int length = reach.Min(r => r.First * r.Parts);
            while (length > 1 && !reach.All(r => length <= r.First || length % r.First == 0))
                length--;
            yield return (start, length);
            start += length;
        }
    }

    /// <summary>The address of a stretch of a stop.</summary>
    public static string Address(PlannedStop stop, int start, int length)
    {
        PlannedPort from = stop.Ports[start], to = stop.Ports[start + length - 1];
        string name = stop.Family!.Name.Slice(from.Index, to.Index - from.Index + 1).ToString();
        if (from.Port == 0)
            return stop.PortName.Length == 0 ? name : $"{name}/{stop.PortName}";
        return from.Port == to.Port ? $"{name}/{from.Port}" : $"{name}/{from.Port}..{to.Port}";
    }

    /// <summary>
    /// From a port on: how many ports of the same part follow each other, and through how many parts in number order just these
    /// ports go on. A range stands for that many, for a multiple of whole parts, or for less than the first.
    /// </summary>
    private static (int First, int Parts) Reach(IReadOnlyList<PlannedPort> ports, int start)
    {
        int first = 1;
        while (start + first < ports.Count && ports[start + first] == ports[start] with { Port = ports[start].Port + first } && ports[start].Port > 0)
            first++;
        int parts = 1;
        while (start + ((parts + 1) * first) <= ports.Count && IsAgain(ports, start, first, parts))
            parts++;
        return (first, parts);
    }

    private static bool IsAgain(IReadOnlyList<PlannedPort> ports, int start, int first, int parts)
    {
        for (int i = 0; i < first; i++)
        {
            if (ports[start + (parts * first) + i] != new PlannedPort(ports[start].Index + parts, ports[start].Port == 0 ? 0 : ports[start].Port + i))
                return false;
        }

        return true;
    }
}
