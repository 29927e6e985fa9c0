using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Tables;
using PolarityMap.Documents.Tables.Import;
using Xunit;

namespace PolarityMap.Documents.Tests.Tables;

public sealed class ImportTests
{
    // Method U1 written by hand: one crossing in each cassette-trunk-cassette segment and A-to-B cords prove all links.
    private const string Parts = """
        Part;Kind;Ports;Wiring;Length (m);Network;Room
        SW-L;duplex interface;6;;;lighting;Equipment room
        SW-R;duplex interface;6;;;lighting;Stage
        K-L;U1 cassette;;;;;Equipment room
        K-R;U1 cassette;;;;;Stage
        TRUNK;Type-B trunk;;;62;lighting;
        """;

    private const string Matings = """
        From port,To port,Cord type,Length (m),Network,Link
        SW-L/1..6,K-L/1..6,A-to-B cord,2,lighting,SW-L/1..6 to SW-R/1..6
        K-L/rear,K-R/rear,TRUNK,,,
        K-R/1..6,SW-R/1..6,A-to-B cord,"2,5",lighting,
        """;

    private static TableSheet Sheet(string name, string csv) => CsvReader.Read(name, System.Text.Encoding.UTF8.GetBytes(csv));

    private static ImportedTable Import(params TableSheet[] sheets) => TablePlant.Import(sheets, [], "A plant", keepGood: false);

    private static string[] Reasons(ImportedTable table) => [.. table.Rejected.Select(p => p.ToString())];

    [Fact]
    public void A_schedule_made_by_hand_becomes_a_plant_whose_links_are_proven()
    {
        ImportedTable table = Import(Sheet("patching", Matings), Sheet("parts", Parts));
        Assert.Empty(Reasons(table));
        Plant plant = table.Plant!;
        Assert.Equal(6, plant.Links.Count);
        Assert.Empty(Checker.Check(TracedPlant.Of(plant)));
        Assert.Equal("2.5 m", Reading.Part(plant, "K-R/1~SW-R/1").Length.ToString());
        Assert.Equal("62 m", Reading.Part(plant, "TRUNK").Length.ToString());
        Assert.Equal("Stage", Reading.Part(plant, "K-R").Room);
        Assert.Equal("lighting", plant.Networks[Reading.Part(plant, "SW-L/1~K-L/1").Network].Name);
    }

    [Fact]
    public void What_is_written_is_the_document_that_was_checked()
    {
        ImportedTable table = Import(Sheet("patching", Matings), Sheet("parts", Parts));
        Assert.Equal(Told.Strands(table.Plant!), Told.Strands(Reading.Plant(table.Text!)));
    }

    [Fact]
    public void Parts_and_what_joins_them_may_stand_in_one_table_in_any_order()
    {
        ImportedTable table = Import(Sheet("t", """
            part,kind,ports,from,to,cord,length (m)
            ,,,S/1,T/1,LONG CORD,
            S,duplex interface,2,,,,
            ,,,S/2,T/2,A-to-B cord,3
            T,duplex interface,2,,,,
            LONG CORD,A-to-B cord,,,,,30
            """));
        Assert.Empty(Reasons(table));
        Assert.Equal("S/1 = LONG CORD/near\nLONG CORD/far = T/1\nS/2 = S/2~T/2/near\nS/2~T/2/far = T/2", Reading.Matings(table.Plant!));
    }

    // Work that grows with the square of the rows would not end.
    [Fact]
    public void Very_many_rows_that_are_wrong_are_told_in_time()
    {
        string rows = string.Concat(Enumerable.Range(0, 60_000).Select(i => $"{i},1,P{i}/x,,,P{i}/x/1:A,\n"));
        ImportedTable table = Import(Sheet("h", "strand,hop,part,kind,attributes,in,out\n" + rows));
        Assert.Equal(60_000, table.Count);
        Assert.Equal(TableLimits.Problems, table.Rejected.Count);
        Assert.Contains("no row says what kind P0/x is", table.Rejected[0].Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("FROM;TO;CORD")]
    [InlineData("From-Port;To Port;Patch cord")]
    [InlineData("source;destination;cord / cable")]
    [InlineData("A end;B end;Cord-Type")]
    [InlineData(" from port ;TO_PORT;cable")]
    public void Headings_are_matched_whatever_their_case_blanks_and_marks(string headings)
    {
        string[] columns = [.. ReadSheet.Of(Sheet("s", headings + "\na;b;c\n")).Columns.Select(c => c.Meaning ?? "none")];
        Assert.Equal(["from", "to"], columns[..2]);
    }

    // American spelling, a unit behind the heading, titles above it, the headings again after a page break.
    [Fact]
    public void Titles_above_and_headings_again_below_are_no_rows()
    {
        ReadSheet sheet = ReadSheet.Of(Sheet("s", "Plant of the house\n\npart,kind,Fiber class,length (ft)\nT,trunk,OM4,10\npart,kind,Fiber class,length (ft)\nU,trunk,OM4,10\n"));
        Assert.Equal(SheetForm.Parts, sheet.Form);
        Assert.Equal((3, 2), (sheet.HeaderRow, sheet.Rows.Count));
        Assert.Equal(["part", "kind", "fibre", "length"], sheet.Columns.Select(c => c.Meaning));
        Assert.Equal("ft", sheet.Columns[3].Unit);
    }

    // Each wrong row with its sheet, row and column, counted by hand; the reader of documents finds the nearest word.
    [Theory]
    [InlineData("SW-L/9,K-L/1,A-to-B cord,2,,", "sheet m, row 2, column A: SW-L has no port '9'")]
    [InlineData("SW-L/1,K-X/1,A-to-B cord,2,,", "sheet m, row 2, column B: there is no part 'K-X'")]
    [InlineData("SW-L/1,K-L/1,A-to-C cord,2,,", "sheet m, row 2, column C:")]
    [InlineData("SW-L/1,K-L/1,A-to-B cord,2 miles,,", "sheet m, row 2, column D: '2 miles' is no length")]
    [InlineData("SW-L/1,,A-to-B cord,2,,", "sheet m, row 2, column B: a row joins two ports")]
    [InlineData("\"SW-L/1, K-L/2\",K-L/1,A-to-B cord,2,,", "sheet m, row 2, column A: 'SW-L/1, K-L/2' is more than one port")]
    [InlineData("SW-L/1,K-L/1,A-to-B cord,2,,nobody to nothing", "sheet m, row 2, column F:")]
    [InlineData("SW-L/1\u202E,K-L/1,A-to-B cord,2,,", "sheet m, row 2, column A: the cell holds a character")]
    public void A_row_that_cannot_be_taken_is_told_with_its_place(string row, string expected)
    {
        ImportedTable table = Import(Sheet("m", "From port,To port,Cord type,Length (m),Network,Link\n" + row), Sheet("parts", Parts));
        Assert.Null(table.Text);
        Assert.Contains(Reasons(table), r => r.StartsWith(expected, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("SW-L,duplex interfac,6,", "column B: there is no kind or type 'duplex interfac'; expected")]
    [InlineData("SW-L,duplex interface,six,", "column C:")]
    [InlineData("SW/L,duplex interface,6,", "column A:")]
    [InlineData(",duplex interface,6,", "column A: the part has no name")]
    [InlineData("SW-L,,6,", "column B: SW-L does not say what kind it is")]
    [InlineData("SW-L,duplex interface,6,sizzle: 3", "column D: a duplex interface has no attribute 'sizzle'")]
    [InlineData("SW-L,duplex interface,6,}", "column D:")]
    public void A_part_that_cannot_be_built_is_told_with_its_place(string row, string expected)
    {
        ImportedTable table = Import(Sheet("p", "part,kind,ports,attributes\n" + row));
        Assert.Null(table.Text);
        Assert.Contains(Reasons(table), r => r.StartsWith("sheet p, row 2, " + expected, StringComparison.Ordinal));
    }

    [Fact]
    public void Good_rows_are_kept_when_that_is_asked_for()
    {
        string matings = Matings + "\nSW-L/9,K-L/1,A-to-B cord,2,,\nK-X/1,K-L/1,,,,";
        Assert.Null(Import(Sheet("m", matings), Sheet("p", Parts)).Text);
        ImportedTable kept = TablePlant.Import([Sheet("m", matings), Sheet("p", Parts)], [], "A plant", keepGood: true);
        Assert.Equal(2, kept.Count);
        Assert.Equal(Told.Strands(Import(Sheet("m", Matings), Sheet("p", Parts)).Plant!), Told.Strands(kept.Plant!));
    }

    [Fact]
    public void A_cell_without_a_value_rejects_its_row()
    {
        ImportedTable table = TablePlant.Import([Sheet("m", Matings), Sheet("p", Parts)], [new TableProblem("m", 3, 3, "the cell holds the error #REF!")], "A plant", keepGood: false);
        Assert.Null(table.Text);
        Assert.Equal(["sheet m, row 3, column C: the cell holds the error #REF!"], Reasons(table));
    }

    [Fact]
    public void An_array_mating_takes_its_keys_from_the_table()
    {
        const string rows = "from,to,keys,through\nQ/1,C/near,,\nC/far,T/near,opposed,P/2\n";
        const string parts = "part,kind\nQ,parallel interface\nC,Type-B cord\nT,Type-A trunk\nP,Type-A adapter panel\n";
        ImportedTable table = Import(Sheet("m", rows), Sheet("p", parts));
        Assert.Empty(Reasons(table));
        Assert.Contains("C/far = T/near opposed in P/2", Reading.Matings(table.Plant!), StringComparison.Ordinal);
    }

    private const string Hops = """
        strand,hop,part,kind,attributes,in,out
        1,1,SW,duplex interface,ports: 2,,SW/1:A
        1,2,C,duplex cord,type: A-to-B,C/near:B,C/far:A
        1,3,SW,duplex interface,ports: 2,SW/2:B,
        """;

    // Without a column of what is met the next hop tells it: A meets B, and an A-to-B cord leads B to A.
    [Fact]
    public void Hops_alone_tell_what_meets_what()
    {
        ImportedTable table = Import(Sheet("h", Hops));
        Assert.Empty(Reasons(table));
        Assert.Equal("SW/1 = C/near\nC/far = SW/2", Reading.Matings(table.Plant!));
    }

    [Fact]
    public void A_hop_that_its_part_does_not_make_is_told()
    {
        ImportedTable table = Import(Sheet("h", Hops.Replace("C/far:A", "C/far:B", StringComparison.Ordinal)));
        Assert.Null(table.Text);
        Assert.Equal(["sheet h, row 3, column G: by its kind and attributes what enters at C/near:B leaves at C/far:A, not at C/far:B"], Reasons(table));
    }

    [Fact]
    public void What_does_not_meet_is_told()
    {
        ImportedTable table = Import(Sheet("h", Hops.Replace("SW/2:B", "SW/2:A", StringComparison.Ordinal)));
        Assert.Equal(["sheet h, row 3: C/far:A meets SW/2:B, not SW/2:A"], Reasons(table));
    }

    [Fact]
    public void A_part_described_in_two_ways_is_told()
    {
        ImportedTable table = Import(Sheet("h", Hops.Replace("1,3,SW,duplex interface,ports: 2", "1,3,SW,duplex interface,ports: 3", StringComparison.Ordinal)));
        Assert.Equal(["sheet h, row 4, column E: SW is described otherwise in row 2"], Reasons(table));
    }

    [Fact]
    public void A_table_without_known_headings_is_told()
    {
        ImportedTable table = Import(Sheet("s", "one,two\n1,2\n"));
        Assert.Null(table.Text);
        Assert.Single(table.Rejected);
        Assert.Contains("part, in, out", table.Rejected[0].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void No_text_of_a_cell_becomes_more_than_a_text()
    {
        const string evil = "x\" }\nparts: { y: 1";
        ImportedTable table = Import(Sheet("p", $"part,kind,note\nSW,duplex interface,\"{evil.Replace("\"", "\"\"", StringComparison.Ordinal)}\"\n"));
        Assert.Empty(Reasons(table));
        Assert.Equal(evil, Reading.Part(table.Plant!, "SW").Note);
    }
}
