namespace PolarityMap.Drawing.Scene;

/// <summary>
/// What the title block of a sheet says (fields of ISO 7200). A field without a value prints as an empty cell, for
/// a person to write into. All values come from the document; nothing here is taken from the clock.
/// </summary>
public sealed record TitleBlock
{
    public string? Title { get; init; }

    public string? SupplementaryTitle { get; init; }

    public string? Site { get; init; }

    public string? DocumentType { get; init; }

    public string? IdentificationNumber { get; init; }

    public string? Revision { get; init; }

    /// <summary>Date of issue, <c>YYYY-MM-DD</c>.</summary>
    public string? DateOfIssue { get; init; }

    public string? Creator { get; init; }

    public string? Approval { get; init; }

    public string? LegalOwner { get; init; }

    /// <summary>Number of this sheet, from 1.</summary>
    public int Sheet { get; init; } = 1;

    /// <summary>Number of sheets in the set.</summary>
    public int Sheets { get; init; } = 1;
}
