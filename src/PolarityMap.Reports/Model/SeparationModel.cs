using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Reports.Model;

/// <summary>How the networks keep apart.</summary>
internal static class SeparationModel
{
    public static ModelObject Of(ReportInput input)
    {
        SeparationReport report = SeparationReport.Of(input.Check.Context, input.Check.Findings);
        Plant plant = input.Plant;
        bool several = plant.Networks.Count > 1;
        return new ModelObject()
            .Text("verdict", report.Verdict())
            .List("networks", plant.Networks.Select(n => Network(n)))
            .Text("totals", several ? report.Totals() : null)
            .List("shared", several ? report.Separation.Sharing.Groups.Select(g => Shared(plant, g)) : [])
            .List("fits", several ? report.Separation.Fits.Select(t => Fits(plant, t)) : []);
    }

    private static ModelObject Network(Network network) => new ModelObject()
        .Text("name", network.Name).Text("colour", network.Colour)
        .Text("key", network.Key is null ? "plain" : network.PlainFits ? $"{network.Key}, and plain fits" : network.Key)
        .Text("may_share", network.MayShare is not { } may ? "not stated" : may.Count == 0 ? "nothing" : string.Join(", ", may.Select(p => p.Word())));

    private static ModelObject Shared(Plant plant, SharedGroup group)
    {
        string astray = group.Astray.Count == 0 ? "" : $"{Names(plant, group.Astray)} astray";
        string networks = Names(plant, group.Networks);
        return new ModelObject()
            .Text("place", group.Place.Word()).Text("which", NameSpans.Of([.. group.Uses.Select(u => Name(plant, u))])).Number("number", group.Uses.Count)
            .Text("networks", networks.Length > 0 && astray.Length > 0 ? $"{networks}; {astray}" : networks + astray)
            .Text("verdict", group.Verdict == SharingVerdict.Against ? $"against the policy of {Names(plant, group.ForbiddenBy)}" : group.Verdict.Word())
            .Flag("amiss", group.Verdict is SharingVerdict.Against or SharingVerdict.Astray);
    }

    private static ModelObject Fits(Plant plant, FitTable table) => new ModelObject()
        .Text("kind", table.Kind).Text("parts", NameSpans.Of([.. table.Parts.Select(p => plant.Parts[p].Name)])).Number("alike", table.Parts.Count)
        .Texts("networks", table.Networks.Select(n => plant.Networks[n].Name))
        .Flag("amiss", table.LetsForeignCordsIn)
        .List("ports", table.Ports.Select(p => new ModelObject()
            .Text("name", p.Name).Text("network", p.Network < 0 ? "none" : plant.Networks[p.Network].Name).Text("key", p.Key ?? "plain")
            .List("cords", p.Cords.Select(c => new ModelObject()
                .Text("word", c.Word()).Flag("amiss", p.Network >= 0 && (c is CordFit.Fits or CordFit.OwnBlocked))))));

    private static string Names(Plant plant, IReadOnlyList<int> networks) => string.Join(", ", networks.Select(n => plant.Networks[n].Name));

    private static string Name(Plant plant, SharedUse use) => use.Port is not { } port ? plant.Parts[use.Part].Name
        : use.Mating is { } mating ? $"{plant.Address(mating.A)} to {plant.Address(mating.B)}"
        : plant.Address(port);
}
