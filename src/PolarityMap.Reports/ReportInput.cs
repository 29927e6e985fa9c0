using PolarityMap.Core.Budget;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Views;

namespace PolarityMap.Reports;

/// <summary>What a report is made of; everything on its pages comes from here.</summary>
/// <param name="Check">The plant, proved or refuted.</param>
public sealed record ReportInput(CheckReport Check)
{
    /// <summary>Title, date and so on as the pages print them.</summary>
    public PlantTitle Title { get; init; } = Check.Traced.Plant.Title;

    /// <summary>The document as the pages name it.</summary>
    public string Document { get; init; } = "";

    /// <summary>
    /// The folder of the document as places name it, with its last stroke. Pages leave it out, so that they say nothing of the
    /// machine that made them.
    /// </summary>
    public string DocumentFolder { get; init; } = "";

    /// <summary>The schedules, each also a field paper.</summary>
    public IReadOnlyList<Schedule> Schedules { get; init; } = [];

    /// <summary>The sheets of the drawing in the order in which they are bound.</summary>
    public IReadOnlyList<PlannedSheet> Sheets { get; init; } = [];

    /// <summary>Why there are no sheets, or fewer than there should be; null where all is drawn.</summary>
    public string? SheetsMissing { get; init; }

    /// <summary>What was seen on site; null where nothing was handed over.</summary>
    public SeenInput? Seen { get; init; }

    /// <summary>What else is in the folder of the report, in groups; empty for a page that stands alone.</summary>
    public IReadOnlyList<FileGroup> Files { get; init; } = [];

    public TracedPlant Traced => Check.Traced;

    public Plant Plant => Check.Traced.Plant;

    /// <summary>All strands with light or a finding, with all findings, for views.</summary>
    public ViewInput View => _view ??= new ViewInput(Traced, Selection.Of(Traced, Check.Findings, new Choice()))
    {
        Title = Title,
        ExpectedEnds = ExpectedEnds.Of(Check.Context),
    };

    public BudgetReport Budget => _budget ??= BudgetReport.Of(Check.Context.Losses);

    private ViewInput? _view;

    private BudgetReport? _budget;

    /// <summary>A place as pages print it, such as <c>plant.yaml, line 12</c>.</summary>
    public string Words(SourcePlace place) => place.Line == 0 ? FileOf(place) : $"{FileOf(place)}, line {place.Line}";

    /// <summary>Places, those in one file together, such as <c>plant.yaml, lines 8, 9</c>.</summary>
    public IEnumerable<string> Words(IEnumerable<SourcePlace> places) => places.GroupBy(FileOf).Select(file =>
    {
        int[] lines = [.. file.Select(p => p.Line).Distinct().Order()];
        return $"{file.Key}, {(lines.Length == 1 ? "line" : "lines")} {string.Join(", ", lines)}";
    });

    private string FileOf(SourcePlace place) =>
        DocumentFolder.Length > 0 && place.File.StartsWith(DocumentFolder, StringComparison.Ordinal) ? place.File[DocumentFolder.Length..] : place.File;
}

/// <summary>Files of a report that belong together.</summary>
/// <param name="Title">What they are.</param>
/// <param name="Files">The files.</param>
public sealed record FileGroup(string Title, IReadOnlyList<ReportFile> Files);

/// <summary>A file of a report.</summary>
/// <param name="Path">Where it lies in the folder of the report, with <c>/</c> between folders.</param>
/// <param name="Title">What it is.</param>
/// <param name="Purpose">Who uses it for what; may be empty.</param>
public sealed record ReportFile(string Path, string Title, string Purpose);
