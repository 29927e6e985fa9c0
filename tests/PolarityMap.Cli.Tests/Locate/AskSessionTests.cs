using PolarityMap.Cli.Ask;
using PolarityMap.Core.Locate;
using Xunit;

namespace PolarityMap.Cli.Tests.Locate;

/// <summary>A talk at the rack, with a search that knows three explanations.</summary>
public sealed class AskSessionTests
{
    private const string LampOff = "seen:\n  - { lamp: SW-R/1, is: off }  # since Monday\n";

    private readonly HandMade _made = new();

    /// <summary>
    /// As described while nothing is seen; three explanations of a lamp that is off; the first when light from SW-L/1:A comes out of
    /// the left cassette, else the others.
    /// </summary>
    private LocateResult Search(IReadOnlyList<Observation> seen)
    {
        if (!seen.OfType<LampSeen>().Any())
            return HandMade.AsDescribed([.. seen]);
        if (seen.OfType<LightSeen>().FirstOrDefault(l => l.From == _made.Test.From) is { } light)
            return light.Seen >= 0 ? _made.OneLeft : _made.OneGroupLeft;
        return _made.ThreeLeft with { Observations = seen };
    }

    private Outcome Ask(Workbench bench, string typed, string path = "seen.yaml", Func<IReadOnlyList<Observation>, LocateResult>? search = null)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        using var typing = new StringReader(typed);
        var context = new CommandContext(output, error) { Folder = bench.Folder, In = typing };
        int status = new AskSession(context, _made.Traced, "plant.yaml", path, search ?? Search).Run();
        return new Outcome(status, output.ToString(), error.ToString());
    }

    [Fact]
    public void An_answer_by_number_is_noted_and_narrows_down_to_what_to_mend()
    {
        using Workbench bench = new Workbench().With("seen.yaml", LampOff);
        Outcome outcome = Ask(bench, "1\n");
        Assert.Equal(1, outcome.Status);
        Assert.Equal(LampOff + "  - { light: SW-L/1:A, seen: K-L/rear:1 }\n", bench.Read("seen.yaml"));
        Assert.Contains("Next test, about 3 min: put light into SW-L/1:A and look at the ports of K-L\n", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("  1  out of K-L/rear:1   62 %  leaves 1\n", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("searched  single deviations: 312 that can bear on what was seen; 1 agrees\n", outcome.Out, StringComparison.Ordinal);
        Assert.Contains($"mend     {_made.Left.Mend} (3 min)\n", outcome.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nowhere", "{ light: SW-L/1:A, seen: nowhere at K-L }")]
    [InlineData("NOWHERE # with the red source", "{ light: SW-L/1:A, seen: nowhere at K-L, note: with the red source }")]
    [InlineData("2", "{ light: SW-L/1:A, seen: nowhere at K-L }")]
    [InlineData("K-L/rear:5", "{ light: SW-L/1:A, seen: K-L/rear:5 }")]
    [InlineData("light SW-L/1:A nowhere", "{ light: SW-L/1:A, seen: nowhere }")]
    [InlineData("light, SW-L/1:A, nowhere at K-L", "{ light: SW-L/1:A, seen: nowhere at K-L }")]
    public void What_is_typed_is_noted_in_the_words_of_the_file(string typed, string entry)
    {
        using Workbench bench = new Workbench().With("seen.yaml", LampOff);
        Assert.Equal(1, Ask(bench, typed + "\n").Status);
        Assert.Equal($"{LampOff}  - {entry}\n", bench.Read("seen.yaml"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("quit\n")]
    [InlineData("Q\n")]
    public void One_can_leave_and_nothing_is_written(string typed)
    {
        using Workbench bench = new Workbench().With("seen.yaml", LampOff);
        Outcome outcome = Ask(bench, typed);
        Assert.Equal(1, outcome.Status);
        Assert.EndsWith("Go on with: polaritymap locate plant.yaml --seen seen.yaml --ask\n", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(LampOff, bench.Read("seen.yaml"));
    }

    [Fact]
    public void A_talk_that_was_left_goes_on_where_it_was()
    {
        using Workbench bench = new Workbench();
        Assert.Equal(1, Ask(bench, "lamp SW-R/1 off\n").Status);
        Assert.Equal("seen:\n  - { lamp: SW-R/1, is: off }\n", bench.Read("seen.yaml"));
        Outcome second = Ask(bench, "1\n");
        Assert.Contains($"mend     {_made.Left.Mend} (3 min)\n", second.Out, StringComparison.Ordinal);
        Assert.Equal(["seen.yaml"], bench.Files());
    }

    [Fact]
    public void A_table_is_made_and_goes_on_as_a_table()
    {
        using Workbench bench = new Workbench();
        Ask(bench, "lamp SW-R/1 off\nnowhere\n", "seen.csv");
        Assert.Equal("test,at,seen,value,note\nlamp,SW-R/1,off,,\nlight,SW-L/1:A,nowhere at K-L,,\n", bench.Read("seen.csv"));
    }

    [Fact]
    public void Before_anything_is_seen_it_asks_for_it()
    {
        using Workbench bench = new Workbench();
        Outcome outcome = Ask(bench, "\nsomething odd\nquit\n");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("Nothing has been seen yet.\nWhat was seen? Type an observation such as", outcome.Out, StringComparison.Ordinal);
        Assert.Empty(bench.Files());
    }

    [Theory]
    [InlineData("3", "Expected 1 or 2; where it came out, such as SW-R/1:B, or nowhere; can't where you cannot get there;")]
    [InlineData("0", "Expected 1 or 2; ")]
    [InlineData("", "Expected 1 or 2; ")]
    [InlineData("SWR/1:B", "There is no part 'SWR'; expected an address PART/PORT:POSITION, or nowhere; did you mean 'SW-R'?")]
    [InlineData("SW-R/1", "SW-R/1 has 2 positions; expected SW-R/1:A or SW-R/1:B")]
    [InlineData("nowere", "did you mean 'nowhere'?")]
    [InlineData("lamp SW-R/1", "Expected an observation such as")]
    [InlineData("lamp SW-R/1 of", "'of' cannot be seen by a lamp test; expected on or off; did you mean 'off'?")]
    [InlineData("loss SW-L/1:A SW-R/1:B 4.2", "A loss needs its unit: write '4.2 dB'")]
    public void What_is_not_understood_is_asked_again_and_not_noted(string typed, string said)
    {
        using Workbench bench = new Workbench().With("seen.yaml", LampOff);
        Outcome outcome = Ask(bench, typed + "\nquit\n");
        Assert.Contains(said, outcome.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal("", outcome.Error);
        Assert.Equal(LampOff, bench.Read("seen.yaml"));
    }

    [Theory]
    [InlineData("can't\n2\n", "K-L")]
    [InlineData("cannot\nSW-L\n", "SW-L")]
    public void A_place_that_cannot_be_reached_is_noted(string typed, string part)
    {
        using Workbench bench = new Workbench().With("seen.yaml", LampOff);
        Outcome outcome = Ask(bench, typed);
        Assert.Contains("Which cannot be reached? 1 SW-L, 2 K-L\n", outcome.Out, StringComparison.Ordinal);
        Assert.Equal($"{LampOff}  - {{ reached: {part}, is: no }}\n", bench.Read("seen.yaml"));
    }

    [Fact]
    public void A_measured_loss_is_asked_for_as_a_number_with_its_unit()
    {
        using Workbench bench = new Workbench().With("seen.yaml", LampOff);
        int from = _made.At("SW-L/1", 1), to = _made.At("SW-R/1", 2);
        var next = new NextTest(new LossTest(from, to, 10), 1, [new TestOutcome(new LossExpected(from, to, true), 1, [0])]);
        LocateResult Losses(IReadOnlyList<Observation> seen) => seen.OfType<LossMeasured>().Any() ? _made.OneLeft : _made.ThreeLeft with { Next = next };
        Outcome outcome = Ask(bench, "1\n4.2 dB\n", search: Losses);
        Assert.Contains("A loss needs its unit: write '1 dB'", outcome.Out, StringComparison.Ordinal);
        Assert.Equal($"{LampOff}  - {{ loss: SW-L/1:A, seen: SW-R/1:B, value: 4.2 dB }}\n", bench.Read("seen.yaml"));
    }

    [Fact]
    public void One_group_that_is_left_ends_the_talk_with_what_to_mend_and_look_at()
    {
        using Workbench bench = new Workbench().With("seen.yaml", LampOff);
        Outcome outcome = Ask(bench, "2\n");
        Assert.Contains("No light test tells explanations 1, 2 apart: look at ", outcome.Out, StringComparison.Ordinal);
        Assert.Contains($"mend     {_made.Right.Mend}", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Observations_that_contradict_each_other_end_the_talk_with_both_lines()
    {
        using Workbench bench = new Workbench().With("seen.yaml", LampOff);
        Outcome outcome = Ask(bench, "1\n", search: _ => _made.Contradicting);
        Assert.Equal(1, outcome.Status);
        Assert.Contains("  seen.yaml:3:5: light into SW-L/1:A came out at no interface\n  seen.yaml:7:5: light into SW-L/1:A came out of SW-R/1:B\n", outcome.Out, StringComparison.Ordinal);
        Assert.EndsWith("Look again at both, correct seen.yaml, and call again.\n", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(LampOff, bench.Read("seen.yaml"));
    }

    [Fact]
    public void A_file_that_cannot_take_an_answer_is_left_alone()
    {
        using Workbench bench = new Workbench().With("seen.csv", "test,at,seen\nlamp,SW-R/1,off\n");
        CallException told = Assert.Throws<CallException>(() => Ask(bench, "1 # by hand\n", "seen.csv"));
        Assert.Equal("'seen.csv' has no column 'note' to write 'by hand' into; add it to the headings", told.Message);
        Assert.Equal("test,at,seen\nlamp,SW-R/1,off\n", bench.Read("seen.csv"));
    }

    [Fact]
    public void What_somebody_writes_into_the_file_while_a_question_stands_is_kept()
    {
        using Workbench bench = new Workbench().With("seen.yaml", LampOff);
        bool first = true;
        Ask(bench, "1\n", search: seen =>
        {
            if (first)
                bench.With("seen.yaml", LampOff + "  - { look: TRUNK, is: as described }\n");
            first = false;
            return Search(seen);
        });
        Assert.Equal(LampOff + "  - { look: TRUNK, is: as described }\n  - { light: SW-L/1:A, seen: K-L/rear:1 }\n", bench.Read("seen.yaml"));
    }

    [Fact]
    public void The_cautions_for_light_are_said_before_the_first_question()
    {
        using Workbench bench = new Workbench();
        string said = Ask(bench, "").Out;
        Assert.InRange(said.IndexOf("assume every fibre is live", StringComparison.Ordinal), 0, said.IndexOf('>', StringComparison.Ordinal));
    }
}
