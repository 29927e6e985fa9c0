using System.Text;

namespace PolarityMap.Benchmarks.Drawing;

/// <summary>
/// A plant of any size as a document: connectivity method A with trunks of eight 12-fibre legs (TIA-568.3). Switches of 24
/// duplex ports, A-to-B cords, straight cassettes of 6 duplex ports, Type-A trunks, straight cassettes, A-to-A cords,
/// switches. Every strand passes 7 parts and 6 matings.
/// </summary>
internal static class CampusDocument
{
    public const int MatingsOfAStrand = 6;
    private const int PortsOfASwitch = 24;
    private const int PortsOfACassette = 6;
    private const int LegsOfATrunk = 8;
    private const int StrandsOfAPort = 2;

    /// <param name="strands">Number of strands, a multiple of those of a switch, 48.</param>
    public static string Of(int strands)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(strands % (PortsOfASwitch * StrandsOfAPort), 0);
        int ports = strands / StrandsOfAPort;
        int switches = ports / PortsOfASwitch;
        int cassettes = ports / PortsOfACassette;
        int full = cassettes / LegsOfATrunk;
        int rest = cassettes % LegsOfATrunk;
        var text = new StringBuilder();
        text.Append($"plant: Campus of {strands} strands\n");
        text.Append("date: 2026-03-01\n");
        text.Append("defaults: { fibre: OM4 }\n");
        text.Append("parts:\n");
        text.Append($"  SW-L[1..{switches}]: {{ kind: duplex interface, ports: {PortsOfASwitch} }}\n");
        text.Append($"  SW-R[1..{switches}]: {{ kind: duplex interface, ports: {PortsOfASwitch} }}\n");
        text.Append($"  K-L[1..{cassettes}]: {{ kind: straight cassette, base: 12 }}\n");
        text.Append($"  K-R[1..{cassettes}]: {{ kind: straight cassette, base: 12 }}\n");
        text.Append($"  T[1..{full}]: {{ kind: Type-A trunk, base: 12, legs: {LegsOfATrunk}, length: 60 m }}\n");
        if (rest > 0)
            text.Append($"  T{full + 1}: {{ kind: Type-A trunk, base: 12, legs: {LegsOfATrunk}, spare: {rest + 1}..{LegsOfATrunk}, length: 60 m }}\n");
        text.Append("runs:\n");
        text.Append($"  - SW-L[1..{switches}]/1..{PortsOfASwitch}, A-to-B cord 2 m, K-L[1..{cassettes}]/1..{PortsOfACassette}\n");
        text.Append($"  - K-L[1..{full * LegsOfATrunk}]/rear, T[1..{full}]/1..{LegsOfATrunk}, K-R[1..{full * LegsOfATrunk}]/rear\n");
        if (rest > 0)
            text.Append($"  - K-L[{(full * LegsOfATrunk) + 1}..{cassettes}]/rear, T{full + 1}/1..{rest}, K-R[{(full * LegsOfATrunk) + 1}..{cassettes}]/rear\n");
        text.Append($"  - K-R[1..{cassettes}]/1..{PortsOfACassette}, A-to-A cord 2 m, SW-R[1..{switches}]/1..{PortsOfASwitch}\n");
        text.Append("links:\n");
        text.Append($"  - SW-L[1..{switches}]/1..{PortsOfASwitch} to SW-R[1..{switches}]/1..{PortsOfASwitch}\n");
        return text.ToString();
    }
}
