using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>A plant between two plants, built, traced and checked.</summary>
/// <param name="Report">What the checker says of it.</param>
/// <param name="Numbers">For each of its parts the number in the difference.</param>
public sealed record Stage(CheckReport Report, IReadOnlyList<int> Numbers)
{
    /// <summary>Builds a stage and proves it.</summary>
    /// <param name="difference">The parts.</param>
    /// <param name="title">The plant's title.</param>
    /// <param name="practice">What it goes by.</param>
    /// <param name="parts">Which parts are there.</param>
    /// <param name="joints">What is plugged in.</param>
    /// <param name="links">What is meant to be up.</param>
    public static Stage Of(GrowthDifference difference, PlantTitle title, PlantPractice practice, IEnumerable<int> parts, IEnumerable<Joint> joints, IEnumerable<Link> links)
    {
        var builder = new PlantBuilder { Title = title, Practice = practice };
        int[] there = [.. parts];
        var used = there.SelectMany(p => difference.Parts[p].PortNetworks.Append(difference.Parts[p].Network)).ToHashSet();
        for (int n = 0; n < difference.Networks.Count; n++)
            builder.AddNetwork(used.Contains(n) ? difference.Networks[n] : new Network(difference.Networks[n].Name, null, default));
        var index = new Dictionary<int, int>();
        var number = new Dictionary<Part, int>(ReferenceEqualityComparer.Instance);
        foreach (int part in there)
        {
            Part own = difference.Parts[part] with { };
            number.Add(own, part);
            index.Add(part, builder.AddPart(own));
        }

        PortRef At(PortRef port) => port with { Part = index[port.Part] };
        foreach (Joint joint in joints)
        {
            if (joint.IsOpen)
                builder.AddOpenPlug(new OpenPlug(At(joint.A), At(joint.Through!.Value), default));
            else
                builder.AddMating(At(joint.A), joint.PositionOfA, At(joint.B), joint.PositionOfB, joint.Through is { } through ? At(through) : null, joint.Keys, default);
        }

        foreach (Link link in links)
            builder.AddLink(link.From with { Port = At(link.From.Port) }, link.To with { Port = At(link.To.Port) }, default);
        Plant plant = builder.Build();
        return new Stage(CheckReport.Of(TracedPlant.Of(plant)), [.. plant.Parts.Select(p => number[p])]);
    }

    /// <summary>For each link whether it is proven.</summary>
    public bool[] Proven() => [.. Report.Context.Outcomes.All.Select(Report.IsProven)];

    /// <summary>The joints that carry each link.</summary>
    internal HashSet<Joint>[] Ways() =>
        [.. LinkWay.Of(Report).Select(w => w.Matings.Select(m => Joint.Of(m, p => p with { Part = Numbers[p.Part] })).ToHashSet())];
}
