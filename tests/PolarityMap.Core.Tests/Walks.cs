using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests;

/// <summary>Questions that tests ask of a traced plant, by address.</summary>
internal static class Walks
{
    /// <summary>The number of a position from its address <c>PART/PORT:POSITION</c>.</summary>
    public static int Position(this TracedPlant traced, string address)
    {
        int slash = address.IndexOf('/');
        int colon = address.IndexOf(':');
        int part = 0;
        while (traced.Plant.Parts[part].Name != address[..slash])
            part++;
        Shape shape = traced.Plant.Parts[part].Shape;
        int port = shape.FindPort(colon < 0 ? address[(slash + 1)..] : address[(slash + 1)..colon]);
        int position = 1;
        Assert.True(colon < 0 || shape.Ports[port].Face.TryParsePosition(address[(colon + 1)..], out position), address);
        return traced.Graph.PositionOf(new PortRef(part, port), position);
    }

    /// <summary>The addresses along the strand that ends at this address, from there to its other end.</summary>
    public static List<string> WalkFrom(this TracedPlant traced, string address)
    {
        int start = traced.Position(address);
        int[] positions = traced.Strands[traced.StrandOf(start)].ToArray();
        if (positions[0] != start)
            Array.Reverse(positions);
        Assert.Equal(start, positions[0]);
        return [.. positions.Select(traced.Address)];
    }

    /// <summary>The address at the other end of the strand that ends at this address.</summary>
    public static string Meets(this TracedPlant traced, string address) => traced.Address(traced.OtherEnd(traced.Position(address)));

    /// <summary>What a left port's "Tx" or "Rx" meets at the interface <c>R</c>: its port and role, or null.</summary>
    public static (int Port, string Role)? Answer(this TracedPlant traced, int port, string role)
    {
        int end = traced.OtherEnd(traced.Position($"L/{port}:{(role == "Tx" ? "A" : "B")}"));
        PositionPlace place = traced.Graph.PlaceOf(end);
        if (traced.Graph.LaneAt(end) is not { } lane || traced.Plant.Parts[place.Port.Part].Name != "R")
            return null;
        return (place.Port.Port + 1, lane.Direction == LaneDirection.Transmit ? "Tx" : "Rx");
    }
}
