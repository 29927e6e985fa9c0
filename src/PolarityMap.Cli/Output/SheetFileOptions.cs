using PolarityMap.Export;

namespace PolarityMap.Cli.Output;

/// <summary>How sheets become files.</summary>
/// <param name="Details">What a PDF says about itself.</param>
internal sealed record SheetFileOptions(PdfDetails Details)
{
    public const int UsualDotsPerInch = 300;

    /// <summary>What <see cref="As"/> may be.</summary>
    public static readonly string[] Formats = ["svg", "png", "pdf"];

    /// <summary>One of <see cref="Formats"/>, for a folder; null for svg, or for what the ending of a file says.</summary>
    public string? As { get; init; }

    /// <summary>The resolution of a PNG; null for <see cref="UsualDotsPerInch"/>.</summary>
    public int? DotsPerInch { get; init; }

    /// <summary>False leaves the font out of an SVG.</summary>
    public bool EmbedFont { get; init; } = true;
}
