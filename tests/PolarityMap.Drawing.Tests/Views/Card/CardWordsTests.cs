using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Svg;
using PolarityMap.Drawing.Views;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Card;

/// <summary>What cards say. Positions and colours are typed by hand from the sources named.</summary>
public sealed class CardWordsTests
{
    public static TheoryData<string> Documents => CardDocuments.All;

    // What has to be on every card was laid down with the view; the wording is its own.
    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_card_carries_the_cautions(string document) => Assert.All(Cards(document), card =>
    {
        string foot = card.Words("foot");
        foreach (string said in (string[])
            [
                "Assume every fibre is live", "its light is invisible", "Never look into a fibre end, plug or port",
                "unplug or power down the transmitters at both ends", "never look into a fibre or the source",
                "laser class label and local rules", "Clean and inspect before mating", "Fibre shards",
            ])
            Assert.Contains(said, foot, StringComparison.Ordinal);
    });

    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_card_names_its_link_its_document_and_its_place_in_the_set(string document)
    {
        (ViewInput input, IReadOnlyList<DrawingSheet> sheets) = CardDocuments.Drawn(document);
        for (int i = 0; i < sheets.Count; i++)
        {
            string head = DrawnCard.Of(sheets[i]).Words("head");
            Assert.Contains(input.Title.Title, head, StringComparison.Ordinal);
            Assert.Matches(@"card \d+ of \d+", head);
            if (sheets.Count > 1)
                Assert.Contains($"sheet {i + 1} of {sheets.Count}", head, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_finding_about_a_strand_is_told_on_a_card(string document)
    {
        (ViewInput input, IReadOnlyList<DrawingSheet> sheets) = CardDocuments.Drawn(document);
        string words = string.Join(' ', sheets.Select(s => DrawnCard.Of(s).AllWords));
        foreach (Finding finding in input.Findings.Where(f => f.Strands.Count > 0))
            Assert.Contains($"{finding.Rule.Code} {finding.Rule.Title}: ", words, StringComparison.Ordinal);
    }

    // The demo plant names its own network, application, rooms and marks.
    [Fact]
    public void The_heading_tells_network_application_site_revision_and_date()
    {
        DrawnCard card = Cards("opera-house/plant.yaml")[0];
        string head = card.Words("head");
        Assert.StartsWith("card 1 of 2 sheet 1 of 128 LX-SW/1 to LX-D1/1 Network lighting (red), key K1, 10GBASE-SR Opera house, four networks to sixteen desks", head, StringComparison.Ordinal);
        Assert.EndsWith("Lantern Opera House rev. A date 2026-03-01 no. OH-01 by Stage systems", head, StringComparison.Ordinal);
        Assert.Contains("+Equipment room", card.AllWords, StringComparison.Ordinal);
        Assert.Contains("red jacket", card.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void A_revision_that_is_not_stated_leaves_a_line_for_a_pen()
    {
        DrawnCard card = Cards("methods/duplex-B.yaml")[0];
        Label caption = card.Labels.Single(l => l.Label.Text == "rev.").Label;
        SceneGroup head = card.Sheet.Layers.Single(l => l.Id == "words").Children.OfType<SceneGroup>().Single(g => g.Id == "head");
        Assert.Contains(head.Children.OfType<Line>(), l => l.X1 > caption.Extent().Right && l.X2 - l.X1 > 8 && Math.Abs(l.Y1 - caption.BaselineY) < 0.5);
    }

    // Method B by the trade facts (polarity, 3.1): strand of port 1 lands on trunk fibres 11 and 12. TIA-598: 11 rose, 12 aqua;
    // letters of IEC 60757 as printed on sheets: PK, TQ.
    [Fact]
    public void A_cable_hop_names_the_fibre_and_its_colour_letters()
    {
        DrawnCard card = Cards("methods/duplex-B.yaml")[0];
        Assert.Contains("1: fibre 11 PK rose, 2: fibre 12 TQ aqua", card.AllWords, StringComparison.Ordinal);
        Assert.Contains("1 PK", card.Labels.Select(l => l.Label.Text));
    }

    // An eight-fibre cable counts its fibres, not its places: place 12 of 12 is fibre 8 (positions 1-4 and 9-12). TIA-598: 8 black.
    [Fact]
    public void Places_without_a_fibre_are_not_counted_as_fibres() =>
        Assert.Contains("1: fibre 8 BK black, 2: fibre 1 BU blue", Cards("opera-house/plant.yaml")[0].AllWords, StringComparison.Ordinal);

    // German sequence, DIN VDE 0888 (three public sources): red, green, blue, yellow, white, grey, brown, violet, turquoise,
    // black, orange, pink.
    [Fact]
    public void Colours_follow_the_sequence_of_the_plant()
    {
        ViewInput input = CardDocuments.Text(
            """
            plant: German colours
            defaults: { colours: DIN VDE 0888 }
            parts:
              L: { kind: duplex interface, ports: 6 }
              R: { kind: duplex interface, ports: 6 }
              KL: { kind: U1 cassette }
              KR: { kind: U1 cassette }
              T: { kind: Type-B trunk, length: 30 m }
            runs:
              - L/1..6, A-to-B cord 2 m, KL/1..6
              - KL/rear, T, KR/rear
              - KR/1..6, A-to-B cord 2 m, R/1..6
            links:
              - L/1..6 to R/1..6
            """);
        Assert.Contains("fibre 1 RD red", DrawnCard.Of(CardDocuments.Draw(input)[0]).AllWords, StringComparison.Ordinal);
        Assert.Contains("fibre 11 OG orange", DrawnCard.Of(CardDocuments.Draw(input)[1]).AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void A_strand_that_comes_out_elsewhere_is_told_with_the_end_that_was_meant()
    {
        // As-found fault D05 of the gallery: legs 1 and 2 exchanged, so link 1 arrives where link 5 should.
        string words = Cards("faults/D05.yaml")[0].AllWords;
        Assert.Contains("Strand 1 comes out at SW-R/5:B (receive), meant: SW-R/1.", words, StringComparison.Ordinal);
        Assert.Contains("SW-R/1:B is reached by strand 9 from SW-L/5:A.", words, StringComparison.Ordinal);
        Assert.Contains("D05 wrong leg: legs 1 and 2 of T have changed places", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_strand_that_comes_out_as_meant_is_told_without_more() =>
        Assert.EndsWith("Strand 2 comes out at SW-R/1:A (transmit).", Cards("methods/duplex-B.yaml")[0].Words("ends"), StringComparison.Ordinal);

    [Fact]
    public void An_open_end_is_told_to_be_kept_capped() =>
        Assert.Contains("open end: light comes out here, keep it capped", Cards("faults/P03.yaml")[0].AllWords, StringComparison.Ordinal);

    [Fact]
    public void Strands_that_meet_no_fibre_share_one_card()
    {
        DrawnCard card = Cards("faults/M04.yaml")[0];
        Assert.Contains("QS-L/1~QS-R/1/near is plugged in and meets no fibre, meant: QS-R/1.", card.Words("ends"), StringComparison.Ordinal);
        Assert.EndsWith("So do strands 2 to 15.", card.Words("ends"), StringComparison.Ordinal);
    }

    [Fact]
    public void An_adapter_in_which_two_plugs_meet_is_named_with_its_keys() =>
        Assert.Contains("keys aligned, in PANEL-L/1", Cards("methods/parallel-B.yaml")[0].AllWords, StringComparison.Ordinal);

    [Fact]
    public void Strands_that_part_are_told_one_after_the_other()
    {
        ViewInput input = CardDocuments.Text(
            """
            plant: A pair that parts
            parts:
              SW: duplex interface
              D1: duplex interface
              D2: duplex interface
            runs:
              - SW/1:A, simplex cord 2 m, D1/1:B
              - SW/1:B, simplex cord 2 m, D2/1:A
            links:
              - SW/1 to D1/1
            """);
        DrawnCard card = DrawnCard.Of(Assert.Single(CardDocuments.Draw(input)));
        Assert.Equal(["1:A", "near", "far", "1:B"], card.Followed("strand-1"));
        Assert.Equal(["1:B", "near", "far", "1:A"], card.Followed("strand-2"));
        Assert.Contains("2 goes on from its ring above", card.AllWords, StringComparison.Ordinal);
        Assert.Equal(2, card.Strands.Count(s => s.Id == "strand-2"));
    }

    [Fact]
    public void A_closed_loop_has_no_source_and_no_light()
    {
        ViewInput input = CardDocuments.Text(
            """
            plant: A loop
            parts:
              K1: { kind: U1 cassette, base: 8 }
              K2: { kind: U1 cassette, base: 8 }
              T: { kind: Type-B trunk, base: 8, length: 30 m }
            runs:
              - K1/rear, T, K2/rear
              - K1/1, A-to-B cord 2 m, K2/1
            """);
        IReadOnlyList<DrawingSheet> sheets = CardDocuments.Draw(input);
        Assert.Equal(2, sheets.Count);
        Assert.All(sheets, s =>
        {
            DrawnCard card = DrawnCard.Of(s);
            Assert.All(card.Hops, h => Assert.Empty(DrawnCard.Faces(h)));
            Assert.Contains("goes on at the top: a closed loop", card.AllWords, StringComparison.Ordinal);
        });
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void Arrows_run_from_transmit_to_receive(string document)
    {
        (ViewInput input, IReadOnlyList<DrawingSheet> sheets) = CardDocuments.Drawn(document);
        foreach (DrawnCard card in sheets.Select(DrawnCard.Of))
        {
            foreach ((string id, StrandPath path) in card.Strands)
            {
                int number = int.Parse(id["strand-".Length..]);
                int strand = input.Selection.Strands.FirstOrDefault(s => input.Traced.NumberOf(s) == number, -1);
                if (strand < 0)
                    continue;
                ReadOnlySpan<int> positions = input.Traced.Strands[strand];
                string first = HopLine.EndWord(input.Traced, positions[0]), last = HopLine.EndWord(input.Traced, positions[^1]);
                if ((first, last) is not (("transmit", "receive") or ("receive", "transmit")))
                    continue;
                // All documents of the gallery write their links along the runs, so the strand's start is at the top.
                bool down = first == "transmit";
                IReadOnlyList<Point> points = path.Route.Flatten(0.05);
                Polygon[] arrows = [.. card.Polygons.Where(p => p.Points.Count == 3 && p.Fill == Palette.Ink
                    && Enumerable.Range(1, points.Count - 1).Any(i => points[i].X == points[i - 1].X && Math.Abs(points[i].X - p.Points[0].X) < 0.01 && p.Points[0].Y > points[i - 1].Y && p.Points[0].Y < points[i].Y))];
                Assert.NotEmpty(arrows);
                Assert.All(arrows, a => Assert.Equal(down, a.Points[0].Y > a.Points[1].Y));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_hop_and_strand_has_a_name_and_every_id_stands_once(string document)
    {
        foreach (DrawingSheet sheet in CardDocuments.Drawn(document).Sheets)
        {
            DrawnCard card = DrawnCard.Of(sheet);
            Assert.NotEmpty(sheet.Title);
            Assert.NotEmpty(sheet.Description);
            Assert.All(card.Hops, h => Assert.StartsWith("Hop ", h.Title!, StringComparison.Ordinal));
            string svg = SvgWriter.Write(sheet, new SvgOptions());
            string[] ids = [.. svg.Split(" id=\"")[1..].Select(s => s[..s.IndexOf('"')])];
            Assert.Equal(ids.Length, ids.Distinct().Count());
            Assert.Equal(svg, SvgWriter.Write(sheet, new SvgOptions()));
        }
    }

    private static List<DrawnCard> Cards(string document) => [.. CardDocuments.Drawn(document).Sheets.Select(DrawnCard.Of)];
}
