using System.Globalization;
using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Fonts;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// In a large set every number and every name of one line of the document gets the room of the longest, so that the sheets look
/// alike from the first to the last. In thousandths of an em.
/// </summary>
/// <param name="plant">The plant.</param>
/// <param name="mostNumber">The highest number of a strand.</param>
internal sealed class EvenRoom(Plant plant, int mostNumber)
{
    private readonly Dictionary<SourcePlace, long> _longest = LongestNames(plant);

    /// <summary>What the name of a part leaves of the room that it gets.</summary>
    public long SpareOfName(int part) =>
        plant.Parts[part] is { IsInline: false } named ? _longest[named.Place] - FontMetrics.Advances(named.Name) : 0;

    /// <summary>What the number of a strand leaves of the room that it gets; figures are all of one width.</summary>
    public long SpareOfNumber(int number) => (Figures(mostNumber) - Figures(number)) * (long)FontAdvances.Figure;

    private static int Figures(int number)
    {
        Span<char> room = stackalloc char[11];
        number.TryFormat(room, out int written, default, CultureInfo.InvariantCulture);
        return written;
    }

    private static Dictionary<SourcePlace, long> LongestNames(Plant plant)
    {
        var longest = new Dictionary<SourcePlace, long>();
        foreach (Part part in plant.Parts)
        {
            if (!part.IsInline)
                longest[part.Place] = Math.Max(longest.GetValueOrDefault(part.Place), FontMetrics.Advances(part.Name));
        }

        return longest;
    }
}
