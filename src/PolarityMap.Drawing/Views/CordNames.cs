namespace PolarityMap.Drawing.Views;

/// <summary>Names of cords that the document gives none: the two ports and a tilde between them. No drawing of a cord shows them.</summary>
internal static class CordNames
{
    /// <summary>What a sheet with such a name says about it.</summary>
    public const string Note = "X~Y: the cord between X and Y.";

    public static bool AreIn(string words) => words.Contains('~', StringComparison.Ordinal);
}
