using System.Text;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Binding;

/// <summary>Turns runs into matings: consecutive stops are mated, chain by chain.</summary>
internal sealed class RunBinder(NodeReader reader, PlantBuilder plant, StopReader stops, Joints joints, InlineParts inline)
{
    private readonly StringBuilder _ends = new();

    /// <summary>A part of a chain with the ports by which the chain comes to it and goes on.</summary>
    private readonly record struct Station(int Part, int Entry, int Exit, int Position, Stop Stop)
    {
        public bool IsAdapter { get; init; }
    }

    public void Bind(YamlNode run)
    {
        List<Stop> all = stops.Read(run, out bool sound);
        if (!sound || !CheckKeyingWords(all))
            return;
        if (all.Count < 2)
        {
            reader.Problems.Add(run.Place, all.Count == 0 ? "this run is empty" : "this run has one stop, so it joins nothing", "two stops or more, such as 'SW-1/3, A-to-B cord 2 m, K-1/3'");
            return;
        }

        if (ChainCount(all) is not { } chains)
            return;
        foreach (InlineStop cord in all.OfType<InlineStop>())
        {
            if (!reader.Allowance.Parts(chains, cord.Shape, cord.Place))
                return;
        }

        int cords = all.Count(s => s is InlineStop);
        plant.Expect(chains * cords, chains * (all.Count - 1));
        inline.Expect(chains * cords);
        for (int chain = 0; chain < chains; chain++)
        {
            if (!BindChain(all, chain))
                return;
        }
    }

    /// <summary>A keying word says how the stops on both sides of it are mated, so it has one on either side.</summary>
    private bool CheckKeyingWords(List<Stop> all)
    {
        for (int i = 0; i < all.Count; i++)
        {
            if (all[i] is KeyingStop && (i == 0 || i == all.Count - 1 || all[i - 1] is KeyingStop))
            {
                reader.Problems.Add(all[i].Place, $"'{all[i].Text}' stands between two stops that are mated", "a stop before it and one after it");
                return false;
            }
        }

        return true;
    }

    /// <summary>How many chains a run has. Every named stop has as many addresses.</summary>
    private int? ChainCount(List<Stop> all)
    {
        AddressStop? first = all.OfType<AddressStop>().FirstOrDefault();
        if (first is null)
        {
            reader.Problems.Add(all[0].Place, "this run comes to no named part", "at least one port, such as SW-1/3");
            return null;
        }

        foreach (AddressStop stop in all.OfType<AddressStop>())
        {
            if (stop.Addresses.Count == first.Addresses.Count)
                continue;
            reader.Problems.Add(stop.Place, $"'{PartNames.Shorten(stop.Text)}' stands for {Count(stop)}, but '{PartNames.Shorten(first.Text)}' before it for {Count(first)}", "ranges of equal length, since they run in step");
            return null;
        }

        return first.Addresses.Count;
    }

    private static string Count(AddressStop stop) => stop.Addresses.Count == 1 ? "one address" : $"{stop.Addresses.Count} addresses";

    private bool BindChain(List<Stop> all, int chain)
    {
        Station? previous = null;
        KeyingStop? keys = null;
        for (int i = 0; i < all.Count; i++)
        {
            if (all[i] is KeyingStop word)
            {
                keys = word;
                continue;
            }

            if (StationOf(all, i, chain) is not { } station)
                return false;
            plant.Mention(station.Part);
            if (previous is { } from && !Join(from, station, keys))
                return false;
            previous = station;
            keys = null;
        }

        return true;
    }

    private bool Join(Station from, Station to, KeyingStop? keys)
    {
        if (from.IsAdapter && to.IsAdapter)
        {
            reader.Problems.Add(to.Stop.Place, "two adapters do not mate", "a cord or trunk between them");
            return false;
        }

        if (to.IsAdapter)
            return joints.Plug(new PortRef(from.Part, from.Exit), from.Position, from.Stop, new PortRef(to.Part, to.Entry), keys, to.Stop.Place);
        if (from.IsAdapter)
            return joints.Plug(new PortRef(to.Part, to.Entry), to.Position, to.Stop, new PortRef(from.Part, from.Exit), keys, to.Stop.Place);
        return joints.Mate(new PortRef(from.Part, from.Exit), from.Position, from.Stop, new PortRef(to.Part, to.Entry), to.Position, keys, to.Stop);
    }

    private Station? StationOf(List<Stop> all, int index, int chain)
    {
        Stop stop = all[index];
        bool isFirst = index == 0;
        bool isLast = index == all.Count - 1;
        if (stop is InlineStop cord)
        {
            int part = inline.Add(cord, Ends(all, index, chain));
            return Through(part, null, stop, isFirst, isLast);
        }

        Address address = ((AddressStop)stop).Addresses[chain];
        Shape shape = plant.Part(address.Part).Shape;
        return shape.IsCable
            ? Through(address.Part, address, stop, isFirst, isLast)
            : At(address, stop, isFirst || isLast);
    }

    /// <summary>The addresses of the neighbouring stops, for the name of a cord.</summary>
    private string Ends(List<Stop> all, int index, int chain)
    {
        _ends.Clear();
        AppendNeighbour(all, index, chain, -1);
        _ends.Append('~');
        AppendNeighbour(all, index, chain, 1);
        return _ends.ToString();
    }

    private void AppendNeighbour(List<Stop> all, int index, int chain, int step)
    {
        int i = index + step;
        while (i >= 0 && i < all.Count && all[i] is KeyingStop)
            i += step;
        if (i < 0 || i >= all.Count || all[i] is not AddressStop stop)
        {
            _ends.Append("open");
            return;
        }

        Address a = stop.Addresses[chain];
        _ends.Append(plant.Part(a.Part).Name);
        if (a.Port is not null)
            _ends.Append('/').Append(a.Port);
        if (a.Position is not null)
            _ends.Append(':').Append(a.Position);
    }

    /// <summary>A port of something that is not a cable: a run begins or ends there, unless it is an adapter.</summary>
    private Station? At(Address address, Stop stop, bool isEnd)
    {
        Part part = plant.Part(address.Part);
        int port = address.Port is null
            ? part.Shape.Ports.Count == 1 ? 0 : -1
            : PortIndex.Find(part.Shape, address.Port);
        if (port < 0)
        {
            if (address.Port is null)
                reader.Problems.Add(stop.Place, $"{part.Name} has several ports; say which", $"such as {part.Name}/{part.Shape.Ports[0].Name}");
            else
                reader.Unknown(stop.Place, $"{part.Name} has no port '{PartNames.Shorten(address.Port)}'", address.Port, [.. part.Shape.Ports.Select(p => p.Name)]);
            return null;
        }

        PortShape shape = part.Shape.Ports[port];
        if (!isEnd && !shape.IsAdapter)
        {
            reader.Problems.Add(stop.Place, $"a run ends when it comes to {part.Name}: it has no second side at {shape.Name}", "a new run that starts at its other side");
            return null;
        }

        int position = 0;
        if (address.Position is not null && (shape.IsAdapter || !shape.Face.TryParsePosition(address.Position, out position)))
        {
            reader.Problems.Add(stop.Place, $"{part.Name}/{shape.Name} has no position '{PartNames.Shorten(address.Position)}'", shape.IsAdapter ? "the port without a position, since a whole plug goes into an adapter" : shape.Face.Family == ConnectorFamily.Duplex ? "A or B" : $"1 to {shape.Face.Count}");
            return null;
        }

        return new Station(address.Part, port, port, position, stop) { IsAdapter = shape.IsAdapter };
    }

    /// <summary>A cable: entered at its near end and left at its far end, or the reverse when its far end is named first.</summary>
    private Station? Through(int part, Address? address, Stop stop, bool isFirst, bool isLast)
    {
        Shape shape = plant.Part(part).Shape;
        string name = plant.Part(part).Name;
        if (address?.Position is { } position)
        {
            reader.Problems.Add(stop.Place, $"a run takes a whole end of {name}, not position {PartNames.Shorten(position)} of it", $"an end such as {name}/{shape.Ports[0].Name}");
            return null;
        }

        // A port of its own name; else the number of a leg; else the only near and far end.
        int named = address?.Port is { } text ? shape.FindPort(text) : -1;
        int leg = 0;
        if (named >= 0)
            leg = shape.Ports[named].Leg;
        else if (address?.Port is { } number && !(int.TryParse(number, System.Globalization.NumberStyles.None, null, out leg) && HasLeg(shape, leg)))
        {
            reader.Unknown(stop.Place, $"{name} has no end or leg '{PartNames.Shorten(number)}'", number, [.. shape.Ports.Select(p => p.Name)]);
            return null;
        }

        Side entrySide = named >= 0 && !isFirst ? shape.Ports[named].Side : named >= 0 ? Other(shape.Ports[named].Side) : Side.Near;
        int entry = !isFirst && named >= 0 ? named : isFirst ? -1 : End(shape, entrySide, leg);
        int exit = isFirst && named >= 0 ? named : isLast ? -1 : End(shape, Other(entrySide), leg);
        if ((entry < 0 && !isFirst) || (exit < 0 && !isLast))
        {
            reader.Problems.Add(stop.Place, $"{name} has several legs; say which", $"such as {name}/1 or {name}/{shape.Ports[^1].Name}");
            return null;
        }

        return new Station(part, entry, exit, 0, stop);
    }

    private static bool HasLeg(Shape shape, int leg)
    {
        foreach (PortShape port in shape.Ports)
        {
            if (port.Leg == leg && leg > 0)
                return true;
        }

        return false;
    }

    private static Side Other(Side side) => side == Side.Near ? Side.Far : Side.Near;

    /// <summary>The one port of a side with this leg, or without legs; -1 when there is none or several.</summary>
    private static int End(Shape shape, Side side, int leg)
    {
        int found = -1;
        for (int i = 0; i < shape.Ports.Count; i++)
        {
            PortShape port = shape.Ports[i];
            if (port.Side != side || (leg > 0 && port.Leg != leg && port.Leg != 0))
                continue;
            if (found >= 0)
                return -1;
            found = i;
        }

        return found;
    }
}
