using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Observations;

/// <summary>Every mistake of an observation file is told with its place, which § marks here, and with what was expected.</summary>
public sealed class SeenProblemTests
{
    private const string Head = "test,at,seen,value,note\n";

    [Theory]
    [InlineData("§lihgt,SW-L/1:A,nowhere", "there is no test 'lihgt'; expected one of light, lamp, loss, look, reached; did you mean 'light'?")]
    [InlineData("§,SW-L/1:A,nowhere", "this row has no test; expected one of light, lamp, loss, look, reached")]
    [InlineData("§light,,nowhere", "this light test does not say where: 'at' is empty; expected an address such as SW-L/1:A")]
    [InlineData("§lamp,SW-L/1,", "this lamp test does not say what was seen: 'seen' is empty; expected on or off")]
    [InlineData("light,§SWL/1:A,nowhere", "there is no part 'SWL'; expected an address PART/PORT:POSITION; did you mean 'SW-L'?")]
    [InlineData("light,SW-L/§9:A,nowhere", "SW-L has no port '9'; expected one of 1, 2, 3")]
    [InlineData("light,K-L/§raer:3,nowhere", "K-L has no port 'raer'; expected one of 1, 2, 3, 4, 5, 6, rear; did you mean 'rear'?")]
    [InlineData("light,SW-L/1:§C,nowhere", "SW-L/1 has no position 'C'; expected A or B")]
    [InlineData("light,K-L/rear:§13,nowhere", "K-L/rear has no position '13'; expected 1 to 12")]
    [InlineData("light,§SW-L/1,nowhere", "SW-L/1 has 2 positions; expected SW-L/1:A or SW-L/1:B")]
    [InlineData("light,§K-L/rear,nowhere", "K-L/rear has 12 positions; expected one of K-L/rear:1 to K-L/rear:12")]
    [InlineData("light,§SW-L,nowhere", "'SW-L' is a part; expected a port and a position of it, such as SW-L/1:A")]
    [InlineData("light,§PANEL/1:A,nowhere", "PANEL/1 is an adapter and has no fibre of its own; expected a position of the plug that is meant: C-1/far or C-2/near")]
    [InlineData("light,§PANEL/2:A,nowhere", "PANEL/2 is an adapter and has no fibre of its own; expected a plug; none sits in it")]
    [InlineData("light,§Q-L/1:6,nowhere", "Q-L/1:6 neither sends nor listens; expected the plug there, Q-C/near:7")]
    [InlineData("light,SW-L/1:A,§nowere", "there is no part 'nowere'; expected an address PART/PORT:POSITION, or nowhere; did you mean 'nowhere'?")]
    [InlineData("light,SW-L/1:A,nowhere at §KR", "there is no part 'KR'; expected the name of a part; did you mean 'K-R'?")]
    [InlineData("light,SW-L/1:A,nowhere at §K-R/1", "only whole parts are looked at; expected 'nowhere at K-R', after a look at all of its ports")]
    [InlineData("light,SW-L/1:A,nowhere at §PANEL", "PANEL holds adapters and no fibre of its own; expected the part whose plugs were looked at")]
    [InlineData("light,SW-L/1:A,§SW-L/1:A", "light was put in here and cannot be seen to come out here; expected where it came out, such as SW-R/1:B, or nowhere, or 'nowhere at K-R' where only one part was looked at")]
    [InlineData("light,SW-L/1:A,nowhere,§4 dB", "a light test has no value; expected a value only where a loss was measured")]
    [InlineData("lamp,SW-R/1:§A,off", "'SW-R/1:A' names a position; expected the port, SW-R/1")]
    [InlineData("lamp,§K-R/1,off", "K-R/1 is no port of an interface and has no link lamp; expected a port of an interface, such as SW-L/1")]
    [InlineData("lamp,SW-R/1,§of", "'of' cannot be seen by a lamp test; expected on or off; did you mean 'off'?")]
    [InlineData("§loss,SW-L/1:A,SW-R/1:B", "this loss test has no value; expected what was measured, such as 4.2 dB")]
    [InlineData("loss,SW-L/1:A,SW-R/1:B,§4.2", "a loss needs its unit: write '4.2 dB'")]
    [InlineData("loss,SW-L/1:A,SW-R/1:B,§4.2 db", "unknown unit 'db'; expected dB")]
    [InlineData("loss,SW-L/1:A,SW-R/1:B,§-3 dB", "a loss is never negative")]
    [InlineData("look,§TRUNC,different", "there is no part 'TRUNC'; expected the name of a part; did you mean 'TRUNK'?")]
    [InlineData("look,TRUNK,§wrong", "'wrong' cannot be seen by a look test; expected as described or different")]
    [InlineData("reached,DESK,§yes", "'yes' cannot be seen by a reached test; expected no")]
    [InlineData("look,TRUNK,different,,a note,§more", "'more' stands under no heading; expected a text with the separator in it in quotes")]
    public void A_row_that_is_wrong_is_told_with_its_place(string row, string message)
    {
        (string text, string place) = Rack.Marked("seen.csv", Head + "lamp,SW-R/2,off,,\n" + row + "\n");
        Assert.Equal($"{place}: {message}\n", Rack.Read("seen.csv", text).Problems);
    }

    [Theory]
    [InlineData("test,at,seen,§valeu\n", "there is no column 'valeu'; expected one of test, at, seen, value, note; did you mean 'value'?")]
    [InlineData("test,at,seen,§at\n", "column 'at' is here a second time")]
    [InlineData("§test,at\n", "column 'seen' is missing; expected a first line such as 'test,at,seen,value,note'")]
    [InlineData("test,at,seen\nlook,TRUNK,as\u202E described§", null)]
    public void A_table_that_is_wrong_is_told_with_its_place(string marked, string? message)
    {
        (string text, string place) = Rack.Marked("seen.csv", marked);
        string problems = Rack.Read("seen.csv", text).Problems;
        if (message is null)
            Assert.Contains("changes the direction in which text is shown", problems, StringComparison.Ordinal);
        else
            Assert.Equal($"{place}: {message}\n", problems);
    }

    [Theory]
    [InlineData("light,\"§SWL/1:A\",nowhere")]
    [InlineData(" light , §SWL/1:A ,nowhere")]
    [InlineData("look,TRUNK,different,,\"two\nlines\"\nlight,§SWL/1:A,nowhere")]
    public void Quotes_blanks_and_line_breaks_in_cells_do_not_move_a_place(string rows)
    {
        (string text, string place) = Rack.Marked("seen.csv", Head + rows + "\n");
        Assert.StartsWith($"{place}: there is no part 'SWL'", Rack.Read("seen.csv", text).Problems, StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_whose_quotes_do_not_end_is_refused_as_a_whole() =>
        Assert.Equal("seen.csv: row 2: a quoted cell has no end; write a quote inside a cell twice\n", Rack.Read("seen.csv", Head + "look,\"TRUNK,different\n").Problems);

    [Theory]
    [InlineData("seen:\n  - { §lihgt: SW-L/1:A, seen: nowhere }\n", "there is no test 'lihgt'; expected one of light, lamp, loss, look, reached; did you mean 'light'?")]
    [InlineData("seen:\n  - §{ note: dusty }\n", "this observation has no test; expected one of light, lamp, loss, look, reached")]
    [InlineData("seen:\n  - { light: SW-L/1:A, §lamp: SW-R/1, is: off }\n", "this observation tells of two tests, light and lamp; expected one test in each entry of the list")]
    [InlineData("seen:\n  - §{ light: SW-L/1:A }\n", "this observation has no 'seen:'; expected where it came out, such as SW-R/1:B, or nowhere, or 'nowhere at K-R' where only one part was looked at")]
    [InlineData("seen:\n  - { lamp: SW-R/1, §seen: off }\n", "a lamp test has no key 'seen'; expected one of lamp, is, note; did you mean 'is'?")]
    [InlineData("seen:\n  - §{ lamp: SW-R/1 }\n", "this observation has no 'is:'; expected on or off")]
    [InlineData("seen:\n  - { light: §, seen: nowhere }\n", "'light' is empty; expected an address such as SW-L/1:A")]
    [InlineData("seen:\n  - { light: SW-L/1:A, seen: nowhere, §noet: x }\n", "a light test has no key 'noet'; expected one of light, seen, note; did you mean 'note'?")]
    [InlineData("seen:\n  - §light\n", "an observation is no mapping; expected a mapping such as '{ light: SW-L/1:A, seen: nowhere }'")]
    [InlineData("seen: §all\n", "'seen' is no list; expected a list such as '- { light: SW-L/1:A, seen: nowhere }'")]
    [InlineData("§sene:\n  - { lamp: SW-R/1, is: off }\n", "an observation file has no key 'sene'; expected one of plant, seen; did you mean 'seen'?")]
    [InlineData("§- { lamp: SW-R/1, is: off }\n", "an observation file is no mapping; expected keys 'plant:' and 'seen:' at the start of a line")]
    [InlineData("plant: §../plant.yaml\n", "'../plant.yaml' leaves the folder of this document; expected a path inside the folder, or the flag --allow-outside if that is meant")]
    [InlineData("seen:\n  - { light: 'SW-L/1:§C', seen: nowhere }\n", "SW-L/1 has no position 'C'; expected A or B")]
    [InlineData("seen:\n  - { loss: SW-L/1:A, seen: SW-R/1:B, value: §4.2 }\n", "a loss needs its unit: write '4.2 dB'")]
    [InlineData("seen:\n  - §{ loss: SW-L/1:A, seen: SW-R/1:B }\n", "this loss test has no value; expected what was measured, such as 4.2 dB")]
    [InlineData("seen:\n  - { lamp: §SWR/1, is: off }\n", "there is no part 'SWR'; expected a port of an interface, such as SW-L/1; did you mean 'SW-R'?")]
    public void A_document_that_is_wrong_is_told_with_its_place(string marked, string message)
    {
        (string text, string place) = Rack.Marked("seen.yaml", marked);
        Assert.Equal($"{place}: {message}\n", Rack.Read("seen.yaml", text).Problems);
    }

    [Fact]
    public void Every_mistake_of_a_file_is_told_in_one_run() =>
        Assert.Equal(3, Rack.Read("seen.csv", Head + "lamp,K-R/1,of,,\nlight,SWL/1:A,nowhere,,\n").Problems.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);

    [Fact]
    public void A_file_that_is_not_there_is_told()
    {
        var problems = new ProblemList();
        Assert.Null(Documents.Observations.SeenFile.Read("seen.yaml", new MemorySource(), problems));
        Assert.Equal("seen.yaml: there is no document 'seen.yaml'\n", problems.ToString());
    }
}
