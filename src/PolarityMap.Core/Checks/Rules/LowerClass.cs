using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class LowerClass : Rule
{
    public override string Code => "F03";

    public override string Title => "lower class in the way";

    public override Severity Severity => Severity.Warning;

    public override string Why =>
        "A part is of a lower fibre class than the rest of its strand, and the channel counts as the lower class: what the better fibre was " +
        "bought for is not there. Light passes, so nobody notices before the rate is raised. The rest is the class of most parts on the " +
        "strand, or that of its longest cable if that is better.";

    public override string Clears => "Exchange the part for one of the class of the rest, or state its fibre if the document has it wrong.";

    public override string Source => "Classes: ISO/IEC 11801-1, two public sources for their bandwidths. That the lowest class counts: common practice.";

    public override string Example => """
        plant: An OM3 cord in an OM4 channel
        types:
          OM4 cord: { kind: A-to-B cord, fibre: OM4 }
          OM3 cord: { kind: A-to-B cord, fibre: OM3 }
        parts:
          SW-L: { kind: duplex interface, application: 10GBASE-SR }
          SW-R: { kind: duplex interface, application: 10GBASE-SR }
          PANEL: { kind: duplex panel, ports: 2 }
        runs:
          - SW-L/1, OM3 cord 2 m, PANEL/1, OM4 cord 30 m, PANEL/2, OM4 cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: OM4 from end to end
        types:
          OM4 cord: { kind: A-to-B cord, fibre: OM4 }
        parts:
          SW-L: { kind: duplex interface, application: 10GBASE-SR }
          SW-R: { kind: duplex interface, application: 10GBASE-SR }
          PANEL: { kind: duplex panel, ports: 2 }
        runs:
          - SW-L/1, OM4 cord 2 m, PANEL/1, OM4 cord 30 m, PANEL/2, OM4 cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        Plant plant = context.Plant;
        var parts = new Dictionary<(SourcePlace, FibreClass, FibreClass), (PartGroup Group, List<Application> Applications)>();
        foreach (LowerPart lower in context.Fibres.Lower)
        {
            var key = (plant.Parts[lower.Part].Place, plant.Parts[lower.Part].Fibre!, lower.Reference);
            if (!parts.TryGetValue(key, out var found))
                parts[key] = found = (new PartGroup(), []);
            found.Group.Add(lower.Part, lower.Strand);
            found.Applications.AddRange(lower.Applications.Where(a => !found.Applications.Contains(a)));
        }

        foreach (((SourcePlace place, FibreClass fibre, FibreClass reference), (PartGroup group, List<Application> applications)) in parts)
        {
            string effects = string.Concat(applications.Select(a => Effect(a, plant.Practice.Limits, fibre, reference)));
            findings.Add(new Finding(
                this,
                place,
                $"{group.Names(plant)} of {fibre} {(group.Count == 1 ? "lies" : "lie")} in a channel of {reference}",
                $"{reference} throughout",
                $"the channel counts as {fibre}{effects}")
            {
                Strands = group.Strands,
                At = group.Sites,
                Related = context.PlacesAlong(group.Strands),
            });
        }
    }

    /// <summary>What the lower class costs an application, or nothing where the two distances are alike or not on record.</summary>
    private static string Effect(Application application, LimitProfile limits, FibreClass fibre, FibreClass reference) =>
        application.Limit(limits, fibre.Name)?.Distance is { } less && application.Limit(limits, reference.Name)?.Distance is { } full && less != full
            ? $"; {application} reaches {less} instead of {full}"
            : "";
}
