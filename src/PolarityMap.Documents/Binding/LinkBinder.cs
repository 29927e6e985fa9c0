using System.Globalization;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Binding;

/// <summary>Reads links such as <c>SW-L/1..6 to SW-R/1..6</c>.</summary>
internal sealed class LinkBinder(NodeReader reader, PlantBuilder plant, AddressReader addresses)
{
    private const string Between = " to ";
    private const string Shape = "two interface ports, such as 'SW-1/3 to SW-2/3'";

    public void Bind(YamlNode node)
    {
        if (reader.Text(node, "a link", Shape) is not { } scalar)
            return;
        if (TwoAddresses.Split(reader, scalar, Between, ($"'{PartNames.Shorten(scalar.Value)}' is no link", Shape), t => addresses.Reads(t, scalar.Place)) is not var (fromText, toText, second))
            return;
        SourcePlace toPlace = scalar.PlaceAt(second);
        if (addresses.Read(fromText, scalar.PlaceAt) is not { } from || addresses.Read(toText, i => scalar.PlaceAt(second + i)) is not { } to)
            return;
        if (from.Count != to.Count)
        {
            reader.Problems.Add(toPlace, $"'{PartNames.Shorten(toText)}' stands for {to.Count} and '{PartNames.Shorten(fromText)}' for {from.Count}", "ranges of equal length, since they run in step");
            return;
        }

        for (int i = 0; i < from.Count; i++)
        {
            if (End(from[i], scalar.Place) is not { } a || End(to[i], toPlace) is not { } b)
                return;
            if (a == b)
            {
                reader.Problems.Add(toPlace, $"a link joins two ports, and both of these are {PartNames.Shorten(fromText)}", Shape);
                return;
            }

            plant.AddLink(a, b, scalar.Place);
        }
    }

    private LinkEnd? End(Address address, SourcePlace place)
    {
        Part part = plant.Parts[address.Part];
        if (!part.Shape.IsInterface)
        {
            reader.Problems.Add(place, $"a link joins interfaces, and {part.Name} is {NodeReader.A(part.Kind)}", "a port of an interface");
            return null;
        }

        int port = address.Port is null ? (part.Shape.Ports.Count == 1 ? 0 : -1) : PortIndex.Find(part.Shape, address.Port);
        if (port < 0)
        {
            if (address.Port is null)
                reader.Problems.Add(place, $"{part.Name} has several ports; say which", $"such as {part.Name}/1");
            else
                reader.Unknown(place, $"{part.Name} has no port '{PartNames.Shorten(address.Port)}'", address.Port, [.. part.Shape.Ports.Select(p => p.Name)]);
            return null;
        }

        if (address.Position is null)
            return new LinkEnd(new PortRef(address.Part, port), 0);
        PortShape shape = part.Shape.Ports[port];
        string name = $"{part.Name}/{shape.Name}";
        if (shape.Groups == 0)
        {
            NoLink(place, part, shape, name);
            return null;
        }

        if (int.TryParse(address.Position, NumberStyles.None, CultureInfo.InvariantCulture, out int group) && group >= 1 && group <= shape.Groups)
            return new LinkEnd(new PortRef(address.Part, port), group);
        reader.Problems.Add(place, $"{name} has no link '{PartNames.Shorten(address.Position)}'", $"a link from 1 to {shape.Groups}");
        return null;
    }

    /// <summary>A port that is not split is one link, however many lanes it has.</summary>
    private void NoLink(SourcePlace place, Part part, PortShape shape, string name)
    {
        int lanes = 0;
        for (int i = 0; i < shape.PositionCount; i++)
        {
            if (part.Shape.LaneAt(shape.FirstPosition + i) is { Direction: not LaneDirection.Receive })
                lanes++;
        }

        if (lanes < 2)
            reader.Problems.Add(place, $"{name} is one link, with nothing to split off", "the port alone");
        else if (Mode(part, shape, lanes) is { } mode)
            reader.Problems.Add(place, $"{name} is one link of {lanes} lanes; write breakout: {mode} at {part.Name} to split it");
        else
            reader.Problems.Add(place, $"{name} is one link of {lanes} lanes, and no breakout of it is known", "the port alone");
    }

    /// <summary>The breakout that splits a port the furthest, or null when none does.</summary>
    private static string? Mode(Part part, PortShape shape, int lanes)
    {
        string? mode = null;
        int most = 0;
        if (shape.Application is { } application)
        {
            foreach (Breakout breakout in Breakouts.Of(application.Name))
            {
                if (breakout.Groups > most)
                    (mode, most) = (breakout.Name, breakout.Groups);
            }

            return mode;
        }

        foreach (string word in PartKinds.Find(part.Kind)?.Attributes.FirstOrDefault(a => a.Name == "breakout")?.Words ?? [])
        {
            int groups = int.Parse(word.AsSpan(0, word.Length - 1), NumberStyles.None, CultureInfo.InvariantCulture);
            if (lanes % groups == 0 && groups > most)
                (mode, most) = (word, groups);
        }

        return mode;
    }
}
