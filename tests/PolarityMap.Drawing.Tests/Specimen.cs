using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Tests;

/// <summary>A sheet that uses every element, mark and line type once, for the tests of the writer.</summary>
internal static class Specimen
{
    private const double Pitch = 5;
    private const double Top = 34;
    private const double LeftX = 62;
    private const double RightX = 228;

    private static readonly (string Letters, string Name, string Hex)[] Strands =
    [
        ("BU", "blue", "#1F5FBF"), ("OG", "orange", "#F28C28"), ("GN", "green", "#1E8449"), ("BN", "brown", "#7B4A21"),
        ("GY", "slate", "#8C9196"), ("WH", "white", "#FFFFFF"), ("RD", "red", "#C8202C"), ("BK", "black", "#1A1A1A"),
        ("YE", "yellow", "#F7D917"), ("VT", "violet", "#7436A8"), ("PK", "rose", "#F5A3B7"), ("TQ", "aqua", "#45C1C8"),
    ];

    internal static DrawingSheet Sheet()
    {
        SheetFrame frame = SheetFrame.For(SheetFormat.A4Landscape, Title());
        return new DrawingSheet
        {
            WidthMm = frame.Format.WidthMm,
            HeightMm = frame.Format.HeightMm,
            Title = "Specimen sheet",
            Description = "Twelve strands through a full reversal, with every mark and line type.",
            Layers = [frame.Drawing, Parts(), StrandLayer(), Labels(), Findings(), Legend(frame)],
        };
    }

    internal static TitleBlock Title() => new()
    {
        Title = "Reversal of twelve strands",
        SupplementaryTitle = "Specimen of marks",
        Site = "North hall & annex",
        DocumentType = "strand diagram",
        IdentificationNumber = "PM-0001",
        Revision = "B",
        DateOfIssue = "2024-05-17",
        Creator = "Drawing office",
        Sheet = 1,
        Sheets = 2,
    };

    /// <summary>
    /// The way of one strand through a reversal: each pair of rows changes places in its own stretch of the gutter,
    /// the innermost pair first, so that no two crossings fall together.
    /// </summary>
    internal static Route Reversal(int row, double left, double right)
    {
        int pair = row < 6 ? 5 - row : row - 6;
        double unit = (right - left - 36) / 33;
        double from = left + 18 + (unit * (pair * (pair + 5) / 2.0));
        double to = from + (unit * (pair + 3));
        return Route.From(left, RowY(row)).LineTo(from, RowY(row)).CurveTo(to, RowY(11 - row), 0.6).LineTo(right, RowY(11 - row));
    }

    internal static double RowY(int row) => Top + (row * Pitch);

    private static SceneGroup Parts() => new("parts",
    [
        new Box(LeftX - 36, Top - 5, 36, (11 * Pitch) + 10, 1.5, Palette.Ink, LineWidths.Outline, Palette.PartFill),
        new Box(RightX, Top - 5, 36, (11 * Pitch) + 10, 1.5, Palette.Ink, LineWidths.Outline, Palette.PartFill),
        Marks.KeyUp(LeftX - 18, Top - 5),
        Marks.KeyDown(RightX + 18, Top + (11 * Pitch) + 5),
        new Label(LeftX - 18, Top - 9, "K1 rear, key up", CapHeights.Part, Anchor.Middle, Palette.Ink),
        new Label(RightX + 18, Top - 9, "K2 rear, key down", CapHeights.Part, Anchor.Middle, Palette.Ink),
        new Label((LeftX + RightX) / 2, Top - 14, "Trunk T1", CapHeights.SheetTitle, Anchor.Middle, Palette.Ink),
    ]);

    private static SceneGroup StrandLayer()
    {
        var groups = new List<SceneElement>();
        for (int i = 0; i < Strands.Length; i++)
        {
            (_, string name, string hex) = Strands[i];
            DashKind dash = i == 4 ? DashKind.Dashed : i == 9 ? DashKind.Dotted : DashKind.Continuous;
            groups.Add(new SceneGroup(
                $"strand-{i + 1}",
                GroupRole.GraphicsSymbol,
                $"Strand {i + 1}, {name}, position {i + 1} to position {12 - i}",
                "Through trunk T1.",
                [new StrandPath(Reversal(i, LeftX + 0.25, RightX - 0.25), Colour.FromHex(hex), i == 6, dash)]));
        }

        return new SceneGroup("strands", GroupRole.GraphicsObject, "Strands", null, groups);
    }

    private static SceneGroup Labels()
    {
        var labels = new List<SceneElement>();
        for (int i = 0; i < Strands.Length; i++)
        {
            string text = $"{i + 1} {Strands[i].Letters}";
            double end = RowY(11 - i);
            labels.Add(Label.CentredOn(LeftX + 4, RowY(i), text, CapHeights.Strand, Anchor.Start, Palette.Ink, Underlay.Paper));
            labels.Add(Label.CentredOn(RightX - 4, end, text, CapHeights.Strand, Anchor.End, Palette.Ink, Underlay.Paper));
            labels.Add(Label.CentredOn(LeftX - 4, RowY(i), $"({i + 1})", CapHeights.Strand, Anchor.End, Palette.MutedInk));
            labels.Add(Label.CentredOn(RightX + 4, RowY(i), $"({i + 1})", CapHeights.Strand, Anchor.Start, Palette.MutedInk));
        }

        labels.Add(Marks.ArrowRight(LeftX, RowY(6), Palette.Ink));
        labels.Add(Marks.ArrowLeft(LeftX - 3, RowY(7), Palette.Ink));
        labels.Add(Marks.DeadEnd(RightX - 1.5, RowY(0)));
        labels.Add(Marks.Ticks(LeftX + 17, RowY(1), 2));
        return new SceneGroup("labels", labels);
    }

    private static SceneGroup Findings() => new("findings",
    [
        Marks.Error(30, 120),
        Label.CentredOn(35, 120, "Transmit meets transmit: strand 7 RD", CapHeights.Part, Anchor.Start, Palette.Fault),
        Marks.Warning(30, 129),
        Label.CentredOn(35, 129, "Margin under 0.5 dB ≤ 0.75 dB, λ = 850 nm", CapHeights.Part, Anchor.Start, Palette.Warning),
        Marks.Note(30, 138),
        Label.CentredOn(35, 138, "Leg 4 is spare → /2.C4", CapHeights.Part, Anchor.Start, Palette.Note),
        new Circle(180, 128, 6, Palette.Ink, LineWidths.Outline, Palette.PartFill),
        new Polygon([(192, 122), (204, 122), (201, 134), (195, 134)], Palette.Guide, LineWidths.Inner),
    ]);

    private static SceneGroup Legend(SheetFrame frame)
    {
        var lines = new List<SceneElement>();
        DashKind[] kinds = Enum.GetValues<DashKind>();
        for (int i = 0; i < kinds.Length; i++)
        {
            double y = 146 + (i * 4.5);
            lines.Add(new Line(30, y, 90, y, Palette.Ink, LineWidths.Inner, kinds[i]));
            lines.Add(Label.CentredOn(94, y, kinds[i].ToString(), CapHeights.Strand, Anchor.Start, Palette.Ink));
        }

        Area beside = frame.BesideTitleBlock;
        lines.Add(new Label(
            beside.X + 3, beside.CentreY, "Lines that cross do not touch.", CapHeights.Strand, Anchor.Start, Palette.Ink));
        return new SceneGroup("legend", lines);
    }
}
