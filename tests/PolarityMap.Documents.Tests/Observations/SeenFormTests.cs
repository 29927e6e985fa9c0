using System.Globalization;
using System.Text;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Observations;
using PolarityMap.Documents.Tests.Tables;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Observations;

/// <summary>The same observations in each form of the file.</summary>
public sealed class SeenFormTests
{
    private const string Table = """"
        test,at,seen,value,note
        light,SW-L/1:A,SW-R/2:B,,
        light,SW-L/1:B,nowhere,,checked twice
        light,SW-L/2:a,nowhere at K-R,,
        lamp,SW-R/2,off,,
        lamp,SW-R/3,ON,,
        loss,K-L/2:A,K-R/2:A,4.2 dB,
        look,TRUNK,as described,,"a comma, and ""quotes"""
        look,SW-L/1~K-L/1,different,,
        reached,DESK,no,,
        reached,DESK/1,no,,
        light,C-1/far:A,K-R/2:B,,
        light,BX-U/1,BX-D/1,,

        """";

    private const string Yaml = """
        plant: rack.yaml
        seen:
          - { light: SW-L/1:A, seen: SW-R/2:B }
          - { light: SW-L/1:B, seen: nowhere, note: checked twice }
          - light: SW-L/2:a
            seen: nowhere at K-R
          - { lamp: SW-R/2, is: off }
          - { lamp: SW-R/3, is: ON }
          - { loss: K-L/2:A, seen: K-R/2:A, value: 4.2 dB }
          - { look: TRUNK, is: as described, note: 'a comma, and "quotes"' }
          - { look: SW-L/1~K-L/1, is: different }
          - { reached: DESK, is: no }
          - { reached: DESK/1, is: no }
          - { light: C-1/far:A, seen: K-R/2:B }
          - { light: BX-U/1, seen: BX-D/1 }

        """;

    private static readonly string[] s_words =
    [
        "light into SW-L/1:A came out of SW-R/2:B",
        "light into SW-L/1:B came out at no interface",
        "light into SW-L/2:A came out of no port of K-R",
        "the link lamp of SW-R/2 is off",
        "the link lamp of SW-R/3 is on",
        "4.20 dB measured from K-L/2:A to K-R/2:A, where at most 2.85 dB is stated",
        "TRUNK is as described",
        "the cord SW-L/1~K-L/1 is different from the description",
        "DESK cannot be reached",
        "DESK cannot be reached",
        "light into C-1/far:A came out of K-R/2:B",
        "light into BX-U/1 came out of BX-D/1",
    ];

    [Theory]
    [InlineData("seen.csv", Table)]
    [InlineData("seen.yaml", Yaml)]
    public void Both_forms_say_the_same(string path, string text)
    {
        Assert.Equal(s_words, Rack.Observations(path, text).Select(Rack.Words));
        Assert.Equal(["checked twice", "a comma, and \"quotes\""], Rack.Observations(path, text).Select(o => o.Note).OfType<string>());
    }

    [Fact]
    public void An_observation_knows_the_line_that_says_it()
    {
        Assert.Equal(Enumerable.Range(2, 12).Select(l => $"seen.csv:{l}:1"), Rack.Observations("seen.csv", Table).Select(o => o.Place.ToString()));
        Assert.Equal(
            ["3:5", "4:5", "5:5", "7:5", "8:5", "9:5", "10:5", "11:5", "12:5", "13:5", "14:5", "15:5"],
            Rack.Observations("seen.yaml", Yaml).Select(o => $"{o.Place.Line}:{o.Place.Column}"));
    }

    [Fact]
    public void Columns_stand_in_any_order_and_any_separator_is_taken()
    {
        Assert.Equal(s_words[3..4], Rack.Observations("seen.csv", "note;SEEN;At;test\n;off;SW-R/2;Lamp\n").Select(Rack.Words));
        Assert.Equal(s_words[3..4], Rack.Observations("seen.tsv", "seen\tat\ttest\noff\tSW-R/2\tlamp").Select(Rack.Words));
        Assert.Equal(s_words[3..4], Rack.Observations("seen.csv", "\r\ntest,at,seen\r\n,,\r\n lamp , SW-R/2 ,\"off\"\r\n").Select(Rack.Words));
    }

    [Fact]
    public void A_workbook_is_read_as_a_table()
    {
        static string Row(params string[] cells) => $"<row>{string.Concat(cells.Select(c => $"<c t='inlineStr'><is><t>{c}</t></is></c>"))}</row>";
        string rows = Row("test", "at", "seen") + Row("lamp", "SW-R/2", "off");
        (SeenNotes? notes, string problems) = Rack.Read("seen.xlsx", HandmadeWorkbook.OfRows(rows));
        Assert.Equal("", problems);
        Assert.Equal(s_words[3..4], notes!.Observations.Select(Rack.Words));
        (_, problems) = Rack.Read("seen.xlsx", HandmadeWorkbook.OfRows(rows + Row("lamp", "SW-R/9", "off")));
        Assert.StartsWith("seen.xlsx:3:2: SW-R has no port '9'", problems, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("seen.csv", "")]
    [InlineData("seen.csv", "test,at,seen\n")]
    [InlineData("seen.yaml", "")]
    [InlineData("seen.yaml", "# nothing yet\n")]
    [InlineData("seen.yaml", "plant: rack.yaml\n")]
    [InlineData("seen.yaml", "seen:\n")]
    [InlineData("seen.yaml", "seen: []\n")]
    public void A_file_without_observations_is_no_mistake(string path, string text) => Assert.Empty(Rack.Observations(path, text));

    [Fact]
    public void A_file_in_YAML_may_name_its_plant()
    {
        var problems = new ProblemList();
        Assert.Equal("site/rack.yaml", SeenFile.Read("site/seen.yaml", new MemorySource().Add("site/seen.yaml", Yaml), problems)!.Plant);
        Assert.Null(SeenFile.Read("seen.csv", new MemorySource().Add("seen.csv", Table), problems)!.Plant);
        Assert.True(problems.IsEmpty);
    }

    // Light that is seen at a port of a part was looked for there.
    [Fact]
    public void Where_light_was_looked_for_follows_from_what_was_seen()
    {
        LightSeen[] light = [.. Rack.Observations("seen.csv", Table).OfType<LightSeen>()];
        string Look(LightSeen seen) => seen.Look < 0 ? "every interface" : Rack.Traced.Plant.Parts[seen.Look].Name;
        Assert.Equal(["SW-R", "every interface", "K-R", "K-R", "BX-D"], light.Select(Look));
        Assert.Equal([true, false, false, true, true], light.Select(l => l.Seen >= 0));
    }

    // By hand: 3.5 dB/km of OM4 at 850 nm (ISO/IEC 11801-1), 0.75 dB a mating, 0.5 dB a test plug (ISO/IEC 14763-3). 100 m, 2
    // matings and 2 plugs from cassette to cassette; 104 m, 4 matings and 2 plugs from switch to switch.
    [Theory]
    [InlineData("K-L/2:A", "K-R/2:A", "2.850")]
    [InlineData("SW-L/1:A", "SW-R/1:B", "4.364")]
    [InlineData("K-L/2:A", "K-L/rear:3", "1.000")]
    public void A_measured_loss_is_held_against_what_is_stated_of_the_way(string from, string seen, string limit)
    {
        (SeenNotes? notes, _) = Rack.Read("seen.csv", $"test,at,seen,value\nloss,{from},{seen},2.9 dB\n");
        LossMeasured loss = Assert.IsType<LossMeasured>(Assert.Single(notes!.Observations));
        Assert.Equal(new Decibel(2.9m), loss.Loss);
        Assert.Equal(new Decibel(decimal.Parse(limit, CultureInfo.InvariantCulture)), loss.Limit);
        Assert.Equal(decimal.Parse(limit, CultureInfo.InvariantCulture) < 2.9m, loss.IsTooMuch);
        Assert.Empty(notes.Remarks);
    }

    // From the cassette the way goes on through a cord of 2 m to the switch: 102 m, 3 matings and 2 plugs.
    [Fact]
    public void Where_the_way_as_described_does_not_lead_the_loss_is_held_against_its_own_end()
    {
        (SeenNotes? notes, _) = Rack.Read("seen.csv", "test,at,seen,value\nloss,K-L/2:A,K-R/3:A,2.9 dB\n");
        Assert.Equal(new Decibel(3.607m), Assert.IsType<LossMeasured>(Assert.Single(notes!.Observations)).Limit);
        SeenRemark remark = Assert.Single(notes.Remarks);
        Assert.Equal("seen.csv:2:1", remark.Place.ToString());
        Assert.Equal("as described, light from K-L/2:A does not come to K-R/3:A; the loss is held against the way to K-R/2~SW-R/2/far:B, 3.61 dB", remark.Text);
    }

    [Fact]
    public void A_limit_that_leaves_out_a_length_says_so()
    {
        TracedPlant traced = TracedPlant.Of(Reading.Plant(Rack.Document.Replace("length: 100 m", "room: HALL", StringComparison.Ordinal)));
        var problems = new ProblemList();
        SeenNotes notes = SeenFile.Read("seen.csv", Encoding.UTF8.GetBytes("test,at,seen,value\nloss,K-L/2:A,K-R/2:A,2.9 dB\n"), problems)!.Bind(traced, problems)!;
        Assert.Equal("the limit of 2.50 dB leaves out the fibre of 1 cable that states no length", Assert.Single(notes.Remarks).Text);
    }
}
