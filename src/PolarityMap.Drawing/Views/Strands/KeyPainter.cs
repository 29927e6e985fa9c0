using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Draws how the keys of array matings lie: that of an interface or a fixed part up, that of a plug as it goes in, the same way round
/// as on end-face sheets.
/// </summary>
internal sealed class KeyPainter(Sheetful sheetful, int page, PaintScope scope)
{
    /// <summary>Both keys stand above their connectors, the turned one upside down, so that the pair is seen at one glance.</summary>
    private const double KeyHeight = 1.4;

    /// <summary>From the middle of a key to the dot that says whether its connector has guide pins.</summary>
    private const double ToPins = 2.6;

    private readonly Layout layout = sheetful.Layout;
    private readonly Placement placement = sheetful.Placement;
    private readonly double originX = sheetful.OriginX;
    private readonly double originY = sheetful.OriginY;
    private readonly HashSet<int> _keyedGutters = [];
    private readonly List<SceneElement> _marks = [];
    private readonly List<Label> _words = [];

    /// <summary>The words beside the keys, once painted.</summary>
    public IReadOnlyList<Label> Words => _words;

    /// <summary>The addresses of the adapters, once painted.</summary>
    public List<NamePlace> Adapters { get; } = [];

    /// <summary>The keys that were painted, for the legend.</summary>
    public SheetSigns Signs { get; private set; }

    /// <summary>The keys of every array mating: a tab on each connector and the word, above the connectors.</summary>
    public IReadOnlyList<SceneElement> Paint()
    {
        var seen = new HashSet<PortRef>();
        foreach (Way way in layout.Ways)
        {
            if (way is { ComesIn: true, Passages: [{ In: { Position: >= 0 } first, Node: { } box }, ..] })
                PaintCut(way.FirstColumn, box, first, left: true, seen);
            for (int i = 0; i + 1 < way.Passages.Count; i++)
            {
                if (way.Passages[i].Out is not { Position: >= 0 } from || way.Passages[i + 1].In is not { Position: >= 0 } to)
                    continue;
                if (way.FirstColumn + i >= scope.Through)
                    break;
                if (!from.Port.IsArray || !seen.Add(from.Port.Ref) || from.Mating is not { } mating)
                    continue;
                if (!placement.HasOwnKeys(way.Passages[i].Node!, way.Passages[i + 1].Node!, mating))
                {
                    PaintSharedKeys(way.FirstColumn + i, mating);
                    continue;
                }

                PaintKey(way.FirstColumn + i, way.Passages[i].Node!, way.Passages[i + 1].Node!.Left, from, to.Port, mating);
            }

            if (way is { GoesOn: true, Passages: [.., { Out: { Position: >= 0 } last, Node: { } end }] })
                PaintCut(way.LastColumn, end, last, left: false, seen);
        }

        return _marks;
    }

    private bool IsHere(int column) => column <= scope.Through && placement.Columns[column].Page == page;

    /// <summary>The key of a connector whose partner is on another sheet.</summary>
    private void PaintCut(int column, Node box, Row row, bool left, HashSet<PortRef> seen)
    {
        if (!IsHere(column) || !row.Port.IsArray || !seen.Add(row.Port.Ref) || row.Mating is not { } mating)
            return;
        Row first = FirstOf(left ? box.Left : box.Right, row.Port);
        double x = left ? X(placement.Columns[column].X) - 1.1 : X(placement.Columns[column].Right) + 1.1;
        double top = Y(first) - (Measures.Pitch / 2) + Measures.Inset;

        // Half of the pair is here, so the tab alone would say nothing: the partner's lies beside it.
        double reach = SheetText.Width(mating.Keys.Word());
        double other = left ? x - reach - 3 : x + reach + 3;
        PortRef partner = row.Port.Ref == mating.A ? mating.B : mating.A;
        _marks.Add(Key(x, top, IsTurned(mating, row.Port.Ref, partner, isFirst: !left)));
        _marks.Add(Key(other, top, IsTurned(mating, partner, row.Port.Ref, isFirst: left)));
        AddPins(row.Port.Ref, x, top, leftOfGutter: !left);
        AddPins(partner, other, top, leftOfGutter: left);
        _words.Add(new Label((x + other) / 2, top - 2.1, mating.Keys.Word(), CapHeights.Strand, Anchor.Middle, Palette.Ink));
    }

    /// <summary>A key on its connector: standing up, or, of a plug that is turned over, upside down.</summary>
    private Polygon Key(double x, double top, bool turned)
    {
        Signs |= turned ? SheetSigns.Turned : SheetSigns.Arrays;
        return turned ? Marks.KeyDown(x, top - KeyHeight) : Marks.KeyUp(x, top);
    }

    /// <summary>The dot of a connector with guide pins or with holes for them, beside its key where it is in the gutter.</summary>
    private void AddPins(PortRef port, double keyX, double top, bool leftOfGutter)
    {
        if (sheetful.Input.Traced.Plant.Port(port).Pinned is not { } pinned)
            return;
        Signs |= pinned ? SheetSigns.Pins : SheetSigns.Holes;
        double x = leftOfGutter ? keyX + ToPins : keyX - ToPins, y = top - (KeyHeight / 2);
        _marks.Add(pinned ? Marks.Pins(x, y) : Marks.Holes(x, y));
    }

    /// <summary>True when a connector lies upside down for the one it meets; of two alike the second one in the flow.</summary>
    private bool IsTurned(Mating mating, PortRef port, PortRef partner, bool isFirst)
    {
        if (mating.Keys == Keying.Aligned)
            return false;
        Plant plant = sheetful.Input.Traced.Plant;
        int order = UprightSide.Compare(plant.Parts[port.Part], plant.Port(port), plant.Parts[partner.Part], plant.Port(partner));
        return order > 0 || (order == 0 && !isFirst);
    }

    private static Row FirstOf(List<Row> rows, DrawnPort port)
    {
        int i = 0;
        while (rows[i].Port != port)
            i++;
        return rows[i];
    }

    private double X(double x) => originX + x;

    private double Y(Row row) => originY + placement.Y(row);

    /// <summary>Between small boxes that are all keyed alike the word stands once, at the top of the gutter.</summary>
    private void PaintSharedKeys(int column, Mating mating)
    {
        if (!IsHere(column) || !_keyedGutters.Add(column))
            return;
        double top = layout.Columns[column].Concat(layout.Columns[column + 1]).Where(n => n.NameInside).Select(placement.Top).Min();
        double left = placement.Columns[column].Right;
        double right = placement.IsFoldAfter(column) ? left + placement.Gutters[column].Width : placement.Columns[column + 1].X;
        double middle = X((left + right) / 2);
        _words.Add(new Label(middle, originY + top - 1.4, mating.Keys.Word(), CapHeights.Strand, Anchor.Middle, Palette.Ink));
        _words.Add(new Label(middle, originY + top - 1.4 - Measures.LineOfText, "keys", CapHeights.Strand, Anchor.Middle, Palette.Ink));
    }

    private void PaintKey(int column, Node left, List<Row> rightRows, Row from, DrawnPort rightPort, Mating mating)
    {
        bool folded = placement.IsFoldAfter(column);
        double leftX = X(placement.Columns[column].Right) + 1.1;
        double rightX = X(placement.Columns[column + 1].X) - 1.1;
        double topLeft = Y(FirstOf(left.Right, from.Port)) - (Measures.Pitch / 2) + Measures.Inset;
        double topRight = Y(FirstOf(rightRows, rightPort)) - (Measures.Pitch / 2) + Measures.Inset;
        if (IsHere(column))
        {
            _marks.Add(Key(leftX, topLeft, IsTurned(mating, from.Port.Ref, rightPort.Ref, isFirst: true)));
            AddPins(from.Port.Ref, leftX, topLeft, leftOfGutter: true);
        }

        if (IsHere(column + 1))
        {
            _marks.Add(Key(rightX, topRight, IsTurned(mating, rightPort.Ref, from.Port.Ref, isFirst: false)));
            AddPins(rightPort.Ref, rightX, topRight, leftOfGutter: false);
        }

        if (!IsHere(column))
            return;

        // Where the two do not lie side by side the word stands at the left one.
        string word = mating.Keys.Word();
        bool apart = folded || Math.Abs(topLeft - topRight) > 0.1;
        double middle = apart ? leftX + (placement.Gutters[column].Label / 2) : (leftX + rightX) / 2;
        double baseline = topLeft - 2.1;
        _words.Add(new Label(middle, baseline, word, CapHeights.Strand, Anchor.Middle, Palette.Ink));
        if (mating.Through is { } adapter)
            Adapters.Add(new NamePlace(new Label(middle, baseline - Measures.LineOfText, sheetful.Input.Traced.Plant.Address(adapter), CapHeights.Strand, Anchor.Middle, Palette.Ink), left, false, from));
    }
}
