using PolarityMap.Core.Budget;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;

namespace PolarityMap.Reports.Model;

/// <summary>The links with what was proved of each, and the loss of each.</summary>
internal static class LinkModel
{
    public static IEnumerable<ModelObject> Links(ReportInput input, FindingModel findings)
    {
        Plant plant = input.Plant;
        CheckReport check = input.Check;
        var about = new List<Finding>?[plant.Links.Count];
        var onStrand = new Dictionary<int, List<Finding>>();
        foreach (Finding finding in check.Findings)
        {
            foreach (int link in finding.Links)
                (about[link] ??= []).Add(finding);
            foreach (int strand in finding.Strands)
            {
                if (!onStrand.TryGetValue(strand, out List<Finding>? list))
                    onStrand[strand] = list = [];
                list.Add(finding);
            }
        }

        var shown = new HashSet<int>(input.View.Selection.Strands);
        foreach (LinkOutcome outcome in check.Context.Outcomes.All)
        {
            Link link = plant.Links[outcome.Index];
            IReadOnlyList<int> strands = outcome.Strands;
            IEnumerable<Finding> own = (about[outcome.Index] ?? []).Concat(strands.SelectMany(s => onStrand.GetValueOrDefault(s) ?? []));
            bool proven = check.IsProven(outcome);
            int network = plant.NetworkOf(link.From.Port);
            yield return new ModelObject()
                .Number("number", outcome.Index + 1).Text("from", plant.Address(link.From)).Text("to", plant.Address(link.To))
                .Text("from_room", plant.Parts[link.From.Port.Part].Room).Text("to_room", plant.Parts[link.To.Port.Part].Room)
                .Text("network", network >= 0 ? plant.Networks[network].Name : null)
                .Text("application", (plant.Port(link.From.Port).Application ?? plant.Port(link.To.Port).Application)?.Name)
                .List("strands", strands.Select(s => new ModelObject().Number("number", input.Traced.NumberOf(s)).Flag("is_shown", shown.Contains(s))))
                .Flag("proven", proven).Text("verdict", proven ? "proven" : "not proven")
                .List("findings", findings.Codes(own.Distinct())).Text("place", input.Words(link.Place));
        }
    }

    public static ModelObject Losses(ReportInput input)
    {
        BudgetReport report = input.Budget;
        LimitProfile limits = report.Table.Limits;
        var remarks = new RemarkMarks();
        ModelObject[] rows = [.. report.Rows.Select(r => Row(report, r, remarks))];
        return new ModelObject()
            .Text("verdict", report.Rows.Count > 0 ? report.Verdict() : null)
            .Text("limits", limits.Name).Text("limits_meaning", limits.Meaning)
            .Text("mating_limit", $"{limits.MatingMax}").Text("splice_limit", $"{limits.SpliceMax}")
            .Text("formula", LossSum.Formula).Text("margin", report.Margin?.ToString())
            .List("rows", rows)
            .List("remarks", remarks.All.Select(r => new ModelObject().Text("mark", r.Mark).Text("text", r.Text)))
            .List("notes", report.Applications().Where(a => a.Note is not null)
                .Select(a => new ModelObject().Text("application", a.Name).Text("text", a.Note)));
    }

    private static ModelObject Row(BudgetReport report, BudgetRow row, RemarkMarks marks)
    {
        StrandBudget? worst = row.Budget?.Worst;
        AcceptanceLimit? test = worst is null ? null : report.Table.Acceptance(worst);
        return new ModelObject()
            .Number("number", row.Link + 1).Text("from", report.Plant.Address(row.From)).Text("to", report.Plant.Address(row.To))
            .Flag("declared", row.Link >= 0).Flag("lit", worst is not null)
            .Text("application", worst?.Application?.Name).Text("wavelength", worst?.Wavelength?.ToString()).Text("fibre", worst?.Fibre?.Name)
            .Text("length", worst is null ? null : $"{(worst.LengthsMissing > 0 ? "≥ " : "")}{worst.Length}")
            .Text("matings", worst is null ? null : $"{worst.Stated.MatingCount}").Text("splices", worst is null ? null : $"{worst.Stated.SpliceCount}")
            .Text("standard", worst?.Standard.Total.ToString()).Text("stated", worst?.Stated.Total.ToString()).Text("expected", worst?.Expected.Total.ToString())
            .Text("limit", worst?.LossLimit?.ToString()).Text("margin", worst?.Margin?.ToString()).Text("delay", worst?.Delay?.ToString())
            .Text("acceptance", test is null ? null : string.Join(", ", test.Tests.Select(t => $"{t.Limit} at {t.Wavelength}")))
            .Text("verdict", row.Budget is { } budget ? BudgetWords.Verdict(budget) : "not lit from end to end")
            .Text("state", row.Budget is null ? "open" : row.Budget.Exceeds ? "over" : row.Budget.IsJudged ? "fits" : "open")
            .Texts("marks", worst is null ? [] : BudgetWords.Remarks(worst, report.Margin).Select(marks.Of));
    }
}
