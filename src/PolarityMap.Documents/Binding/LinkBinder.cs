using System.Globalization;
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
        string text = scalar.Value;
        int cut = text.IndexOf(Between, StringComparison.Ordinal);
        if (cut < 0)
        {
            reader.Problems.Add(scalar.Place, $"'{PartNames.Shorten(text)}' is no link", Shape);
            return;
        }

        int second = cut + Between.Length;
        while (second < text.Length && text[second] == ' ')
            second++;
        string fromText = text[..cut].TrimEnd();
        string toText = text[second..];
        SourcePlace toPlace = scalar.PlaceAt(Math.Min(second, text.Length));
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

            plant.AddLink(new Link(a, b, scalar.Place));
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
        int lanes = 0;
        PortShape shape = part.Shape.Ports[port];
        for (int i = 0; i < shape.PositionCount; i++)
        {
            if (part.Shape.LaneAt(shape.FirstPosition + i) is { Direction: LaneDirection.Transmit })
                lanes++;
        }

        if (int.TryParse(address.Position, NumberStyles.None, CultureInfo.InvariantCulture, out int lane) && lane >= 1 && lane <= lanes && lanes > 1)
            return new LinkEnd(new PortRef(address.Part, port), lane);
        reader.Problems.Add(place, $"{part.Name}/{part.Shape.Ports[port].Name} has no lane '{PartNames.Shorten(address.Position)}' that a link could take", lanes > 1 ? $"a lane from 1 to {lanes}" : "the port without a lane");
        return null;
    }
}
