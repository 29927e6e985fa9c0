using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Text;

public class ProblemTests
{
    private static readonly SourcePlace Place = new("plant.yaml", 4, 12);

    [Fact]
    public void A_problem_prints_as_one_line_with_place_expectation_and_suggestion()
    {
        var problem = new Problem(Place, "unknown attribute 'lenght' of trunk", "one of length, type, legs", "length");

        Assert.Equal(
            "plant.yaml:4:12: unknown attribute 'lenght' of trunk; expected one of length, type, legs; did you mean 'length'?",
            problem.ToString());
    }

    [Fact]
    public void A_problem_without_expectation_or_suggestion_prints_only_its_message() =>
        Assert.Equal("plant.yaml:4:12: the brackets are empty", new Problem(Place, "the brackets are empty").ToString());

    [Fact]
    public void Problems_come_in_document_order_however_they_were_found()
    {
        var problems = new ProblemList();
        problems.Add(new SourcePlace("b.yaml", 9, 1), "first");
        problems.Add(new SourcePlace("a.yaml", 1, 1), "fifth");
        problems.Add(new SourcePlace("b.yaml", 10, 2), "third");
        problems.Add(new SourcePlace("b.yaml", 10, 2), "fourth, at the same place");
        problems.Add(new SourcePlace("b.yaml", 9, 7), "second");

        Assert.Equal(
            ["first", "second", "third", "fourth, at the same place", "fifth"],
            problems.Items.Select(problem => problem.Message));
    }

    [Fact]
    public void Beyond_the_cap_the_first_problems_of_the_document_stay_and_the_rest_are_counted()
    {
        var problems = new ProblemList(2);
        problems.Add(new SourcePlace("p", 3, 1), "c");
        problems.Add(new SourcePlace("p", 4, 1), "d");
        problems.Add(new SourcePlace("p", 1, 1), "a");
        problems.Add(new SourcePlace("p", 2, 1), "b");

        Assert.Equal(4, problems.Count);
        Assert.Equal(2, problems.Hidden);
        Assert.Equal("p:1:1: a\np:2:1: b\nand 2 more problems\n", problems.ToString());
    }

    [Fact]
    public void The_default_cap_is_fifty()
    {
        var problems = new ProblemList();
        for (var line = 1; line <= 51; line++)
            problems.Add(new SourcePlace("p", line, 1), "x");

        Assert.Equal(50, problems.Items.Count);
        Assert.EndsWith("p:50:1: x\nand 1 more problem\n", problems.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_list_prints_nothing()
    {
        Assert.True(new ProblemList().IsEmpty);
        Assert.Equal("", new ProblemList().ToString());
    }
}
