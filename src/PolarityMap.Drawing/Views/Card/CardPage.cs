using PolarityMap.Core.Checks;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>One card, planned: some rows of a strip, with heading, findings, ends and foot.</summary>
internal sealed class CardPage
{
    public required CardSubject Subject { get; init; }

    public required SheetFormat Format { get; init; }

    public required CardHeading Heading { get; init; }

    public required CardFoot Foot { get; init; }

    public required CardFindings Findings { get; init; }

    /// <summary>What the findings are, for those who cannot see the card.</summary>
    public required IReadOnlyList<Finding> About { get; init; }

    public required CardStrip Strip { get; init; }

    /// <summary>Index of the first row on this card.</summary>
    public required int From { get; init; }

    /// <summary>Index after the last row on this card.</summary>
    public required int To { get; init; }

    /// <summary>Where the strands come out; on the last card of the strip.</summary>
    public required IReadOnlyList<string> Ends { get; init; }

    /// <summary>Which card of its subject it is, from 1.</summary>
    public int Number { get; set; }

    /// <summary>How many cards its subject has.</summary>
    public int Count { get; set; }

    public bool GoesOn => To < Strip.Rows.Count;

    public bool Continues => From > 0;

    /// <summary>Such as <c>card 1 of 2</c>.</summary>
    public string CardWords => $"card {Number} of {Count}";

    /// <summary>Such as <c>LX-SW/1 to LX-D1/1, card 1 of 2</c>.</summary>
    public string Words => $"{(Subject.Link < 0 ? "" : "Link ")}{Heading.Title}, {CardWords}";
}
