using PolarityMap.Core.Parts;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.EndFace;

/// <summary>Which matings share a panel, and what is said of them.</summary>
public sealed class KindTests
{
    [Fact]
    public void Matings_that_are_alike_are_drawn_once_and_counted()
    {
        var bench = new FaceBench()
            .Add("SW", "duplex interface", v => v.Set("ports", 5));
        for (int n = 1; n <= 5; n++)
            bench.Add($"C{n}", "duplex cord", v => v.Set("type", "A-to-B")).Mate($"SW/{n}", $"C{n}/near");
        Assert.Equal(["1. Duplex LC, both flat, at an interface"], Titles(bench));
        Assert.Contains("SW/1 with C1/near, and 4 alike.", Faces.Words(bench.Draw()[0]));
    }

    [Fact]
    public void The_order_of_the_two_in_a_run_makes_no_kind_of_its_own()
    {
        FaceBench bench = new FaceBench()
            .Add("CAS", "cassette", v => v.Set("wiring", "straight"))
            .Add("C1", "duplex cord", v => v.Set("type", "A-to-B"))
            .Add("C2", "duplex cord", v => v.Set("type", "A-to-B"))
            .Mate("CAS/1", "C1/near").Mate("C2/far", "CAS/2");
        Assert.Contains("CAS/1 with C1/near, and 1 alike.", Faces.Words(Assert.Single(bench.Draw())));
    }

    [Theory]
    [InlineData("keys", "aligned", "opposed")]
    [InlineData("pins", "pinned", "unpinned")]
    [InlineData("polish", "flat", "angled")]
    public void Keys_pins_and_polish_make_kinds(string attribute, string one, string other)
    {
        FaceBench bench = new FaceBench();
        foreach ((string name, string word) in new[] { ("X", one), ("Y", other) })
        {
            bench.Add(name, "cassette", v =>
            {
                v.Set("wiring", "straight");
                if (attribute != "keys")
                    v.Set(attribute, word);
            });
            bench.Add($"T{name}", "trunk", v => v.Set("type", "Type-A"));
            bench.Mate($"{name}/rear", $"T{name}/near", attribute == "keys" ? KeyingWords.Parse(word) : Keying.Opposed);
        }

        Assert.Equal(2, Titles(bench).Count);
    }

    [Fact]
    public void The_two_positions_of_a_duplex_port_make_two_kinds() => Assert.Equal(2, Titles(FacePlants.SimplexInDuplex()).Count);

    /// <summary>The two ends of a Type-B trunk show their colours the other way round, so that one picture would lie for the other.</summary>
    [Fact]
    public void The_ends_of_a_trunk_share_a_picture_only_when_their_colours_do()
    {
        Assert.Single(Titles(FacePlants.TrunkBetweenCassettes(12, "Type-A", Keying.Opposed)));
        Assert.Equal(2, Titles(FacePlants.TrunkBetweenCassettes(12, "Type-B", Keying.Opposed)).Count);
    }

    [Fact]
    public void A_title_says_keys_pins_and_polish() => Assert.Equal(
        ["1. 12-position array MPO, keys opposed (key up to key down), pinned to unpinned, both angled"],
        Titles(FacePlants.RearAndTrunk(12, "Type-A", Keying.Opposed, "angled")));

    /// <summary>Angled is 8 degrees (five public sources).</summary>
    [Fact]
    public void Angled_is_said_in_degrees() =>
        Assert.Contains("cassette, guide pins, angled (8\u00A0degrees)", Faces.Words(FacePlants.RearAndTrunk(12, "Type-A", Keying.Opposed, "angled").Draw()[0]));

    [Fact]
    public void A_mating_that_does_not_fit_bears_the_sign_of_an_error_and_the_finding()
    {
        DrawingSheet sheet = FacePlants.Refused().Draw()[0];
        SceneGroup findings = sheet.Layers.Single(l => l.Id == "findings");
        Assert.Equal(8, Faces.All(findings).OfType<Polygon>().Single(p => p.Fill == Palette.Fault).Points.Count);
        Assert.Contains(Faces.All(findings).OfType<Label>(), l => l.Text.StartsWith("M04 array size or key: ", StringComparison.Ordinal));
        Assert.EndsWith(": does not fit", Titles(FacePlants.Refused())[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_mating_that_does_not_fit_bears_the_sign_also_when_nobody_checked()
    {
        var traced = FacePlants.Refused().Trace();
        var input = new ViewInput(traced, Selection.Of(traced, [], new Choice()));
        DrawingSheet sheet = new PolarityMap.Drawing.Views.EndFace.EndFaceView().Plan(input)[0].Draw(new SheetPlace(1, 1));
        Assert.Contains(Faces.All(sheet).OfType<Polygon>(), p => p.Fill == Palette.Fault);
    }

    [Fact]
    public void A_finding_stands_at_the_mating_it_is_about()
    {
        DrawingSheet sheet = FacePlants.RearAndTrunk(12, "Type-B", Keying.Aligned, "angled").Draw()[0];
        Assert.Contains("M06 slopes that do not fit: CAS/rear is angled", Faces.Words(sheet));
        Assert.DoesNotContain(Faces.All(FacePlants.RearAndTrunk(12, "Type-A", Keying.Opposed, "angled").Draw()[0]).OfType<Polygon>(), p => p.Fill == Palette.Fault);
    }

    /// <summary>That light ends nowhere is told of a strand, not of the mating where the strand begins.</summary>
    [Fact]
    public void A_finding_about_a_strand_is_not_told_of_a_mating()
    {
        FaceBench bench = FacePlants.Duplex();
        Assert.Contains(bench.Input().Findings, f => f.Rule.Code == "P03");
        Assert.DoesNotContain("P03", Faces.Words(bench.Draw()[0]));
    }

    [Fact]
    public void A_choice_shows_the_matings_of_its_strands_only()
    {
        FaceBench bench = FacePlants.Duplex().Add("SW2", "duplex interface").Add("S", "duplex cord", v => v.Set("type", "A-to-A").Set("connector", "SC")).Mate("SW2/1", "S/near");
        int part = Enumerable.Range(0, 9).First(p => bench.Trace().Plant.Parts[p].Name == "SW2");
        Assert.Equal(3, Titles(bench).Count);
        Assert.Single(bench.Draw(new Choice { Part = part }).SelectMany(Panels));
    }

    [Fact]
    public void Without_a_mating_there_is_no_sheet() => Assert.Empty(new FaceBench().Add("SW", "duplex interface").Draw());

    [Fact]
    public void Of_very_many_bare_fibres_two_dozen_are_drawn_and_the_rest_is_said()
    {
        DrawingSheet sheet = FacePlants.Bare(144).Draw()[0];
        Assert.Equal(24, Faces.Places(sheet, "kind-1-left").Length);
        Assert.Contains("The first 24 of 144 are drawn", Faces.Words(sheet).Replace('\n', ' '));
    }

    private static List<string> Titles(FaceBench bench) => [.. bench.Draw().SelectMany(Panels).Select(p => p.Title!)];

    private static IEnumerable<SceneGroup> Panels(DrawingSheet sheet) => Faces.All(sheet).OfType<SceneGroup>().Where(g => g.Role == GroupRole.GraphicsSymbol);
}
