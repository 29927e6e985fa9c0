using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Card;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Card;

/// <summary>Which cards there are, how large, and how they lie on larger paper. Sheet sizes: ISO 216.</summary>
public sealed class CardPaperTests
{
    [Fact]
    public void A_link_of_two_strands_has_an_A5_card_and_a_single_strand_an_A6_card()
    {
        Assert.Equal((148, 210), Size(Plan(CardDocuments.Gallery("methods/duplex-B.yaml"))[0]));
        Assert.Equal((105, 148), Size(Plan(CardDocuments.Gallery("methods/duplex-B.yaml", new Choice { Strand = 1 }))[0]));
        Assert.Equal((105, 148), Size(Plan(CardDocuments.Gallery("arrays/single-fibre.yaml"))[0]));
    }

    [Fact]
    public void Every_link_has_its_cards_in_the_order_of_the_document()
    {
        string[] subjects = [.. Plan(CardDocuments.Gallery("methods/duplex-B.yaml")).Select(s => s.Subject)];
        Assert.Equal([.. Enumerable.Range(1, 6).Select(k => $"Link SW-L/{k} to SW-R/{k}, card 1 of 1")], subjects);
    }

    // A four-lane link has eight fibres in use: four cards of two strands.
    [Fact]
    public void A_link_of_four_lanes_has_a_card_for_each_lane()
    {
        IReadOnlyList<DrawingSheet> sheets = CardDocuments.Draw(CardDocuments.Gallery("methods/parallel-B.yaml"));
        Assert.Equal(4, sheets.Count);
        for (int lane = 1; lane <= 4; lane++)
        {
            DrawnCard card = DrawnCard.Of(sheets[lane - 1]);
            // Lane k sends on position k and hears on 13-k (trade facts, polarity, 4.1).
            Assert.Equal([$"1:{lane}", $"1:{13 - lane}"], card.Cells.Take(2).Select(c => c.Words));
            Assert.Contains($"Tx {lane}", card.AllWords, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void One_chosen_link_gives_its_cards_alone() =>
        Assert.Equal(["Link SW-L/3 to SW-R/3, card 1 of 1"], Plan(CardDocuments.Gallery("methods/duplex-B.yaml", new Choice { Link = 2 })).Select(s => s.Subject));

    [Fact]
    public void Hops_that_do_not_fit_go_on_on_another_card()
    {
        IReadOnlyList<DrawingSheet> sheets = CardDocuments.Draw(CardDocuments.Gallery("opera-house/plant.yaml", new Choice { Link = 0 }));
        Assert.Equal(2, sheets.Count);
        DrawnCard first = DrawnCard.Of(sheets[0]), second = DrawnCard.Of(sheets[1]);
        Assert.Contains("goes on on card 2", first.AllWords, StringComparison.Ordinal);
        Assert.Contains("from card 1", second.AllWords, StringComparison.Ordinal);
        Assert.Contains("card 2 of 2", second.AllWords, StringComparison.Ordinal);
        // Eleven hops in all, each told once.
        Assert.Equal(Enumerable.Range(1, 11).Select(h => $"Hop {h} of 11"), first.Hops.Concat(second.Hops).Select(h => h.Title![..h.Title!.IndexOf(':')]));
        Assert.Empty(first.Words("ends"));
        Assert.NotEmpty(second.Words("ends"));
    }

    [Fact]
    public void A4_landscape_takes_two_A5_cards_side_by_side()
    {
        ViewInput input = CardDocuments.Gallery("methods/duplex-B.yaml") with { Paper = new PaperChoice([SheetFormat.A4Landscape], MayGrow: false) };
        IReadOnlyList<PlannedSheet> sheets = Plan(input);
        Assert.Equal(3, sheets.Count);
        Assert.Equal((297, 210), Size(sheets[0]));
        DrawnCard card = DrawnCard.Of(CardDocuments.Draw(input)[0]);
        Assert.Equal(14, card.Hops.Count);
        Assert.Equal(2, card.Labels.Count(l => l.Label.Text == "card 1 of 1"));
        // 297 less two of 148 leaves half a millimetre at each side; the cut lies in the middle of the sheet.
        Line[] cuts = [.. card.Sheet.Layers[0].Children.OfType<Line>()];
        Assert.All(cuts, c => Assert.Equal(148.5, c.X1, 6));
        Assert.NotEmpty(cuts);
        Assert.All(card.Labels, l => Assert.True(l.Label.Extent().Right < 148.5 || l.Label.Extent().X > 148.5));
    }

    [Fact]
    public void A4_portrait_takes_four_A6_cards()
    {
        const string ports = "plant: Eight single fibres\nparts:\n  H: { kind: single-fibre interface, ports: 5, application: 1000BASE-BX10-D }\n  U: { kind: single-fibre interface, ports: 5, application: 1000BASE-BX10-U }\nruns:\n  - H/1..5, simplex cord 20 m, U/1..5\nlinks:\n  - H/1..5 to U/1..5\n";
        ViewInput input = CardDocuments.Text(ports) with { Paper = new PaperChoice([SheetFormat.A4Portrait], MayGrow: false) };
        IReadOnlyList<DrawingSheet> sheets = CardDocuments.Draw(input);
        Assert.Equal(2, sheets.Count);
        Assert.Equal(4, DrawnCard.Of(sheets[0]).Labels.Count(l => l.Label.Text == "card 1 of 1"));
        Assert.Equal(2.5, DrawnCard.Of(sheets[0]).Labels.Where(l => l.Layer == "hops").Min(l => l.Label.CapHeightMm));
    }

    [Fact]
    public void Paper_with_a_small_sheet_among_it_is_not_taken_for_cards() =>
        Assert.Equal((148, 210), Size(Plan(CardDocuments.Gallery("methods/duplex-B.yaml") with { Paper = new PaperChoice([SheetFormat.A4Landscape, SheetFormat.A5Landscape], MayGrow: false) })[0]));

    [Theory]
    [MemberData(nameof(CardDocuments.All), MemberType = typeof(CardDocuments))]
    public void Names_of_sheets_are_letters_digits_and_hyphens_and_stand_once(string document)
    {
        string[] names = [.. Plan(CardDocuments.Gallery(document)).Select(s => s.Name)];
        Assert.Equal(names.Length, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(names, n => Assert.All(n, c => Assert.True(char.IsLetterOrDigit(c) || c == '-')));
    }

    [Fact]
    public void Names_and_rooms_of_the_greatest_length_stay_on_the_card()
    {
        string name = string.Concat(Enumerable.Repeat("ABCDEFGHIJ", 8))[..79];
        ViewInput input = CardDocuments.Text(
            $$"""
            plant: {{name}} {{name}} {{name}}
            parts:
              {{name}}L: { kind: duplex interface, room: {{name}} {{name}} }
              {{name}}R: { kind: duplex interface, room: {{name}} {{name}} }
              {{name}}P: { kind: duplex panel, ports: 1, room: {{name}} {{name}} }
            runs:
              - {{name}}L/1, A-to-B cord 2 m, {{name}}P/1, A-to-B cord 2 m, {{name}}R/1
            links:
              - {{name}}L/1 to {{name}}R/1
            """);
        foreach (DrawingSheet sheet in CardDocuments.Draw(input))
        {
            Assert.All(DrawnCard.Of(sheet).Labels, l =>
            {
                Area letters = l.Label.Extent();
                Assert.True(letters.X >= 5 && letters.Right <= sheet.WidthMm - 5 && letters.Bottom <= sheet.HeightMm - 5, l.Label.Text);
            });
        }
    }

    // Not the clock, which others share: what is allocated for twice the links is about twice as much.
    [Fact]
    public void Cards_of_twice_the_links_take_about_twice_the_memory()
    {
        Allocated(24);
        double ratio = (double)Allocated(480) / Allocated(240);
        Assert.InRange(ratio, 1.5, 2.5);
    }

    private static long Allocated(int links)
    {
        ViewInput input = CardDocuments.Text($"plant: Many\nparts:\n  L: {{ kind: duplex interface, ports: {links} }}\n  R: {{ kind: duplex interface, ports: {links} }}\nruns:\n  - L/1..{links}, A-to-B cord 2 m, R/1..{links}\nlinks:\n  - L/1..{links} to R/1..{links}\n");
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(links, CardDocuments.Draw(input).Count);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static IReadOnlyList<PlannedSheet> Plan(ViewInput input) => new CardView().Plan(input);

    private static (double, double) Size(PlannedSheet sheet) => (sheet.Format.WidthMm, sheet.Format.HeightMm);
}
