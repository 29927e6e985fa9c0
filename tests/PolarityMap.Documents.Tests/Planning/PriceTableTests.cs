using PolarityMap.Core.Planning;
using PolarityMap.Documents.Planning;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Planning;

/// <summary>Price lists are read beside their brief, and what is wrong is told with its line and column.</summary>
public sealed class PriceTableTests
{
    private const string Brief =
        """
        brief: Small
        networks: { house: { label: H } }
        rooms:
          Main:
          Stage: { distance: 58 m }
        outlets:
          DESK[1..16]: { room: Stage, links: { house: 1 } }
        application: 10GBASE-SR
        fibre: OM4
        prices: prices.csv
        currency: EUR

        """;

    [Theory]
    [InlineData("kind,price\ncassette,41.50\n")]
    [InlineData("Kind;Price\ncassette;41,50\n")]
    [InlineData("item,kind,price,names\n1,cassette,41.5,K1\n2,trunk,,T1\n")]
    public void A_list_is_read_in_the_forms_that_spreadsheets_save(string list)
    {
        (Brief? brief, ProblemList problems) = Read(list);
        Assert.True(problems.IsEmpty, problems.ToString());
        Assert.Equal("EUR", brief!.Prices!.Currency);
        PriceLine line = Assert.Single(brief.Prices.Lines);
        Assert.Equal(new PriceLine(41.5m) { Kind = "cassette", Place = line.Place }, line);
        Assert.Equal(2, line.Place.Line);
    }

    [Fact]
    public void Every_column_that_says_something_is_taken()
    {
        (Brief? brief, _) = Read("type,kind,fibres,fibre-class,length,key-code,description,price\nType-B trunk,trunk,48,OM4,62,K1,x,310\n");
        Assert.Equal(
            new PriceLine(310m) { Type = "Type-B trunk", Kind = "trunk", Fibres = 48, FibreClass = "OM4", Metres = 62m, KeyCode = "K1", Description = "x", Place = new SourcePlace("prices.csv", 2, 1) },
            Assert.Single(brief!.Prices!.Lines));
    }

    [Theory]
    [InlineData("kind,price\ncassette,dear\n", "prices.csv:2:10: 'dear' is no price; expected a number such as 41.50, without the currency")]
    [InlineData("kind,price\ncassette,-1\n", "prices.csv:2:10: '-1' is no price")]
    [InlineData("kind;price\ncassette;1,234\n", "prices.csv:2:10: '1,234' is no price")]
    [InlineData("kind,fibres,price\ntrunk,12.5,9\n", "prices.csv:2:7: '12.5' is no fibres; expected a whole number of fibres")]
    [InlineData("kind,prise\ncassette,1\n", "prices.csv:1:6: there is no column 'prise'")]
    [InlineData("kind\ncassette\n", "prices.csv:1:1: column 'price' is missing")]
    [InlineData("price\n1\n", "prices.csv:1:1: no column says what a price is for")]
    [InlineData("kind,price\n,1\n", "prices.csv:2:1: the row does not say what its price is for")]
    [InlineData("kind,price\ncassette,1\ncassette,2\n", "prices.csv:3:1: this part has a price already")]
    [InlineData("", "prices.csv:1:1: the price list is empty")]
    public void What_is_wrong_is_told_with_its_place(string list, string expected)
    {
        (Brief? brief, ProblemList problems) = Read(list);
        Assert.Null(brief);
        Assert.StartsWith(expected, problems.Items[0].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_that_is_not_there_is_told_where_the_brief_names_it()
    {
        var problems = new ProblemList();
        Assert.Null(BriefDocument.Read("brief.yaml", new MemorySource().Add("brief.yaml", Brief), problems));
        Assert.StartsWith("brief.yaml:10:9: ", Assert.Single(problems.Items).ToString(), StringComparison.Ordinal);
    }

    private static (Brief? Brief, ProblemList Problems) Read(string list)
    {
        var problems = new ProblemList();
        return (BriefDocument.Read("brief.yaml", new MemorySource().Add("brief.yaml", Brief).Add("prices.csv", list), problems), problems);
    }
}
