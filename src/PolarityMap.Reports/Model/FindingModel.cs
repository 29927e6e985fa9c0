using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;
using PolarityMap.Reports.Drawings;

namespace PolarityMap.Reports.Model;

/// <summary>The findings: each in the list of all, and those that are alike told once in full.</summary>
internal sealed class FindingModel
{
    /// <summary>The most findings that get a drawing of their strands; the strand diagram shows all of them.</summary>
    public const int MostDrawings = 24;

    /// <summary>The most strands in one of these drawings.</summary>
    public const int MostStrandsDrawn = 16;

    /// <summary>The most strands told hop by hop with one finding.</summary>
    private const int MostStrandsTold = 4;

    private readonly ReportInput _input;
    private readonly IReadOnlyList<IReadOnlyList<Finding>> _groups;
    private readonly Dictionary<Finding, int> _groupOf = new(ReferenceEqualityComparer.Instance);
    private int _drawn;

    public FindingModel(ReportInput input)
    {
        _input = input;
        _groups = AlikeFindings.Of(input.Check.Findings);
        for (int g = 0; g < _groups.Count; g++)
        {
            foreach (Finding finding in _groups[g])
                _groupOf[finding] = g;
        }
    }

    /// <summary>Where a finding is told, as an id of the page.</summary>
    public string IdOf(Finding finding) => $"finding-{_groupOf[finding] + 1}";

    public ModelObject Of()
    {
        ModelObject[] told = [.. _groups.Select((g, i) => Told(g, i))];
        return new ModelObject()
            .Number("count", _input.Check.Findings.Count)
            .List("all", _input.Check.Findings.Select((f, i) => Line(f, i)))
            .List("told", told)
            .Number("drawn", _drawn).Number("most_drawn", MostDrawings).Number("most_strands_drawn", MostStrandsDrawn)
            .List("remarks", _input.Check.Remarks.Select(r => new ModelObject().Text("text", r.Text).Text("place", _input.Words(r.Place))));
    }

    /// <summary>Links to findings, each code once, for a row of a table.</summary>
    public IEnumerable<ModelObject> Codes(IEnumerable<Finding> findings) => findings
        .Select(f => (f.Rule, Id: IdOf(f))).Distinct()
        .Select(f => new ModelObject().Text("code", f.Rule.Code).Text("id", f.Id).Text("title", f.Rule.Title).Text("severity", Word(f.Rule)));

    private static string Word(Rule rule) => rule.Severity == Severity.Error ? "error" : "warning";

    private ModelObject Line(Finding finding, int index) => new ModelObject()
        .Number("number", index + 1).Text("id", IdOf(finding)).Text("code", finding.Rule.Code).Text("title", finding.Rule.Title)
        .Text("severity", Word(finding.Rule)).Text("place", _input.Words(finding.Place)).Text("message", finding.Message);

    private ModelObject Told(IReadOnlyList<Finding> group, int index)
    {
        Finding first = group[0];
        TracedPlant traced = _input.Traced;
        Markup? drawing = _drawn < MostDrawings && first.Strands.Count > 0
            ? FindingFigure.Of(_input.View, first, MostStrandsDrawn, $"f{index + 1}-") : null;
        _drawn += drawing is null ? 0 : 1;
        int[] numbers = [.. first.Strands.Select(traced.NumberOf)];
        ModelObject told = new ModelObject()
            .Number("number", index + 1).Text("id", $"finding-{index + 1}").Text("code", first.Rule.Code).Text("title", first.Rule.Title)
            .Text("family", first.Rule.Family).Text("severity", Word(first.Rule)).Text("place", _input.Words(first.Place))
            .Text("message", first.Message).Text("expected", first.Expected).Text("actual", first.Actual)
            .Text("why", first.Rule.Why).Text("clears", first.Rule.Clears).Text("source", first.Rule.Source)
            .Texts("made_by", _input.Words(first.Related))
            .Texts("links", first.Links.Select(l => $"{_input.Plant.Address(_input.Plant.Links[l].From)} to {_input.Plant.Address(_input.Plant.Links[l].To)}"))
            .List("strands", first.Strands.Take(MostStrandsTold).Select(s => new ModelObject()
                .Number("number", traced.NumberOf(s)).Text("line", HopLine.Of(traced, s))
                .Texts("hops", traced.Hops(s).Select(h => HopLine.Words(traced, h)))))
            .List("further_strands", numbers.Skip(MostStrandsTold).Select(n => new ModelObject().Number("number", n)))
            .List("remedies", Remedies(first))
            .List("alike", group.Skip(1).Select(f => new ModelObject()
                .Text("message", f.Message).Text("place", _input.Words(f.Place)).List("remedies", Remedies(f))))
            .Number("strand_count", numbers.Length)
            .Flag("all_strands_drawn", numbers.Length <= MostStrandsDrawn);
        return drawing is { } svg ? told.Flag("is_drawn", true).Html("drawing", svg) : told.Flag("is_drawn", false).Html("drawing", default);
    }

    private static IEnumerable<ModelObject> Remedies(Finding finding) =>
        finding.Remedies.Select(r => new ModelObject().Text("text", r.Text).Text("proof", r.Proof));
}
