using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Draws the signs of findings at the parts and matings that they are about.</summary>
internal sealed class FaultPainter(Sheetful sheetful, int page, PaintScope scope)
{
    private readonly Placement _placement = sheetful.Placement;

    /// <summary>The signs, once painted.</summary>
    public List<SceneElement> Signs { get; } = [];

    /// <summary>Their codes, on paper of their own, once painted.</summary>
    public List<Label> Codes { get; } = [];

    public void Paint()
    {
        foreach (FaultSign sign in sheetful.Layout.Faults)
        {
            if (sign.Column <= scope.Through && _placement.Columns[sign.Column].Page == page)
                Paint(sign);
        }
    }

    private void Paint(FaultSign sign)
    {
        if (sign.Spot == FaultSpot.Keys)
        {
            PaintAboveKeys(sign);
            return;
        }

        const double rim = 0.4;
        ColumnPlace column = _placement.Columns[sign.Column];
        double y = sheetful.OriginY + _placement.Y(sign.Row);
        double x = sheetful.OriginX + (FaultSign.Size / 2) + FaultSign.Lead + sign.Spot switch
        {
            FaultSpot.Gutter => column.X - _placement.Gutters[sign.Column - 1].ArrowRight,
            FaultSpot.Box when sign.AtLeft => column.X + column.LeftCell + column.LeftWords - FaultSigns.RoomInBox(sheetful.Layout, sign.Column, left: true, _placement.IsTight),
            FaultSpot.Box => column.Right - column.RightCell - column.RightWords,
            _ => column.X - OpenEnds.Length(sheetful.Text, sign.Way, sign.Row) - FaultSign.StartRoom + 1,
        };
        if (sign.Spot != FaultSpot.Start)
        {
            // Where paper rims it, a sign stands out from a strand of its own colour.
            Signs.Add(new Circle(x, y, (FaultSign.Size / 2) + rim, Fill: Palette.Paper));
            if (sign.HasCode(_placement.IsTight))
                Codes.Add(Label.CentredOn(x + (FaultSign.Size / 2) + FaultSign.CodeLead, y, sign.Code, CapHeights.Strand, Anchor.Start, Palette.Ink, Underlay.Paper));
        }

        Signs.Add(FindingMarks.Of(sign.Finding.Rule.Severity, x, y, FaultSign.Size));
    }

    /// <summary>The sign and its code in the middle of the gutter, above the word of the keys.</summary>
    private void PaintAboveKeys(FaultSign sign)
    {
        ColumnPlace column = _placement.Columns[sign.Column];
        GutterPlace gutter = _placement.Gutters[sign.Column - 1];
        string code = sign.Code;
        double width = FaultSign.Size + FaultSign.CodeLead + SheetText.Width(code);
        double left = sheetful.OriginX + column.X - gutter.ArrowRight - (gutter.Label / 2) - (width / 2);
        double y = sheetful.OriginY + _placement.Y(sign.Row) - (Measures.Pitch / 2) - FaultSign.AboveKeys + (FaultSign.Size / 2);
        Signs.Add(FindingMarks.Of(sign.Finding.Rule.Severity, left + (FaultSign.Size / 2), y, FaultSign.Size));
        Codes.Add(Label.CentredOn(left + FaultSign.Size + FaultSign.CodeLead, y, code, CapHeights.Strand, Anchor.Start, Palette.Ink));
    }
}
