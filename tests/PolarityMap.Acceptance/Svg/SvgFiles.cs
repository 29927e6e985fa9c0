using PolarityMap.Acceptance.Gallery;
using Xunit;

namespace PolarityMap.Acceptance.Svg;

/// <summary>The drawings of the gallery as rows of a theory.</summary>
internal static class SvgFiles
{
    public static TheoryData<string> All => [.. MadeGallery.Now.Svgs];

    /// <summary>Those that show strands, one plant to a sheet.</summary>
    public static TheoryData<string> OfStrands => [.. MadeGallery.Now.Svgs.Where(s => DrawnSheet.Of(s).Strands.Count > 0 && !s.Contains(GalleryIndex.SideBySide, StringComparison.Ordinal))];
}
