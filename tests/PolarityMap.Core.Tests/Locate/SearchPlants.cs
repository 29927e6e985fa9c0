using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Tests.Locate;

/// <summary>Small plants to search in, and what an installer first sees there.</summary>
internal static class SearchPlants
{
    public static readonly IReadOnlyList<string> Names = ["cords", "method", "zone"];

    public static TracedPlant Of(string name) => name switch
    {
        "cords" => new Bench().Add("L", "duplex interface", v => v.Set("ports", 3)).Add("R", "duplex interface", v => v.Set("ports", 3))
            .Cord("C1", "L/1", "A-to-B", "R/1").Cord("C2", "L/2", "A-to-B", "R/2").Cord("C3", "L/3", "A-to-B", "R/3").Trace(),
        "method" => Channels.Method("B", 8).Trace(),
        _ => new Bench().Add("L", "duplex interface", v => v.Set("ports", 2)).Add("M", "duplex interface", v => v.Set("ports", 2))
            .Add("K", "cassette", v => v.Set("wiring", "U1").Set("base", 8)).Add("Z", "cassette", v => v.Set("wiring", "U1").Set("base", 8))
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("base", 8)).Add("R", "duplex interface", v => v.Set("ports", 4))
            .Cord("C1", "L/1", "A-to-B", "K/1").Cord("C2", "M/1", "A-to-B", "K/2").Mate("K/rear", "T/near").Mate("T/far", "Z/rear")
            .Cord("D1", "Z/1", "A-to-B", "R/1").Cord("D2", "Z/2", "A-to-B", "R/2").Trace(),
    };

    /// <summary>The lamps of all ports that something is plugged into, where they tell one thing.</summary>
    public static IEnumerable<Observation> Lamps(DeviationContext context, IReadOnlyList<Deviation> truth)
    {
        var site = new RebuiltSite(context, truth);
        for (int part = 0; part < context.Plant.Parts.Count; part++)
        {
            for (int port = 0; port < context.Plant.Parts[part].Shape.Ports.Count && context.Plant.Parts[part].Shape.IsInterface; port++)
            {
                var at = new PortRef(part, port);
                if (context.Plugs.At(at) >= 0 && site.Lamp(at) is { } on)
                    yield return new LampSeen(at, on);
            }
        }
    }
}
