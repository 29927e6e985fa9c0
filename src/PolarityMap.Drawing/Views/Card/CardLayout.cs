using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>Divides the strips of a subject among cards.</summary>
internal sealed class CardLayout(ViewInput input, CardNotes notes)
{
    private static readonly CardFoot[] s_smallFoot = CardFoot.Sizes(SheetFormat.A6Portrait);
    private static readonly CardFoot[] s_largeFoot = CardFoot.Sizes(SheetFormat.A5Portrait);

    private readonly CardText _text = new(input.Traced);

    /// <summary>Appends the cards of a subject.</summary>
    public void Append(CardSubject subject, List<CardPage> pages)
    {
        TracedPlant traced = input.Traced;
        var ends = new CardEnds(traced, _text);
        int before = pages.Count;
        for (int g = 0; g < subject.Groups.Count; g++)
        {
            Trail[] trails = subject.Groups[g].Trails;
            SheetFormat format = trails.Length > 1 ? SheetFormat.A5Portrait : SheetFormat.A6Portrait;
            double width = CardMeasures.Inside(format).Width;
            IEnumerable<string> words = trails.SelectMany(t => ends.Words(t, subject.Link)).Concat(CardEnds.Likewise(subject.Groups[g].Likewise));
            if (g == subject.Groups.Count - 1)
                words = words.Concat(ends.Strangers(subject));
            AppendStrip(
                subject,
                new CardStrip(traced, _text, trails, format),
                notes.About(trails, subject.Link),
                [.. words.SelectMany(w => CardWrap.Lines(w, width))],
                format,
                pages);
        }

        for (int i = before; i < pages.Count; i++)
        {
            pages[i].Number = i - before + 1;
            pages[i].Count = pages.Count - before;
        }
    }

    private void AppendStrip(CardSubject subject, CardStrip strip, List<Finding> findings, IReadOnlyList<string> ends, SheetFormat format, List<CardPage> pages)
    {
        CardHeading heading = CardHeading.Of(input, subject, format);
        Area inside = CardMeasures.Inside(format);
        var first = new CardFindings(findings, inside.Width, isFirst: true);
        var further = new CardFindings(findings, inside.Width, isFirst: false);
        double endHeight = EndHeight(ends.Count);
        CardFoot? foot = null;
        List<int> breaks = [];
        // The strip never shrinks; smaller letters at the foot are taken only where they save a card.
        foreach (CardFoot tried in format == SheetFormat.A6Portrait ? s_smallFoot : s_largeFoot)
        {
            double room = inside.Height - heading.Height - tried.Height - 1;
            List<int> found = Breaks(strip.Rows, room - first.Height, room - further.Height, endHeight);
            if (foot is not null && found.Count >= breaks.Count)
                continue;
            foot = tried;
            breaks = found;
        }

        for (int i = 0; i < breaks.Count; i++)
        {
            bool last = i == breaks.Count - 1;
            pages.Add(new CardPage
            {
                Subject = subject,
                Format = format,
                Heading = heading,
                Foot = foot!,
                Findings = i == 0 ? first : further,
                About = findings,
                Strip = strip,
                From = breaks[i],
                To = last ? strip.Rows.Count : breaks[i + 1],
                Ends = last ? ends : [],
            });
        }
    }

    public static double EndHeight(int lines) => lines == 0 ? 0 : (lines * CardMeasures.Line) + 0.8;

    /// <summary>
    /// The row that each card begins with. A card with more to come keeps room for the mark that says so. Every card but one that
    /// its findings fill takes at least one row.
    /// </summary>
    private static List<int> Breaks(IReadOnlyList<MeasuredRow> rows, double firstRoom, double furtherRoom, double endHeight)
    {
        var breaks = new List<int> { 0 };
        double rest = endHeight;
        foreach (MeasuredRow row in rows)
            rest += row.Height;
        double room = firstRoom;
        for (int i = 0; i < rows.Count; i++)
        {
            bool fits = rest <= room || (i < rows.Count - 1 && rows[i].Height + CardMeasures.Stub <= room);
            if (!fits && (breaks[^1] < i || (i == 0 && breaks.Count == 1 && firstRoom < furtherRoom)))
            {
                breaks.Add(i);
                room = furtherRoom - (i > 0 ? CardMeasures.Stub : 0);
            }

            room -= rows[i].Height;
            rest -= rows[i].Height;
        }

        return breaks;
    }
}
