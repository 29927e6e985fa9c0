using Xunit;

namespace PolarityMap.Documents.Tests.Yaml;

/// <summary>Slips of writing, each with the place and the advice that a person needs. Places are counted by hand.</summary>
public class YamlSyntaxTests
{
    private static void Says(string text, string problem)
    {
        Assert.Equal(problem + "\n", YamlText.Problems(text));
        Assert.Equal(problem + "\n", YamlText.Problems(text.Replace("\n", "\r\n", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("a:\n\tb: c\n", "p:2:1")]
    [InlineData("a:\n  b: 1\n\t\tc: 2\n", "p:3:1")]
    [InlineData("a:\n  b: 1\n  \tc: 2\n", "p:3:3")]
    [InlineData("a: |\n  x\n \ty\n", "p:3:2")]
    public void Tabs_for_indentation(string text, string place) =>
        Says(text, place + ": a tab is used for indentation here; YAML is indented with spaces");

    [Theory]
    [InlineData("a:\n  K1:cassette\n  K2: cassette\n", "p:2:5")]
    [InlineData("a: b\nc:d\n", "p:2:2")]
    [InlineData("- a: b\n  c:d\n- e: f\n", "p:2:4")]
    [InlineData("r:\n  - a:b\n    c: d\n", "p:2:6")]
    [InlineData("\"a\":b\n", "p:1:4")]
    public void A_missing_space_after_a_colon(string text, string place) =>
        Says(text, place + ": a space is missing after this ':'; expected 'key: value'");

    [Theory]
    [InlineData("a: \"x\nb: 1\n", "p:1:4", "\"")]
    [InlineData("a: 'x\n\nb: c\n", "p:1:4", "'")]
    [InlineData("a: 'x", "p:1:4", "'")]
    [InlineData("a:\n  - [x, \"y]\n", "p:2:9", "\"")]
    public void A_quote_that_is_never_closed(string text, string place, string quote) =>
        Says(text, $"{place}: the quote opened here is not closed; expected a {quote} at the end of the text");

    [Theory]
    [InlineData("a: 'x\nb: 'y'\n", "p:1:4: the quote opened here is closed only on line 2, and text follows there; expected a quote at the end of the text")]
    [InlineData("r: [a, 'b, c]\nq: 'd'\n", "p:1:8: the quote opened here is closed only on line 2, and text follows there; expected a quote at the end of the text")]
    [InlineData("a: 'it's'\n", "p:1:8: text follows a closing quote; expected the whole text in quotes, a single quote inside single quotes written twice")]
    [InlineData("a: \"b\" c\n", "p:1:8: text follows a closing quote; expected the whole text in quotes, a single quote inside single quotes written twice")]
    [InlineData("'K'1: b\n", "p:1:4: text follows a closing quote; expected the whole text in quotes, a single quote inside single quotes written twice")]
    public void A_quote_closed_in_the_wrong_place(string text, string problem) => Says(text, problem);

    [Theory]
    [InlineData("a: \"x\\q\"\n", "p:1:6: after a backslash in double quotes only an escape such as \\n or \\\" may follow; expected '\\\\' for a backslash, or single quotes")]
    [InlineData("a: \"x\\u12\"\n", "p:1:8: the escape before this names no character; expected \\u and four hexadecimal digits")]
    [InlineData("a: \"\\uD800\\u0041\"\n", "p:1:17: the escape before this names no character; expected \\u and four hexadecimal digits")]
    public void A_wrong_escape(string text, string problem) => Says(text, problem);

    [Theory]
    [InlineData("a: [b, c", "p:1:4: the '[' opened here is not closed; expected ']'")]
    [InlineData("a: {b: c\n", "p:1:4: the '{' opened here is not closed; expected '}'")]
    [InlineData("a: {b: [c, d}\n", "p:1:13: this '}' does not close the '[' opened at p:1:8; expected ']'")]
    [InlineData("a: [b, c\nnext: d\n", "p:1:4: the '[' opened here is not closed before line 2, or a ',' is missing there; expected ']', or each further line indented")]
    [InlineData("a: {x: 1\n   y: 2}\n", "p:1:4: the '{' opened here is not closed before line 2, or a ',' is missing there; expected '}', or each further line indented")]
    [InlineData("a: [b]]\n", "p:1:7: this ']' closes nothing; expected the opening bracket before it, or the text in quotes")]
    [InlineData("]\n", "p:1:1: this ']' closes nothing; expected the opening bracket before it, or the text in quotes")]
    [InlineData("a: [b]c\n", "p:1:7: text follows a closing bracket; expected the whole text in quotes")]
    public void Brackets_that_do_not_match(string text, string problem) => Says(text, problem);

    [Theory]
    [InlineData("a: [\"x\" \"y\"]\n", "p:1:9: this does not continue the '[' opened at p:1:4; expected ',' or ']'")]
    [InlineData("a: [x,,y]\n", "p:1:7: there is nothing before this ','; expected a text before it")]
    [InlineData("a: [x,#y\n]\n", "p:1:7: a comment needs a space before its '#'")]
    public void Commas_in_lists(string text, string problem) => Says(text, problem);

    [Theory]
    [InlineData("r:\n  - [SW-[1..4], b]\n", "p:2:9: inside [ ] a text with '[' stands in quotes; expected quotes around it, such as \"SW-[1..4]\"")]
    [InlineData("r: {SW-[1..4]: b}\n", "p:1:8: inside { } a text with '[' stands in quotes; expected quotes around it, such as \"SW-[1..4]\"")]
    [InlineData("r: {a: SW-[1..4], c: d}\n", "p:1:11: inside { } a text with '[' stands in quotes; expected quotes around it, such as \"SW-[1..4]\"")]
    public void A_range_in_brackets_inside_a_flow_list(string text, string problem) => Says(text, problem);

    [Theory]
    [InlineData("a: b: c\n", "p:1:5")]
    [InlineData("a: 'b': c\n", "p:1:7")]
    public void Two_colons_on_one_line(string text, string place) =>
        Says(text, place + ": a second ':' on one line; expected the value in quotes, or the inner 'key: value' on the next line, indented");

    [Theory]
    [InlineData("a\nb: c\n", "p:1:1: this line has no ':'; expected 'key: value'")]
    [InlineData("a: b\nc\nd: e\n", "p:2:1: this line has no ':'; expected 'key: value'")]
    [InlineData("a:\n- b\nc\n", "p:3:1: this line has no ':'; expected 'key: value'")]
    [InlineData("a: b\n c: d\n", "p:2:2: this line is indented as if it belonged to the line above, which already has a value; expected the indentation of the line above")]
    [InlineData("a: b\n\n# why\n  c: d\n", "p:4:3: this line is indented like no line that it could belong to; expected the indentation of the lines above")]
    [InlineData("a:\n  b: c\n d: e\n", "p:3:2: this line is indented like no line that it could belong to; expected the indentation of the lines above")]
    [InlineData("- a\n-b\n", "p:2:1: a space is missing after this '-'; expected '- item'")]
    [InlineData("- a\nb: c\n", "p:2:1: this line does not begin with '- ' as the list above does, and is indented alike; expected '- ', or other indentation")]
    [InlineData("a: - b\n", "p:1:4: a list item cannot begin on the line of its key; expected '-' on a line of its own below the key, or [ ] around the list")]
    [InlineData("a:\n  - b: c\n    - d\n", "p:3:5: a list item among 'key: value' lines; expected 'key: value'")]
    public void Lines_that_do_not_fit(string text, string problem) => Says(text, problem);

    [Theory]
    [InlineData("a: %x\n", "p:1:4: a text cannot begin with '%'; expected the text in quotes")]
    [InlineData("a: @x\n", "p:1:4: a text cannot begin with '@'; expected the text in quotes")]
    [InlineData("a: `x`\n", "p:1:4: a text cannot begin with '`'; expected the text in quotes")]
    [InlineData("a: ,x\n", "p:1:4: a text cannot begin with ','; expected the text in quotes")]
    [InlineData("a: *\n", "p:1:4: '*' names an alias or anchor, which are not read; expected the text in quotes")]
    [InlineData("a: & b\n", "p:1:4: '&' names an alias or anchor, which are not read; expected the text in quotes")]
    [InlineData("x: |  foo\n  y\n", "p:1:4: after '|' the text begins on the next line, indented evenly; expected a line break, or the text in quotes")]
    [InlineData("a: ? b\n", "p:1:4: '?' begins a key, which cannot stand here; expected 'key: value'")]
    [InlineData("a: \"b\"#x\n", "p:1:7: a comment needs a space before its '#'")]
    [InlineData("%YAML 3.0\n---\na: b\n", "p:1:1: lines that begin with '%' are not needed; delete the line")]
    public void Characters_that_need_quotes_or_space(string text, string problem) => Says(text, problem);

    [Fact]
    public void A_key_may_not_be_longer_than_the_format_allows() =>
        Says("a: b\n" + new string('k', 2000) + ": v\n", "p:2:1: this key is longer than 1024 characters");

    [Fact]
    public void What_came_before_a_syntax_error_is_reported_with_it() =>
        Assert.Equal(
            "p:2:1: key 'a' is here a second time; the first is at p:1:1\np:3:4: the '[' opened here is not closed; expected ']'\n",
            YamlText.Problems("a: b\na: c\nd: [\n"));
}
