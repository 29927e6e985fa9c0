using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>The head of a card: what it is of, and the marks of the document it was made from.</summary>
internal sealed class CardHeading
{
    /// <summary>Room for the words at the right, beside the QR code.</summary>
    private const double Right = 18;

    private const double MarkGap = 1;
    private const double SmallCap = 2;
    private const double SmallLine = 3.2;
    private const double BlankShort = 9;
    private const double BlankLong = 18;

    private readonly List<string> _title;
    private readonly double _titleCap;
    private readonly List<string> _what;
    private readonly List<string> _plant;
    private readonly List<(string Text, double Blank, double X, int Line)> _marks = [];
    private readonly double _width;
    private readonly QrMark? _mark;

    private CardHeading(string title, string what, string address, PlantTitle plant, SheetFormat format)
    {
        _width = CardMeasures.Inside(format).Width;
        _mark = QrMark.Of(address);
        double beside = WordsWidth - Right;
        _titleCap = format.WidthMm > SheetFormat.A6Portrait.WidthMm && FontMetrics.WidthMm(title, CapHeights.SheetTitle) <= beside ? CapHeights.SheetTitle : CapHeights.Part;
        Title = title;
        _title = CardWrap.Lines(title, beside, _titleCap, most: 5);

        // Below two lines of title nothing stands between the words and the code.
        _what = CardWrap.Lines(what, _title.Count > 1 ? WordsWidth : beside, most: 3);
        _plant = CardWrap.Lines(plant.Title, WordsWidth, most: 2);
        AppendMarks(plant);
    }

    public string Title { get; }

    public double Height => Math.Max(
        (_title.Count * TitleLine) + (_what.Count * CardMeasures.Line) + (_plant.Count * CardMeasures.Line) + ((_marks.Count == 0 ? 0 : _marks[^1].Line + 1) * SmallLine) + 0.9,
        MarkSide);

    private double MarkSide => _mark is null ? 0 : _mark.Modules * QrMark.LeastModuleMm;

    /// <summary>Width of the lines left of the QR code.</summary>
    private double WordsWidth => _mark is null ? _width : _width - MarkSide - MarkGap;

    private double TitleLine => _titleCap + 1.7;

    public static CardHeading Of(ViewInput input, CardSubject subject, SheetFormat format)
    {
        Plant plant = input.Traced.Plant;
        Trail first = subject.Groups[0].Trails[0];
        if (subject.Link < 0)
        {
            string ends = first.First == first.Last
                ? input.Traced.Address(first.First)
                : $"{input.Traced.Address(first.First)} to {input.Traced.Address(first.Last)}";
            return new CardHeading($"Strand {first.Number}: {ends}", What(input.Traced, EndPort(input.Traced, first.First), EndPort(input.Traced, first.Last)), input.Traced.Address(first.First), input.Title, format);
        }

        Link link = plant.Links[subject.Link];
        return new CardHeading($"{plant.Address(link.From)} to {plant.Address(link.To)}", What(input.Traced, link.From.Port, link.To.Port), plant.Address(link.From), input.Title, format);
    }

    /// <summary>The heading as drawn.</summary>
    /// <param name="left">Left edge of the card's inside.</param>
    /// <param name="top">Its top edge.</param>
    /// <param name="card">Which card of the subject, such as <c>card 1 of 2</c>.</param>
    /// <param name="sheet">Which sheet of the set; empty where there is one.</param>
    public List<SceneElement> Draw(double left, double top, string card, string sheet)
    {
        var elements = new List<SceneElement>
        {
            new Label(left + WordsWidth, top + CapHeights.Strand + 0.3, card, CapHeights.Strand, Anchor.End, Palette.Ink),
        };
        if (sheet.Length > 0)
            elements.Add(new Label(left + WordsWidth, top + CapHeights.Strand + 0.3 + SmallLine + 0.4, sheet, SmallCap, Anchor.End, Palette.MutedInk));
        if (_mark is not null)
            elements.Add(_mark.Draw(left + _width - MarkSide, top, QrMark.LeastModuleMm));
        double baseline = top + _titleCap;
        foreach (string line in _title)
        {
            elements.Add(new Label(left, baseline, line, _titleCap, Anchor.Start, Palette.Ink));
            baseline += TitleLine;
        }

        baseline += CapHeights.Strand - _titleCap;
        foreach (string line in _what.Concat(_plant))
        {
            elements.Add(new Label(left, baseline, line, CapHeights.Strand, Anchor.Start, Palette.Ink));
            baseline += CardMeasures.Line;
        }

        baseline += SmallCap - CapHeights.Strand;
        foreach ((string text, double blank, double x, int line) in _marks)
        {
            double y = baseline + (line * SmallLine);
            elements.Add(new Label(left + x, y, text, SmallCap, Anchor.Start, Palette.Ink));
            double end = left + x + FontMetrics.WidthMm(text, SmallCap) + 0.8;
            if (blank > 0)
                elements.Add(new Line(end, y + 0.3, end + blank, y + 0.3, Palette.Ink, LineWidths.Leader));
        }

        elements.Add(new Line(left, top + Height, left + _width, top + Height, Palette.Ink, LineWidths.Leader));
        return elements;
    }

    private static PortRef EndPort(TracedPlant traced, int position) => traced.Graph.PlaceOf(position).Port;

    /// <summary>Network and application, as far as they are stated.</summary>
    private static string What(TracedPlant traced, PortRef from, PortRef to)
    {
        var words = new List<string>(3);
        int here = traced.Plant.NetworkOf(from), there = traced.Plant.NetworkOf(to);
        if (here >= 0 || there >= 0)
        {
            string network = here >= 0 && there >= 0 && here != there
                ? $"{Network(traced, here)} to {Network(traced, there)}"
                : Network(traced, here >= 0 ? here : there);
            words.Add($"Network {network}");
        }

        string? sends = traced.Plant.Port(from).Application?.Name, hears = traced.Plant.Port(to).Application?.Name;
        if ((sends ?? hears) is { } application)
            words.Add(sends is not null && hears is not null && sends != hears ? $"{sends} to {hears}" : application);
        return string.Join(", ", words);
    }

    private static string Network(TracedPlant traced, int index)
    {
        Network network = traced.Plant.Networks[index];
        string colour = network.Colour is { } c ? $" ({c})" : "";
        return $"{network.Name}{colour}{(network.Key is { } key ? $", key {key}" : "")}";
    }

    /// <summary>Site, revision, date, number and author; a revision or date that is not stated is left for a pen.</summary>
    private void AppendMarks(PlantTitle plant)
    {
        double x = 0;
        int line = 0;
        foreach ((string caption, string? value, double blank) in ((string, string?, double)[])
            [
                ("", plant.Site, 0), ("rev.", plant.Revision, BlankShort), ("date", plant.Date, BlankLong), ("no.", plant.Number, 0), ("by", plant.Author, 0),
            ])
        {
            if (string.IsNullOrWhiteSpace(value) && blank == 0)
                continue;
            bool empty = string.IsNullOrWhiteSpace(value);
            string text = empty ? caption : caption.Length > 0 ? $"{caption} {value}" : value!;
            List<string> parts = CardWrap.Lines(text, WordsWidth, SmallCap, most: 2);
            foreach (string part in parts)
            {
                double width = FontMetrics.WidthMm(part, SmallCap) + (empty ? blank + 0.8 : 0);
                if (x > 0 && (x + width > WordsWidth || parts.Count > 1))
                {
                    x = 0;
                    line++;
                }

                _marks.Add((part, empty ? blank : 0, x, line));
                x += width + 3;
            }
        }
    }
}
