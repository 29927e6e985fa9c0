using PolarityMap.Acceptance.Gallery;
using Xunit;

namespace PolarityMap.Acceptance.Svg;

/// <summary>The drawings of the gallery as rows of a theory.</summary>
internal static class SvgFiles
{
    public static TheoryData<string> All => [.. MadeGallery.Now.Svgs];
}
