using PolarityMap.Core.Parts;

namespace PolarityMap.Cli.Output;

/// <summary>Draws a part's shape in text: its ports, and a line for each of its fibres.</summary>
internal static class ShapeText
{
    /// <summary>In one line: the ports and the first few of the pairs.</summary>
    public static string Line(Shape shape)
    {
        string near = Ports(shape, Side.Near);
        string far = Ports(shape, Side.Far);
        string ports = far.Length == 0 ? near : $"{near} ── {far}";
        string pairs = Pairs(shape);
        return pairs.Length == 0 ? ports : $"{ports}   {pairs}";
    }

    /// <summary>In full: each port with its connector, and each of its positions with what is behind it.</summary>
    public static IEnumerable<string> Lines(Shape shape)
    {
        foreach (PortShape port in shape.Ports)
        {
            if (port.Side == Side.Far)
                continue;
            yield return $"{port.Name}  ({Connector(port)})";
            for (int i = 0; i < port.PositionCount; i++)
            {
                string name = port.Face.PositionName(i + 1).PadLeft(4);
                yield return $"{name} {Behind(shape, port, i)}";
            }
        }

        foreach (PortShape port in shape.Ports.Where(p => p.Side == Side.Far))
        {
            yield return $"{port.Name}  ({Connector(port)})";
            for (int i = 0; i < port.PositionCount; i++)
            {
                if (shape.Inside[port.FirstPosition + i] < 0 && IsFibre(port, i + 1))
                    yield return $"{port.Face.PositionName(i + 1).PadLeft(4)} ── leads nowhere";
            }
        }
    }

    private static string Behind(Shape shape, PortShape port, int index)
    {
        int position = port.FirstPosition + index;
        if (shape.LaneAt(position) is { } lane)
            return $"{Arrow(lane.Direction)} {lane.Direction.Word()}, lane {lane.Number}{Light(lane)}";
        int partner = shape.Inside[position];
        if (partner < 0)
            return IsFibre(port, index + 1) && !shape.IsInterface ? "── leads nowhere" : "   no fibre";
        PortShape far = shape.Ports.Last(p => p.PositionCount > 0 && p.FirstPosition <= partner);
        return $"──── {Position(far, partner)}";
    }

    private static bool IsFibre(PortShape port, int position) => port.Base == 0 || ArrayBase.Of(port.Base).Used.Contains(position);

    private static string Position(PortShape port, int position) =>
        port.Face.PositionName(position - port.FirstPosition + 1) is { Length: > 0 } name ? $"{port.Name}:{name}" : port.Name;

    private static string Arrow(LaneDirection direction) => direction switch
    {
        LaneDirection.Transmit => "──>",
        LaneDirection.Receive => "<──",
        _ => "<─>",
    };

    private static string Light(Lane lane)
    {
        string sends = lane.Sends is { } s ? $", sends {s}" : "";
        return lane.Hears is { } h && lane.Hears != lane.Sends ? $"{sends}, hears {h}" : sends;
    }

    private static string Connector(PortShape port)
    {
        var words = new List<string> { port.Connector.Length > 0 && port.Face.Family != ConnectorFamily.Array ? $"{port.Face} {port.Connector}" : port.Face.ToString() };
        if (port.Face.OffsetKey)
            words.Add("offset key");
        if (port.Pinned is { } pinned)
            words.Add(pinned ? "pinned" : "unpinned");
        if (port.Keys is { } keys)
            words.Add($"keys {keys.Word()}");
        if (port.IsAdapter)
            words.Add("adapter");
        if (port.Polish is { } polish && polish != Polish.Flat)
            words.Add(polish.Word());
        return string.Join(", ", words);
    }

    /// <summary>The ports of one side, alike neighbours as a range: <c>1..6 [duplex]</c>.</summary>
    private static string Ports(Shape shape, Side side)
    {
        PortShape[] ports = [.. shape.Ports.Where(p => p.Side == side)];
        var pieces = new List<string>();
        for (int i = 0; i < ports.Length;)
        {
            int last = i;
            while (last + 1 < ports.Length && ports[last + 1].Face == ports[i].Face && ports[last + 1].Base == ports[i].Base)
                last++;
            string names = last == i ? ports[i].Name : $"{ports[i].Name}..{ports[last].Name}";
            string keys = ports[i].IsAdapter && ports[i].Keys is { } k ? $", keys {k.Word()}" : "";
            pieces.Add($"{names} [{Short(ports[i])}{keys}]");
            i = last + 1;
        }

        return string.Join(", ", pieces);
    }

    private static string Short(PortShape port) => port.Base > 0 ? ArrayBase.Of(port.Base).Words
        : port.Face.Family == ConnectorFamily.Array ? (port.Face.Rows > 1 ? $"{port.Face.Rows}x{port.Face.Columns}" : $"{port.Face.Columns}")
        : port.Face.ToString();

    /// <summary>The first pairs and the last one.</summary>
    private static string Pairs(Shape shape)
    {
        const int first = 3;
        var pairs = new List<string>();
        foreach (PortShape port in shape.Ports.Where(p => p.Side == Side.Near))
        {
            for (int i = 0; i < port.PositionCount; i++)
            {
                int partner = shape.Inside[port.FirstPosition + i];
                if (partner < 0)
                    continue;
                PortShape far = shape.Ports.Last(p => p.PositionCount > 0 && p.FirstPosition <= partner);
                string here = shape.Ports.Count == 2 ? port.Face.PositionName(i + 1) : $"{port.Name}:{port.Face.PositionName(i + 1)}";
                string there = shape.Ports.Count(p => p.Side == Side.Far) == 1 ? far.Face.PositionName(partner - far.FirstPosition + 1) : Position(far, partner);
                pairs.Add(here.Length + there.Length == 0 ? "one fibre" : $"{here}─{there}");
            }
        }

        return pairs.Count <= first + 1 ? string.Join("  ", pairs) : $"{string.Join("  ", pairs.Take(first))}  …  {pairs[^1]}";
    }
}
