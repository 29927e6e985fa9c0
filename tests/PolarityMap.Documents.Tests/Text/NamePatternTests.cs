using System.Diagnostics;
using CsCheck;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Text;

public class NamePatternTests
{
    private static string Expand(string text, bool token = false)
    {
        var said = "";
        void Report(int index, string message, string? expected) =>
            said += $"{index}: {message}" + (expected is null ? "" : $"; expected {expected}");

        var good = token
            ? NamePattern.TryExpandToken(text, Report, out var names)
            : NamePattern.TryExpand(text, Report, out names);
        Assert.Equal(good, said.Length == 0);
        Assert.Equal(good, names.Count > 0);
        return good ? string.Join('|', names) : said;
    }

    // Expansions written out by hand.
    [Theory]
    [InlineData("SW-1", "SW-1")]
    [InlineData("SW-[1..4]", "SW-1|SW-2|SW-3|SW-4")]
    [InlineData("[1..3]", "1|2|3")]
    [InlineData("K[1..4,9..12]", "K1|K2|K3|K4|K9|K10|K11|K12")]
    [InlineData("R[3,5,8]", "R3|R5|R8")]
    [InlineData("R[8,3,8]", "R8|R3|R8")]
    [InlineData("P[08..11]", "P08|P09|P10|P11")]
    [InlineData("P[098..101]", "P098|P099|P100|P101")]
    [InlineData("P[4..1]", "P4|P3|P2|P1")]
    [InlineData("P[11..08]", "P11|P10|P09|P08")]
    [InlineData("P[5..5]", "P5")]
    [InlineData("P[0..2]", "P0|P1|P2")]
    [InlineData("P[01,2,003]", "P01|P2|P003")]
    [InlineData("P[1..15 by 2]", "P1|P3|P5|P7|P9|P11|P13|P15")]
    [InlineData("P[1..6 by 2]", "P1|P3|P5")]
    [InlineData("P[6..1 by 2]", "P6|P4|P2")]
    [InlineData("P[1..2 by 9]", "P1")]
    [InlineData("P[ 1 .. 3 , 7 ]", "P1|P2|P3|P7")]
    [InlineData("a[1..2]-b[8..9]c", "a1-b8c|a1-b9c|a2-b8c|a2-b9c")]
    [InlineData("[1..2][1..2][1..2]", "111|112|121|122|211|212|221|222")]
    [InlineData("Rack [1..2] left", "Rack 1 left|Rack 2 left")]
    [InlineData("[999999999999999998..999999999999999999]", "999999999999999998|999999999999999999")]
    public void Ranges_expand_in_order_the_left_group_outermost(string text, string names)
    {
        Assert.Equal(names, Expand(text));
        Assert.Equal(names, Expand(text, token: true));
    }

    [Theory]
    [InlineData("1..6", "1|2|3|4|5|6")]
    [InlineData("3..1", "3|2|1")]
    [InlineData("near1..3", "near1|near2|near3")]
    [InlineData("P08..10", "P08|P09|P10")]
    [InlineData("a[1..2]-8..9", "a1-8|a1-9|a2-8|a2-9")]
    [InlineData("12", "12")]
    [InlineData("a.1", "a.1")]
    [InlineData("a..1", "a..1")]
    public void A_range_at_the_end_of_a_token_needs_no_brackets(string text, string names) => Assert.Equal(names, Expand(text, token: true));

    // The number before the colon is the index in the text, counted by hand from 0.
    [Theory]
    [InlineData("", "0: the name is empty")]
    [InlineData("SW-[1..4", "3: the '[' is not closed; expected ',' or ']'")]
    [InlineData("SW-[1..", "3: the '[' is not closed; expected a number, then ']'")]
    [InlineData("SW-[", "3: the '[' is not closed; expected a number, then ']'")]
    [InlineData("SW-[1[2]]", "3: the '[' is not closed; expected ',' or ']'")]
    [InlineData("SW-]", "3: ']' closes no '['")]
    [InlineData("SW-[1..4]]", "9: ']' closes no '['")]
    [InlineData("SW-[]", "3: the brackets are empty; expected a range such as [1..4]")]
    [InlineData("SW-[1,]", "6: ']' cannot stand here in brackets; expected a number")]
    [InlineData("SW-[,1]", "4: ',' cannot stand here in brackets; expected a number")]
    [InlineData("SW-[a..d]", "4: 'a' cannot stand here in brackets; expected a number")]
    [InlineData("SW-[1..d]", "7: 'd' cannot stand here in brackets; expected a number")]
    [InlineData("SW-[1 4]", "6: '4' cannot stand here in brackets; expected ',' or ']'")]
    [InlineData("SW-[1-4]", "5: '-' does not make a range; expected two dots, as in [1..4]")]
    [InlineData("SW-[1:4]", "5: ':' does not make a range; expected two dots, as in [1..4]")]
    [InlineData("SW-[1.4]", "5: '.' does not make a range; expected two dots, as in [1..4]")]
    [InlineData("SW-[1...4]", "7: '.' does not make a range; expected a number after two dots, as in [1..4]")]
    [InlineData("SW-[1..9 by 0]", "12: a step of 0 never reaches the end of the range; expected a step of 1 or more")]
    [InlineData("SW-[1..9 by]", "11: ']' cannot stand here in brackets; expected a number")]
    [InlineData("SW-[5 by 2]", "6: 'b' cannot stand here in brackets; expected ',' or ']'")]
    [InlineData("SW-[01..100]", "4: with leading zeros both ends of a range have the same number of digits; expected 001..100")]
    [InlineData("SW-[1..016]", "4: with leading zeros both ends of a range have the same number of digits; expected 001..016")]
    [InlineData("SW-[1..1234567890123456789]", "7: the number is too large; expected at most 18 digits")]
    [InlineData("SW/[1..4]", "2: '/' cannot be part of a name; expected letters, digits, single spaces inside, and - _ . + # ~ ( )")]
    [InlineData("a[1]b:[2]", "5: ':' cannot be part of a name; expected letters, digits, single spaces inside, and - _ . + # ~ ( )")]
    [InlineData("SW-[1..4] ", "9: the name ends with a space")]
    [InlineData("SW-1..4 x", "3: a range inside a name stands in brackets; expected [1..4]")]
    [InlineData("[1..2]a3...4", "7: a range inside a name stands in brackets; expected [3..4]")]
    public void What_is_wrong_is_said_with_the_index_of_the_place(string text, string problem)
    {
        Assert.Equal(problem, Expand(text));
        Assert.Equal(problem, Expand(text, token: true));
    }

    [Fact]
    public void Without_brackets_a_range_is_refused_where_brackets_are_needed() =>
        Assert.Equal("4: a range inside a name stands in brackets; expected [1..8]", Expand("near1..8"));

    [Fact]
    public void Two_ranges_run_together_at_the_end_are_refused() =>
        Assert.Equal("0: a range inside a name stands in brackets; expected [1..2]", Expand("1..2..3", token: true));

    [Theory]
    [InlineData("[1..1000000000]", 0)]
    [InlineData("a[1..100001]", 1)]
    [InlineData("a[0..999999999999999999]", 1)]
    [InlineData("[1..1000][1..101]", 9)]
    [InlineData("[1..50000,1..50001]", 0)]
    [InlineData("[0..999999999999999999][0..999999999999999999]", 0)]
    [InlineData("[1..9,0..999999999999999999,0..999999999999999999,0..999999999999999999]", 0)]
    public void Too_many_names_are_refused_before_any_is_made(string text, int index)
    {
        var watch = Stopwatch.StartNew();

        Assert.Equal($"{index}: this stands for more than 100000 names", Expand(text));
        Assert.True(watch.ElapsedMilliseconds < 1000);
    }

    [Fact]
    public void A_hundred_thousand_names_are_the_most()
    {
        Assert.True(NamePattern.TryExpand("[1..1000][1..100]", (_, _, _) => { }, out var names));
        Assert.Equal(100_000, names.Count);
        Assert.Equal("1000100", names[^1]);
    }

    [Fact]
    public void The_longest_name_counts_for_the_length_limit()
    {
        Assert.Equal(2, Expand(new string('a', 79) + "[8..9]").Split('|').Length);
        Assert.Equal("0: the longest name has 81 characters, at most 80 are allowed", Expand(new string('a', 79) + "[8..10]"));
        Assert.Equal("0: the longest name has 10000 characters, at most 80 are allowed", Expand(string.Concat(Enumerable.Repeat("[1]", 10_000))));
    }

    [Fact]
    public void Any_text_gives_valid_names_or_one_problem_inside_the_text()
    {
        Gen.String[Gen.Char["[[[]]],,..12305by -aB/:é\t"], 0, 24].Sample(
            text =>
            {
                foreach (var token in new[] { false, true })
                {
                    var reports = 0;
                    void Report(int index, string message, string? expected)
                    {
                        reports++;
                        Assert.InRange(index, 0, Math.Max(0, text.Length - 1));
                        Assert.NotEqual("", message);
                    }

                    var good = token ? NamePattern.TryExpandToken(text, Report, out var names) : NamePattern.TryExpand(text, Report, out names);
                    Assert.Equal(good ? 0 : 1, reports);
                    Assert.All(names.Take(50), name => Assert.True(Names.IsValid(name, out var why), $"{text}: {name}: {why}"));
                }
            },
            iter: 20_000);
    }
}
