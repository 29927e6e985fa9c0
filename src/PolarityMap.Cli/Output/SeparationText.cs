using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Cli.Output;

/// <summary>How the networks keep apart, for people: the legend, what is shared, which cords fit, and what was found.</summary>
internal sealed class SeparationText(CommandContext context)
{
    private readonly Paint _paint = new(context.Colour);

    public void Write(SeparationReport report)
    {
        TextWriter output = context.Out;
        output.WriteLine(_paint.Strong(report.Plant.Title.Title));
        if (report.Plant.Networks.Count > 0)
            WriteNetworks(report.Plant);
        if (report.Plant.Networks.Count > 1)
        {
            WriteShared(report);
            foreach (FitTable table in report.Separation.Fits)
                WriteFits(report.Plant, table);
        }

        if (report.Findings.Count > 0)
            WriteFindings(report.Findings);
        output.WriteLine();
        string verdict = report.Verdict();
        output.WriteLine(report.Errors > 0 ? _paint.Error(verdict) : report.Warnings > 0 ? _paint.Warning(verdict) : _paint.Good(verdict));
        if (report.Findings.Count > 0)
            output.WriteLine(_paint.Faint("'polaritymap check' shows the strands, 'polaritymap explain CODE' tells why a finding matters."));
    }

    private void Head(string text)
    {
        context.Out.WriteLine();
        context.Out.WriteLine(_paint.Strong(text));
    }

    private void WriteNetworks(Plant plant)
    {
        Head("Networks");
        var table = new TextTable("  ", "network", "colour", "key", "may share");
        foreach (Network network in plant.Networks)
        {
            string key = network.Key is null ? "plain" : network.PlainFits ? $"{network.Key}, and plain fits" : network.Key;
            string share = network.MayShare is not { } may ? "not stated" : may.Count == 0 ? "nothing" : string.Join(", ", may.Select(p => p.Word()));
            table.Add(network.Name, network.Colour ?? "none", key, share);
        }

        table.Write(context.Out, _paint);
    }

    private void WriteShared(SeparationReport report)
    {
        Head("What networks share");
        Sharing sharing = report.Separation.Sharing;
        if (sharing.Groups.Count > 0)
        {
            var table = new TextTable("  ", "place", "which", "number", "networks", "verdict");
            foreach (SharedGroup group in sharing.Groups)
            {
                string[] names = [.. group.Uses.Select(u => Name(report.Plant, u))];
                table.Add(group.Place.Word(), NameSpans.Of(names), $"{names.Length}", Networks(report.Plant, group), Verdict(report.Plant, group));
            }

            table.Write(context.Out, _paint);
        }

        context.Out.WriteLine(_paint.Faint($"  shared: {report.Totals()}"));
    }

    private TextCell Verdict(Plant plant, SharedGroup group) => group.Verdict switch
    {
        SharingVerdict.Against => new TextCell($"against the policy of {Names(plant, group.ForbiddenBy)}", _paint.Error),
        SharingVerdict.Astray => new TextCell(group.Verdict.Word(), _paint.Error),
        SharingVerdict.Allowed => new TextCell(group.Verdict.Word(), _paint.Good),
        _ => new TextCell(group.Verdict.Word()),
    };

    private void WriteFits(Plant plant, FitTable table)
    {
        string[] names = [.. table.Parts.Select(p => plant.Parts[p].Name)];
        Head($"Which cords go into the {table.Kind} {NameSpans.Of(names)}{(names.Length == 1 ? "" : $" ({names.Length} alike)")}");
        var rows = new TextTable("  ", ["port", "network", "key", .. table.Networks.Select(n => plant.Networks[n].Name)]);
        foreach (FitPort port in table.Ports)
        {
            rows.Add(
            [
                port.Name,
                port.Network < 0 ? "none" : plant.Networks[port.Network].Name,
                port.Key ?? "plain",
                .. port.Cords.Select(c => new TextCell(c.Word(), c is CordFit.Fits or CordFit.OwnBlocked && port.Network >= 0 ? _paint.Warning : null)),
            ]);
        }

        rows.Write(context.Out, _paint);
    }

    private void WriteFindings(IReadOnlyList<Finding> findings)
    {
        Head("Findings");
        foreach (Finding finding in findings)
        {
            bool isError = finding.Rule.Severity == Severity.Error;
            string head = $"{(isError ? "error" : "warning")} {finding.Rule.Code} {finding.Rule.Title}";
            context.Out.WriteLine($"  {(isError ? _paint.Error(head) : _paint.Warning(head))}");
            context.Out.WriteLine($"    {finding.Place}: {finding.Message}");
        }
    }

    private static string Networks(Plant plant, SharedGroup group)
    {
        string networks = Names(plant, group.Networks);
        string astray = group.Astray.Count == 0 ? "" : $"{Names(plant, group.Astray)} astray";
        return networks.Length > 0 && astray.Length > 0 ? $"{networks}; {astray}" : networks + astray;
    }

    private static string Names(Plant plant, IReadOnlyList<int> networks) => string.Join(", ", networks.Select(n => plant.Networks[n].Name));

    private static string Name(Plant plant, SharedUse use) => use.Port is not { } port ? plant.Parts[use.Part].Name
        : use.Mating is { } mating ? $"{plant.Address(mating.A)} to {plant.Address(mating.B)}"
        : plant.Address(port);
}
