using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class ForeignPart : Rule
{
    /// <summary>The most ports and parts named one by one.</summary>
    private const int MostListed = 4;

    public override string Code => "S01";

    public override string Title => "strand through a foreign part";

    public override string Why =>
        "A strand begins and ends at interfaces of one network and on its way passes a part or a port of another. The lamps are lit, so " +
        "nobody looks; but the separation is gone, and whoever re-patches the other network unplugs this one.";

    public override string Clears =>
        "Take the strand through parts of its own network, or correct the network that the document gives the part or the interface.";

    public override string Source => "Follows from the trace and the document's networks.";

    public override string Example => """
        plant: A lighting channel through the cassettes of sound
        networks:
          lighting: { colour: red }
          sound: { colour: blue }
        parts:
          LX-L: { kind: duplex interface, network: lighting }
          LX-R: { kind: duplex interface, network: lighting }
          SD-K-L: { kind: U1 cassette, network: sound }
          SD-T: { kind: Type-B trunk, network: sound, length: 30 m }
          SD-K-R: { kind: U1 cassette, network: sound }
        runs:
          - LX-L/1, A-to-B cord 2 m, SD-K-L/3
          - SD-K-L/rear, SD-T, SD-K-R/rear
          - SD-K-R/3, A-to-B cord 2 m, LX-R/1
        links:
          - LX-L/1 to LX-R/1

        """;

    public override string Repaired => """
        plant: A lighting channel through cassettes of its own
        networks:
          lighting: { colour: red }
          sound: { colour: blue }
        parts:
          LX-L: { kind: duplex interface, network: lighting }
          LX-R: { kind: duplex interface, network: lighting }
          LX-K-L: { kind: U1 cassette, network: lighting }
          LX-T: { kind: Type-B trunk, network: lighting, length: 30 m }
          LX-K-R: { kind: U1 cassette, network: lighting }
        runs:
          - LX-L/1, A-to-B cord 2 m, LX-K-L/3
          - LX-K-L/rear, LX-T, LX-K-R/rear
          - LX-K-R/3, A-to-B cord 2 m, LX-R/1
        links:
          - LX-L/1 to LX-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        // One network has no other to stray into.
        Plant plant = context.Plant;
        if (plant.Networks.Count < 2)
            return;
        foreach (Stray stray in context.Separation.Strands.Strays)
        {
            Part part = plant.Parts[stray.Part];
            string own = plant.Networks[stray.Network].Name;
            string foreign = plant.Networks[stray.Foreign].Name;
            string who = stray.Strands.Count == 1 ? $"the strand of {own} enters" : $"{stray.Strands.Count} strands of {own} enter";
            string what = part.PortNetworks.Count > 0 ? $"ports of {foreign} in {part.Name}"
                : part.IsInline ? $"{Article(PartWords.Noun(part))} of {foreign}"
                : $"{part.Name}, a part of {foreign},";
            findings.Add(new Finding(
                this,
                stray.Source,
                $"{who} {what} at {PartWords.List([.. stray.Entries.Select(p => plant.Address(p))], MostListed)}",
                $"strands of {own} in parts of {own}, or of no network",
                $"{own} in {PartWords.List(Passed(context, stray), MostListed)} of {foreign}")
            {
                Strands = stray.Strands,
                At = [new FindingSite(stray.Part)],
                Related = context.PlacesAlong(stray.Strands),
            });
        }
    }

    /// <summary>The foreign parts that the first of the strands passes, in its order.</summary>
    private static List<string> Passed(CheckContext context, Stray stray)
    {
        var stations = new List<Station>();
        context.Separation.Strands.Stations(stray.Strands[0], stations);
        var names = new List<string>();
        foreach (Station station in stations)
        {
            string name = context.Plant.Parts[station.Port.Part].Name;
            if (station.Network == stray.Foreign && !names.Contains(name))
                names.Add(name);
        }

        return names;
    }

    private static string Article(string noun) => noun[0] is 'a' or 'e' or 'i' or 'o' or 'u' ? $"an {noun}" : $"a {noun}";
}
