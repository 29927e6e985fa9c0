using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>
/// The strip of hops of one or two strands, measured: strands in columns at the left, the words of parts and gaps beside them.
/// </summary>
internal sealed class CardStrip
{
    private readonly TracedPlant _traced;
    private readonly double _firstColumn;
    private readonly double _pitch;

    public CardStrip(TracedPlant traced, CardText text, Trail[] trails, SheetFormat format)
    {
        _traced = traced;
        Trails = trails;
        Text = text;
        List<CardRow> rows = RowPlan.Of(traced, trails);
        double label = trails.Max(t => SheetText.Width(t.Label));
        CellWidth = Math.Max(label, rows.SelectMany(r => r.Visits).Max(v => Math.Max(WidthOf(v.Hop.In), WidthOf(v.Hop.Out)))) + (2 * CardMeasures.CellMargin);
        _pitch = Math.Max(CellWidth + 1, CardMeasures.LabelLead + label + CardMeasures.LabelTail);
        Area inside = CardMeasures.Inside(format);
        Width = inside.Width;
        _firstColumn = 1.2 + (CellWidth / 2);
        double last = ColumnX(trails.Length - 1);
        TextX = last + Math.Max(CellWidth / 2, CardMeasures.LabelLead + label) + 2;
        TextWidth = Width - TextX - 1.2;
        Rows = [.. rows.Select((r, i) => new MeasuredRow(this, r, isTop: i == 0))];
    }

    public Trail[] Trails { get; }

    public CardText Text { get; }

    public IReadOnlyList<MeasuredRow> Rows { get; }

    /// <summary>Width of the strip, mm.</summary>
    public double Width { get; }

    /// <summary>Width of a cell, the same throughout.</summary>
    public double CellWidth { get; }

    /// <summary>Where words begin, from the strip's left edge.</summary>
    public double TextX { get; }

    public double TextWidth { get; }

    /// <summary>Height of a crossing from one column to the other.</summary>
    public double CrossingHeight => Math.Max(CardMeasures.Crossing, _pitch / CardMeasures.Widest);

    /// <summary>True when strands are told apart by their numbers.</summary>
    public bool IsPair => Trails.Length > 1;

    /// <summary>The middle of a column, from the strip's left edge.</summary>
    public double ColumnX(int column) => _firstColumn + (column * _pitch);

    /// <summary>What a person meets in the gap below a part: where light is to be expected, the keys and the adapter.</summary>
    public IEnumerable<GapItem> GapItems(CardRow row)
    {
        var matings = new List<string>();
        bool fixedJoint = false;
        foreach (Visit visit in row.Visits)
        {
            int position = visit.Hop.Out;
            if (position < 0)
                continue;
            if (visit.Trail.IsLoop)
            {
                // A loop has no end to put light into.
                if (visit.IsLast)
                    yield return new GapItem("goes on at the top: a closed loop");
                if (Text.MatingWords(position) is { Length: > 0 } keys)
                    matings.Add(keys);
                continue;
            }

            string number = IsPair ? $"{visit.Trail.Number} " : "";
            int partner = _traced.Graph.Outside[position];
            if (partner < 0)
            {
                foreach (GapItem item in OpenItems(visit, number))
                    yield return item;
                continue;
            }

            if (Text.Port(position).Face.Family == ConnectorFamily.Bare)
                fixedJoint = true;
            else if (visit is { IsFirst: true, Hop.In: < 0 })
                yield return HasFibre(partner) ? Item($"{number}source into", "the plug", partner) : new GapItem($"{number}no fibre at {Text.PlaceWords(partner)}");
            else
                yield return Item($"{number}light at", "the end", position);
            if (Text.MatingWords(position) is { Length: > 0 } words && !matings.Contains(words))
                matings.Add(words);
        }

        if (fixedJoint)
            yield return new GapItem("no place to unplug");
        foreach (string words in matings)
            yield return new GapItem(words);
    }

    private IEnumerable<GapItem> OpenItems(Visit visit, string number)
    {
        int position = visit.Hop.Out;
        // An interface with nothing plugged in is told by its end words.
        if (visit.Hop.In < 0)
            yield break;
        if (Text.Blocked(position) is { } port)
        {
            yield return new GapItem($"{number}plugged into {Text.Plant.Address(port)}, meets no fibre there");
            yield break;
        }

        if (Text.FaceOf(position) is not null)
            yield return Item($"{number}light at", "", position);
        yield return new GapItem($"{number}open end{(Text.WaitsIn(position) is { } adapter ? $" in {Text.Plant.Address(adapter)}" : "")}: light comes out here, keep it capped");
    }

    /// <summary>True where light goes on into the part, or comes out of an interface.</summary>
    private bool HasFibre(int position) => _traced.Graph.Inside[position] >= 0 || _traced.Graph.LaneAt(position) is not null;

    private GapItem Item(string before, string without, int position) => Text.FaceOf(position) is { } face
        ? new GapItem(before, face, Text.PlaceWords(position))
        : new GapItem($"{before} {without}");

    private double WidthOf(int position) => position < 0 ? 0 : Math.Max(SheetText.Width(Text.Cell(position)), SheetText.Width(Text.Lane(position)));
}
