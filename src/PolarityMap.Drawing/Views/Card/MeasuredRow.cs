using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>A row of a strip with its words set in lines and its heights, in mm.</summary>
internal sealed class MeasuredRow
{
    private const double TextTop = 1;
    private const double TextBottom = 1.2;

    public MeasuredRow(CardStrip strip, CardRow row, bool isTop)
    {
        Row = row;
        Part part = strip.Text.Plant.Parts[row.Part];
        Names = CardWrap.Lines(strip.Text.Name(row.Part), strip.TextWidth, CapHeights.Part, most: 4);
        Lines = Words(strip, row, part);
        bool enters = row.Visits.Any(v => v.Hop.In >= 0);
        bool leaves = row.Visits.Any(v => v.Hop.Out >= 0);
        // Where a strand begins or ends, the word for its lane stands in place of a cell.
        double cells = (2 * CardMeasures.Cell) + (row.Crosses ? strip.CrossingHeight : enters && leaves ? CardMeasures.Through : 0.6);
        Box = Math.Max(cells, TextHeight);
        Head = new GapLines(HeadItems(strip, row), strip.TextWidth);
        if (row.Visits.Any(v => v.ComesFromAfar || (v.IsFirst && v.Hop.In >= 0)))
            Above = CardMeasures.Stub - CardMeasures.Line + Head.Height;
        Gap = new GapLines(strip.GapItems(row), strip.TextWidth);
        IsTop = isTop;
        Below = row.Visits.Any(v => v.Hop.Out >= 0 && !IsUnwired(v)) ? Gap.Height + (2 * CardMeasures.GapMargin) : 0;
        if (row.Visits.Any(v => v.GoesAfar))
            Below += 1.6;
    }

    public CardRow Row { get; }

    public bool IsTop { get; }

    /// <summary>The part's name, in 3.5 mm letters.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>What it is, in 2.5 mm letters.</summary>
    public IReadOnlyList<string> Lines { get; }

    /// <summary>The room, where it stands beside the name; else empty.</summary>
    public string RoomBeside { get; private set; } = "";

    /// <summary>Words above the part, where a strand begins at it.</summary>
    public GapLines Head { get; }

    /// <summary>Words of the gap below it.</summary>
    public GapLines Gap { get; }

    /// <summary>Height of what stands above the part.</summary>
    public double Above { get; }

    /// <summary>Height of the part.</summary>
    public double Box { get; }

    /// <summary>Height of the gap below it.</summary>
    public double Below { get; }

    public double Height => Above + Box + Below;

    /// <summary>Height of the words in the part.</summary>
    public double TextHeight => TextTop + CapHeights.Part + ((Names.Count - 1) * CardMeasures.NameLine) + (Lines.Count * CardMeasures.Line) + TextBottom;

    /// <summary>Foot of the first name below the top of the words.</summary>
    public static double FirstBaseline => TextTop + CapHeights.Part;

    /// <summary>True for an interface position that nothing is plugged into.</summary>
    public static bool IsUnwired(Visit visit) => visit.Trail.Hops.Count == 1 && visit.Hop.In < 0;

    private List<string> Words(CardStrip strip, CardRow row, Part part)
    {
        var lines = new List<string>();
        if (part.Room is { Length: > 0 } room)
        {
            string words = $"+{room}";
            if (Strands.SheetText.Width(Names[^1], CapHeights.Part) + 3 + Strands.SheetText.Width(words) <= strip.TextWidth)
                RoomBeside = words;
            else
                lines.AddRange(CardWrap.Lines(words, strip.TextWidth, most: 3));
        }

        string caption = strip.Text.Beside(row);
        // The fibre goes on the caption's line where there is one and it takes it.
        List<string> fibres = strip.Text.Fibres(row);
        if (fibres.Count == 1)
            caption = caption.Length > 0 ? $"{caption}, {fibres[0]}" : fibres[0];
        lines.AddRange(CardWrap.Lines(caption, strip.TextWidth, most: 4));
        if (fibres.Count > 1)
            lines.AddRange(CardWrap.Lines(string.Join(", ", fibres.Select(f => f.Replace(' ', '\u00A0'))), strip.TextWidth));
        return lines;
    }

    private static IEnumerable<GapItem> HeadItems(CardStrip strip, CardRow row)
    {
        foreach (Visit visit in row.Visits)
        {
            string number = strip.IsPair ? $"{visit.Trail.Number} " : "";
            if (visit.ComesFromAfar)
                yield return new GapItem($"{number}goes on from its ring above");
            else if (visit is { IsFirst: true, Hop.In: >= 0 })
            {
                yield return visit.Trail.IsLoop
                    ? new GapItem($"{number}goes on at the foot: a closed loop")
                    : new GapItem($"{number}open end: source in here, keep it capped");
            }
        }
    }
}
