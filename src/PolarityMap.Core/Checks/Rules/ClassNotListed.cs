using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class ClassNotListed : Rule
{
    public override string Code => "F04";

    public override string Title => "fibre class not listed";

    public override string Why =>
        "The application is specified for certain fibre classes only, and the lowest class on the strand is not one of them. Its laser and " +
        "its wavelength are made for another fibre: a long-reach port needs single-mode, a short-reach port multimode. Over a few metres it " +
        "may even seem to work.";

    public override string Clears => "Use a fibre class that the application lists, or the application for the fibre that is there.";

    public override string Source => "The distance tables of IEEE 802.3 and of multi-source agreements, with the confidence of each row.";

    public override string Example => """
        plant: A long-reach port on multimode fibre
        types:
          aqua cord: { kind: A-to-B cord, fibre: OM4 }
        parts:
          SW-L: { kind: duplex interface, application: 10GBASE-LR }
          SW-R: { kind: duplex interface, application: 10GBASE-LR }
        runs:
          - SW-L/1, aqua cord 5 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: A long-reach port on single-mode fibre
        types:
          yellow cord: { kind: A-to-B cord, fibre: OS2 }
        parts:
          SW-L: { kind: duplex interface, application: 10GBASE-LR }
          SW-R: { kind: duplex interface, application: 10GBASE-LR }
        runs:
          - SW-L/1, yellow cord 5 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        Plant plant = context.Plant;
        var groups = new Dictionary<(SourcePlace, Application, FibreClass), PartGroup>();
        foreach (UnlistedPart unlisted in context.Fibres.Unlisted)
        {
            var key = (plant.Parts[unlisted.Part].Place, unlisted.Application, plant.Parts[unlisted.Part].Fibre!);
            if (!groups.TryGetValue(key, out PartGroup? group))
                groups[key] = group = new PartGroup();
            group.Add(unlisted.Part, unlisted.Strand);
        }

        foreach (((SourcePlace place, Application application, FibreClass fibre), PartGroup group) in groups)
        {
            string known = string.Join(", ", application.Limits(plant.Practice.Limits).Select(l => l.Fibre));
            findings.Add(new Finding(
                this,
                place,
                $"{application} is not specified for {fibre}, the fibre of {group.Names(plant)}",
                $"{application} on {known}",
                $"{application} on {fibre}")
            {
                Strands = group.Strands,
                At = group.Sites,
                Related = context.PlacesAlong(group.Strands),
            });
        }
    }
}
