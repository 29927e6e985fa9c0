using PolarityMap.Core.Checks;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views;

/// <summary>The sign of each severity.</summary>
internal static class FindingMarks
{
    public static SceneGroup Of(Severity severity, double centreX, double centreY, double size) => severity switch
    {
        Severity.Error => Marks.Error(centreX, centreY, size),
        Severity.Warning => Marks.Warning(centreX, centreY, size),
        _ => Marks.Note(centreX, centreY, size),
    };
}
