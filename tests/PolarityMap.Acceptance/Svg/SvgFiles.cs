using PolarityMap.Acceptance.Gallery;
using Xunit;

namespace PolarityMap.Acceptance.Svg;

/// <summary>The drawings of the gallery as rows of a theory.</summary>
internal static class SvgFiles
{
    public static TheoryData<string> All => [.. MadeGallery.Now.Svgs];

    /// <summary>Those that show strands from left to right, one plant to a sheet: not cards, and no figures of several plants.</summary>
    public static TheoryData<string> OfStrands => [.. MadeGallery.Now.Svgs.Where(s => DrawnSheet.Of(s) is { HasFrame: true, Strands.Count: > 0 })];
}
