using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Labels;

namespace PolarityMap.Drawing.Views;

/// <summary>What a view draws: the strands chosen from a traced plant, findings it is handed, and the paper.</summary>
/// <param name="Traced">The traced plant.</param>
/// <param name="Selection">What was chosen of it.</param>
public sealed record ViewInput(TracedPlant Traced, Selection Selection)
{
    /// <summary>Title, site, date and so on, as the title block shows them.</summary>
    public PlantTitle Title { get; init; } = Traced.Plant.Title;

    /// <summary>The paper to choose from.</summary>
    public PaperChoice Paper { get; init; } = PaperChoice.SmallestThatIsClear;

    /// <summary>By what a large plant is divided into sheets.</summary>
    public SheetDivision Division { get; init; }

    /// <summary>Draw channels that are alike once.</summary>
    public bool FoldAlike { get; init; }

    /// <summary>How labels lie on their sheets.</summary>
    public LabelOptions Labels { get; init; } = new();

    /// <summary>For strands that come out elsewhere than meant the position where they should.</summary>
    public IReadOnlyDictionary<int, int> ExpectedEnds { get; init; } = new Dictionary<int, int>();

    /// <summary>What the drawing takes for granted, one sentence for the foot of its sheets; empty without.</summary>
    public string Premise { get; init; } = "";

    /// <summary>The findings about the chosen strands.</summary>
    public IReadOnlyList<Finding> Findings => Selection.Findings;

    /// <summary>The title block of a sheet.</summary>
    /// <param name="documentType">Kind of drawing, such as <c>Strand diagram</c>.</param>
    /// <param name="supplement">What of the plant it shows, or null for what was chosen.</param>
    /// <param name="place">Its place in the set.</param>
    public TitleBlock TitleBlock(string documentType, string? supplement, SheetPlace place) => new()
    {
        Title = Title.Title,
        SupplementaryTitle = supplement ?? (Selection.Words.Length > 0 ? Selection.Words : null),
        Site = Title.Site,
        DocumentType = documentType,
        IdentificationNumber = Title.Number,
        Revision = Title.Revision,
        DateOfIssue = Title.Date,
        Creator = Title.Author,
        Sheet = place.Sheet,
        Sheets = place.Sheets,
    };
}

/// <summary>By what a plant is divided into sheets.</summary>
public enum SheetDivision
{
    /// <summary>By network where the plant has several, else only as the paper demands.</summary>
    Network,

    /// <summary>By room: a strand is cut where it leaves one.</summary>
    Room,

    /// <summary>By trunk: for each the strands that pass it.</summary>
    Trunk,

    /// <summary>One sheet as large as it has to be.</summary>
    None,
}
