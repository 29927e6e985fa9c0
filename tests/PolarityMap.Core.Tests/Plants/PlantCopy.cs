using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Tests.Plants;

/// <summary>A plant's parts and matings in a builder, for tests that add links or spoil it, without its links.</summary>
internal static class PlantCopy
{
    public static PlantBuilder Of(Plant plant)
    {
        var builder = new PlantBuilder();
        foreach (Network network in plant.Networks)
            builder.AddNetwork(network);
        foreach (Part part in plant.Parts)
            builder.AddPart(part);
        foreach (Mating mating in plant.Matings)
            builder.AddMating(mating);
        foreach (OpenPlug plug in plant.OpenPlugs)
            builder.AddOpenPlug(plug);
        return builder;
    }

    /// <summary>Every port of every interface.</summary>
    public static List<PortRef> InterfacePorts(Plant plant)
    {
        var ports = new List<PortRef>();
        for (int p = 0; p < plant.Parts.Count; p++)
        {
            for (int n = 0; plant.Parts[p].Shape.IsInterface && n < plant.Parts[p].Shape.Ports.Count; n++)
                ports.Add(new PortRef(p, n));
        }

        return ports;
    }
}
