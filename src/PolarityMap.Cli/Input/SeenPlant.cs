using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Observations;
using PolarityMap.Reports;

namespace PolarityMap.Cli.Input;

/// <summary>A plant, what was seen of it, and what was found of that.</summary>
/// <param name="Context">The plant as it is described.</param>
/// <param name="Notes">What was seen.</param>
/// <param name="Result">What was found.</param>
internal sealed record SeenPlant(DeviationContext Context, SeenNotes Notes, LocateResult Result)
{
    public TracedPlant Traced => Context.Traced;

    /// <summary>Reads a plant and what was seen of it, and searches; null after problems were written.</summary>
    public static SeenPlant? Of(string plant, string seen, CommandContext context)
    {
        if (SeenSource.Read(plant, seen, SeenSource.Bytes(seen, mayBeAbsent: false, context), "text", context) is not var (traced, notes))
            return null;
        var deviations = new DeviationContext(traced);
        return new SeenPlant(deviations, notes, Locator.Locate(deviations, notes.Observations));
    }

    /// <summary>The same for the pages of a report.</summary>
    /// <param name="file">The file of the observations as the pages name it.</param>
    public SeenInput ForReport(string file)
    {
        bool canPlan = Result is { IsAsDescribed: false, Explanations.Count: > 0 };
        return new SeenInput(Result, SuspectPlant.Of(Context, Result))
        {
            File = file,
            Plan = canPlan ? Locator.Plan(Context, Result) : null,
            Remarks = [.. Notes.Remarks.Select(r => (r.Place, r.Text))],
        };
    }
}
