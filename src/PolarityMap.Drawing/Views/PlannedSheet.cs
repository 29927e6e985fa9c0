using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views;

/// <summary>Where a sheet stands in its set.</summary>
/// <param name="Sheet">Its number, from 1.</param>
/// <param name="Sheets">How many there are.</param>
public readonly record struct SheetPlace(int Sheet, int Sheets);

/// <summary>
/// A sheet that is planned and not yet drawn: its number in the set is known only when all sheets are planned. Sheets of one
/// view follow each other, so that one names another by the difference of their numbers.
/// </summary>
public abstract class PlannedSheet
{
    /// <summary>What a file of it is called, without ending: letters, digits, hyphens; unique within its view.</summary>
    public abstract string Name { get; }

    /// <summary>What it shows, for the index, such as <c>Network lighting, strands 1 to 8</c>.</summary>
    public abstract string Subject { get; }

    /// <summary>Kind of drawing in the words of the title block, such as <c>Strand diagram</c>.</summary>
    public abstract string DocumentType { get; }

    public abstract SheetFormat Format { get; }

    /// <summary>The strands on it, as the traced plant counts them; empty where it shows none by itself.</summary>
    public virtual IReadOnlyList<int> Strands => [];

    /// <summary>The parts drawn on it, as the plant counts them; empty where the index need not name it.</summary>
    public virtual IReadOnlyCollection<int> Parts => [];

    /// <summary>Where ports and positions lie on it, worked out when asked for; empty where a reader cannot point at them.</summary>
    public virtual IReadOnlyList<HitArea> HitAreas() => [];

    /// <summary>Draws it.</summary>
    public abstract DrawingSheet Draw(SheetPlace place);
}
