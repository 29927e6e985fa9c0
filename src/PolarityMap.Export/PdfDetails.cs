namespace PolarityMap.Export;

/// <summary>What a PDF says about itself beside its pages. All of it comes from the plant's document.</summary>
/// <param name="Title">The title of the document.</param>
public sealed record PdfDetails(string Title)
{
    public string? Author { get; init; }

    public string? Subject { get; init; }

    /// <summary>
    /// Date of issue as <c>yyyy-MM-dd</c>, set as the dates of making and of changing; without it the file has no dates. The
    /// clock is never asked, so that equal sheets give equal bytes.
    /// </summary>
    public string? Date { get; init; }
}
