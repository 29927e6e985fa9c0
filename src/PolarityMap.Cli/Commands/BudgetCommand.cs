using System.CommandLine;
using PolarityMap.Cli.Input;
using PolarityMap.Cli.Output;
using PolarityMap.Core.Budget;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Commands;

/// <summary><c>budget PLANT</c>: what each link loses, how long it is, and what it is allowed.</summary>
internal sealed class BudgetCommand : ICommandFile
{
    public Command Build(CommandContext context)
    {
        Argument<string> plant = CommonOptions.Plant();
        Option<string> format = CommonOptions.Format();
        var all = new Option<bool>("--all") { Description = "Every strand of each link, not only the one with the least to spare." };
        var link = new Option<string?>("--link") { Description = "Only the link that has this end: PART/PORT, or PART/PORT:LANE.", HelpName = "ADDRESS" };
        var limits = new Option<string?>("--limits") { Description = $"Judge by these limits instead of the document's: {string.Join(", ", LimitProfile.Names)}.", HelpName = "NAME" };
        var command = new Command("budget",
            """
            Reckon what each link loses, how long it is, and what its application allows.

            Three figures stand side by side: what the standard lets the parts lose, what they lose at most by their own
            statements, which is judged, and what good work is expected to lose. 'polaritymap explain budget' has the formula.

            Exit status: 0 all fit, 1 something exceeds its limit, 2 the document or the call is wrong.

            Examples:
              polaritymap budget plant.yaml
              polaritymap budget plant.yaml --all --limits TIA-568.3-E
              polaritymap budget plant.yaml --link SW-L/1
              polaritymap budget plant.yaml --format json > budget.json
            """) { plant, all, link, limits, format };
        command.SetAction(parsed =>
        {
            string form = parsed.GetValue(format)!;
            LimitProfile? profile = parsed.GetValue(limits) is { } name ? Profile(name) : null;
            if (PlantFile.Trace(parsed.GetValue(plant)!, form, context) is not { } traced)
                return ExitStatus.Wrong;
            BudgetTable table = profile is null ? BudgetTable.Of(traced) : BudgetTable.Of(traced, profile);
            BudgetReport report = Asked(BudgetReport.Of(table, parsed.GetValue(all)), parsed.GetValue(link));
            if (form == "json")
                BudgetJson.Write(report, context.Out);
            else
                new BudgetText(context).Write(report);
            return report.Exceeding > 0 ? ExitStatus.Findings : ExitStatus.Clean;
        });
        return command;
    }

    private static LimitProfile Profile(string name)
    {
        if (LimitProfile.Find(name) is { } profile)
            return profile;
        string? near = NearestWord.Find(name, LimitProfile.Names);
        throw new CallException($"there are no limits '{name}'; expected one of {string.Join(", ", LimitProfile.Names)}"
            + (near is null ? "" : $"; did you mean '{near}'?"));
    }

    /// <summary>All links, or those at an address.</summary>
    private static BudgetReport Asked(BudgetReport report, string? address)
    {
        if (address is null)
            return report;
        Plant plant = report.Plant;
        IReadOnlyList<BudgetRow> rows = report.Rows;
        List<BudgetRow> asked = [.. rows.Where(r => plant.Address(r.From) == address || plant.Address(r.To) == address
            || plant.Address(r.From.Port) == address || plant.Address(r.To.Port) == address)];
        if (asked.Count > 0)
            return report with { Rows = asked };
        string? near = NearestWord.Find(address, rows.SelectMany(r => new[] { plant.Address(r.From), plant.Address(r.To) }));
        throw new CallException($"no link has an end at '{address}'" + (near is null ? "" : $"; did you mean '{near}'?"));
    }
}
