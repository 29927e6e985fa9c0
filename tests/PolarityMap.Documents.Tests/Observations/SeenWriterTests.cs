using System.Text;
using PolarityMap.Core.Locate;
using PolarityMap.Documents.Observations;
using Xunit;

namespace PolarityMap.Documents.Tests.Observations;

/// <summary>What is added to a file is read again as it was meant, and no byte of its author's is changed.</summary>
public sealed class SeenWriterTests
{
    private static readonly SeenFields s_dark = new("light", "SW-L/1:A", "nowhere at K-R");

    /// <summary>The file with one more observation; all that was there is there, in one piece or around it.</summary>
    private static string Appended(string path, string text, SeenFields fields)
    {
        byte[] before = Encoding.UTF8.GetBytes(text);
        byte[]? after = SeenWriter.Append(path, before, fields, out string why);
        Assert.Equal("", why);
        int added = after!.Length - before.Length;
        Assert.Contains(Enumerable.Range(0, before.Length + 1), at => before.AsSpan(0, at).SequenceEqual(after.AsSpan(0, at)) && before.AsSpan(at).SequenceEqual(after.AsSpan(at + added)));
        return Encoding.UTF8.GetString(after);
    }

    [Theory]
    [InlineData("", "seen:\n  - { light: SW-L/1:A, seen: nowhere at K-R }\n")]
    [InlineData("# Tuesday\n", "# Tuesday\nseen:\n  - { light: SW-L/1:A, seen: nowhere at K-R }\n")]
    [InlineData("plant: p.yaml", "plant: p.yaml\nseen:\n  - { light: SW-L/1:A, seen: nowhere at K-R }\n")]
    [InlineData("seen:\n", "seen:\n  - { light: SW-L/1:A, seen: nowhere at K-R }\n")]
    [InlineData("seen: # none\nplant: p.yaml\n", "seen: # none\n  - { light: SW-L/1:A, seen: nowhere at K-R }\nplant: p.yaml\n")]
    [InlineData("seen: []\n", "seen: [{ light: SW-L/1:A, seen: nowhere at K-R }]\n")]
    [InlineData("seen: [ { lamp: SW-R/1, is: off }, ]\n", "seen: [ { lamp: SW-R/1, is: off }, { light: SW-L/1:A, seen: nowhere at K-R }, ]\n")]
    [InlineData("seen:\n- { lamp: SW-R/1, is: off }  # Bob\n\n# end\nplant: p.yaml\n", "seen:\n- { lamp: SW-R/1, is: off }  # Bob\n- { light: SW-L/1:A, seen: nowhere at K-R }\n\n# end\nplant: p.yaml\n")]
    [InlineData("seen:\r\n    - lamp: SW-R/1\r\n      is: off", "seen:\r\n    - lamp: SW-R/1\r\n      is: off\r\n    - { light: SW-L/1:A, seen: nowhere at K-R }\r\n")]
    [InlineData("seen:\n  - lamp: SW-R/1\n    is: off\n    note: |\n      two\n      lines\nplant: p.yaml\n", "seen:\n  - lamp: SW-R/1\n    is: off\n    note: |\n      two\n      lines\n  - { light: SW-L/1:A, seen: nowhere at K-R }\nplant: p.yaml\n")]
    [InlineData("\uFEFFseen:\n  - { look: TRUNK, is: different, note: café }\n", "\uFEFFseen:\n  - { look: TRUNK, is: different, note: café }\n  - { light: SW-L/1:A, seen: nowhere at K-R }\n")]
    [InlineData("{ \"seen\": [ { \"lamp\": \"SW-R/1\", \"is\": \"off\" } ] }", "{ \"seen\": [ { \"lamp\": \"SW-R/1\", \"is\": \"off\" }, { light: SW-L/1:A, seen: nowhere at K-R } ] }")]
    public void A_document_takes_one_more_where_its_list_ends(string before, string after) =>
        Assert.Equal(after, Appended("seen.yaml", before, s_dark));

    [Theory]
    [InlineData("", "test,at,seen,value,note\nlight,SW-L/1:A,nowhere at K-R,,\n")]
    [InlineData("test,at,seen\n", "test,at,seen\nlight,SW-L/1:A,nowhere at K-R\n")]
    [InlineData("note;seen;at;test\r\n;off;SW-R/1;lamp", "note;seen;at;test\r\n;off;SW-R/1;lamp\r\n;nowhere at K-R;SW-L/1:A;light\r\n")]
    [InlineData("Test,At,Seen,,\nlamp,SW-R/1,off,,\n\n", "Test,At,Seen,,\nlamp,SW-R/1,off,,\n\nlight,SW-L/1:A,nowhere at K-R,,\n")]
    public void A_table_takes_one_more_row_in_the_order_of_its_headings(string before, string after) =>
        Assert.Equal(after, Appended("seen.csv", before, s_dark));

    [Fact]
    public void A_table_in_another_encoding_stays_in_it()
    {
        byte[] before = [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes("test\tat\tseen\r\nlamp\tSW-R/1\toff\r\n")];
        byte[] after = SeenWriter.Append("seen.csv", before, s_dark, out _)!;
        Assert.Equal([.. before, .. Encoding.Unicode.GetBytes("light\tSW-L/1:A\tnowhere at K-R\r\n")], after);
        Assert.Equal(2, Rack.Read("seen.csv", after).Notes!.Observations.Count);
    }

    [Theory]
    [InlineData("seen.csv", "test,at,seen\n", "loss", "'seen.csv' has no column 'value' to write '4.20 dB' into; add it to the headings")]
    [InlineData("seen.xlsx", "PK", "light", "nothing can be added to the workbook 'seen.xlsx'; name a .yaml or a .csv")]
    [InlineData("seen.yaml", "seen: ~\n", "light", "'seen.yaml' is written in a way in which nothing can be added to it; add this yourself: { light: SW-L/1:A, seen: nowhere at K-R }")]
    [InlineData("seen.yaml", "{ plant: p.yaml }\n", "light", "'seen.yaml' is written in a way in which nothing can be added to it; add this yourself: { light: SW-L/1:A, seen: nowhere at K-R }")]
    public void A_file_that_cannot_take_one_more_is_left_alone_and_why_is_said(string path, string text, string test, string why)
    {
        SeenFields fields = test == "loss" ? new("loss", "SW-L/1:A", "SW-R/1:B", "4.20 dB") : s_dark;
        Assert.Null(SeenWriter.Append(path, Encoding.UTF8.GetBytes(text), fields, out string said));
        Assert.Equal(why, said);
    }

    public static TheoryData<string> Kinds => ["light seen", "nowhere", "nowhere at", "on", "off", "loss", "as described", "different", "not reached"];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_is_written_is_read_again_in_both_forms(string kind)
    {
        Observation Meant(string line) => Rack.Observations("seen.csv", "test,at,seen,value\n" + line)[0] with { Place = default, Note = "a \"note\", with: marks # and 'quotes'" };
        Observation meant = Meant(kind switch
        {
            "light seen" => "light,SW-L/1~K-L/1/near:A,K-R/rear:2,",
            "nowhere" => "light,BX-U/1,nowhere,",
            "nowhere at" => "light,SW-L/1:A,nowhere at K-R,",
            "on" or "off" => $"lamp,SW-R/2,{kind},",
            "loss" => "loss,K-L/2:A,K-R/2:A,4.2 dB",
            "not reached" => "reached,DESK,no,",
            _ => $"look,K-R/1~SW-R/1,{kind},",
        });
        SeenFields fields = SeenFields.Of(Rack.Traced, meant);
        foreach (string path in (string[])["seen.csv", "seen.yaml"])
        {
            string text = Appended(path, Appended(path, "", fields), fields);
            Assert.All(Rack.Observations(path, text), read => Assert.Equal(meant, read with { Place = default }));
        }
    }
}
