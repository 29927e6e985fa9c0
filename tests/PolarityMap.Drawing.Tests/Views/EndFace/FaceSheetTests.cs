using PolarityMap.Core.Parts;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Svg;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.EndFace;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.EndFace;

/// <summary>The sheets: their paper, their words for a reader, and that no word is hit by anything.</summary>
public sealed class FaceSheetTests
{
    private static readonly PaperChoice[] Papers =
    [
        PaperChoice.SmallestThatIsClear,
        new([SheetFormat.A4Portrait], MayGrow: false),
        new([SheetFormat.LetterPortrait, SheetFormat.LetterLandscape], MayGrow: false),
        new([SheetFormat.LetterLandscape], MayGrow: false),
        new([SheetFormat.A3Landscape], MayGrow: false),
    ];

    public static TheoryData<string> Plants() => [.. FacePlants.Names];

    [Theory]
    [MemberData(nameof(Plants))]
    public void No_word_touches_another_word_a_line_or_an_edge(string name)
    {
        foreach (PaperChoice paper in Papers)
        {
            foreach (DrawingSheet sheet in FacePlants.Named(name).Draw(paper: paper))
                Assert.Equal("", string.Join("\n", Clashes.On(sheet)));
        }
    }

    [Theory]
    [MemberData(nameof(Plants))]
    public void Everything_lies_inside_the_frame_and_no_panel_covers_another(string name)
    {
        foreach (PaperChoice paper in Papers)
        {
            foreach (DrawingSheet sheet in FacePlants.Named(name).Draw(paper: paper))
            {
                Box[] panels = [.. Faces.All(sheet).OfType<SceneGroup>().Where(g => g.Role == GroupRole.GraphicsSymbol).Select(g => g.Children.OfType<Box>().First())];
                Assert.NotEmpty(panels);
                Assert.All(panels, p => Assert.True(p.X > 20 && p.Y > 10 && p.X + p.Width < sheet.WidthMm - 10 && p.Y + p.Height < sheet.HeightMm - 35));
                for (int i = 0; i < panels.Length; i++)
                    Assert.All(panels.Skip(i + 1), q => Assert.False(panels[i].X < q.X + q.Width && q.X < panels[i].X + panels[i].Width && panels[i].Y < q.Y + q.Height && q.Y < panels[i].Y + panels[i].Height));
            }
        }
    }

    /// <summary>Numbers and colour letters 2.5 mm, nothing under 1.8 mm (ISO 3098, and our own rule).</summary>
    [Theory]
    [MemberData(nameof(Plants))]
    public void Letters_are_as_high_as_they_have_to_be(string name)
    {
        foreach (DrawingSheet sheet in FacePlants.Named(name).Draw())
        {
            Assert.All(Faces.All(sheet).OfType<Label>(), l => Assert.True(l.CapHeightMm >= 1.8));
            Assert.All(sheet.Layers.Where(l => l.Id == "parts").SelectMany(Faces.All).OfType<Label>(), l => Assert.True(l.CapHeightMm >= 2.5));
        }
    }

    [Fact]
    public void Smaller_than_A4_nothing_is_drawn()
    {
        Assert.Equal("A4", Format(new([SheetFormat.A5Landscape, SheetFormat.A4Portrait], MayGrow: false)).Name);
        SheetFormat grown = Format(new([SheetFormat.A6Portrait], MayGrow: true));
        Assert.True(grown.WidthMm >= 297 && grown.HeightMm >= 210);
        Assert.Throws<DrawingTooLargeException>(() => Format(new([SheetFormat.A5Landscape, SheetFormat.A5Portrait], MayGrow: false)));
    }

    [Fact]
    public void The_first_paper_that_takes_the_panels_is_taken()
    {
        Assert.Equal(SheetFormat.A3Landscape, Format(new([SheetFormat.A3Landscape, SheetFormat.A4Portrait], MayGrow: true)));
        Assert.Equal(SheetFormat.LetterPortrait, Format(new([SheetFormat.LetterPortrait, SheetFormat.A4Portrait], MayGrow: true)));
    }

    [Fact]
    public void Sheets_are_named_apart_and_say_which_of_how_many_they_are()
    {
        ViewInput input = FacePlants.TrunkBetweenCassettes(32, "fully-reversed", Keying.Aligned).Input();
        IReadOnlyList<PlannedSheet> sheets = new EndFaceView().Plan(input);
        Assert.Equal(["end-face-1", "end-face-2"], sheets.Select(s => s.Name));
        Assert.Equal(["Mating 1", "Mating 2"], sheets.Select(s => s.Subject));
        Assert.Contains("2 of 2", Faces.Words(sheets[1].Draw(new SheetPlace(2, 2))));
    }

    [Theory]
    [MemberData(nameof(Plants))]
    public void A_panel_has_a_name_and_tells_every_pair_to_a_reader(string name)
    {
        foreach (DrawingSheet sheet in FacePlants.Named(name).Draw())
        {
            Assert.False(string.IsNullOrWhiteSpace(sheet.Title) || string.IsNullOrWhiteSpace(sheet.Description));
            SceneGroup[] panels = [.. Faces.All(sheet).OfType<SceneGroup>().Where(g => g.Role == GroupRole.GraphicsSymbol)];
            Assert.NotEmpty(panels);
            foreach (SceneGroup panel in panels)
            {
                Assert.False(string.IsNullOrWhiteSpace(panel.Title) || string.IsNullOrWhiteSpace(panel.Description));
                foreach (SceneGroup diagram in panel.Children.OfType<SceneGroup>().Where(g => g.Id!.Contains("meets")))
                {
                    foreach ((string upper, string lower) in Faces.Pairs(sheet, diagram.Id!).Where(p => p.Upper.Length > 0 && p.Lower.Length > 0))
                        Assert.Contains($"{upper} meets {lower}", panel.Description);
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Plants))]
    public void Ids_are_unique_and_the_layers_lie_in_order(string name)
    {
        foreach (DrawingSheet sheet in FacePlants.Named(name).Draw())
        {
            string[] ids = [.. Faces.All(sheet).OfType<SceneGroup>().Where(g => g.Id is not null).Select(g => g.Id!)];
            Assert.Equal(ids.Length, ids.Distinct().Count());
            Assert.Equal(["frame", "parts", "labels", "findings", "notes", "legend"], sheet.Layers.Select(l => l.Id));
        }
    }

    [Fact]
    public void The_caution_stands_on_every_sheet()
    {
        foreach (DrawingSheet sheet in FacePlants.TrunkBetweenCassettes(32, "fully-reversed", Keying.Aligned).Draw())
            Assert.Contains("Never look into a fibre end", Faces.Words(sheet));
    }

    [Fact]
    public void The_same_plant_gives_the_same_bytes() => Assert.Equal(
        SvgWriter.Write(FacePlants.Harness().Draw()[0], new SvgOptions { EmbedFont = false }),
        SvgWriter.Write(FacePlants.Harness().Draw()[0], new SvgOptions { EmbedFont = false }));

    private static SheetFormat Format(PaperChoice paper) => new EndFaceView().Plan(FacePlants.Duplex().Input(paper: paper))[0].Format;
}
