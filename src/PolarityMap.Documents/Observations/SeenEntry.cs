namespace PolarityMap.Documents.Observations;

/// <summary>A piece of an observation file with the places of its characters.</summary>
internal sealed record SeenCell(string Text, Func<int, SourcePlace> PlaceAt)
{
    public SourcePlace Place => PlaceAt(0);

    /// <summary>A part of it.</summary>
    public SeenCell From(int start) => new(Text[start..], i => PlaceAt(start + i));
}

/// <summary>One observation as it is written, in either form of the file.</summary>
/// <param name="Place">Where it begins.</param>
/// <param name="Test">One of <see cref="SeenWords.Tests"/>.</param>
/// <param name="At">Where something was done.</param>
/// <param name="Outcome">What was seen.</param>
/// <param name="Value">What was measured, or null.</param>
/// <param name="Note">What the observer wrote beside it, or null.</param>
internal sealed record SeenEntry(SourcePlace Place, string Test, SeenCell At, SeenCell Outcome, SeenCell? Value, string? Note);
