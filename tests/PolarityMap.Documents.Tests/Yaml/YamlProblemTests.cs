using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;
using Xunit;

namespace PolarityMap.Documents.Tests.Yaml;

/// <summary>What is YAML, but not read here. Places are counted by hand.</summary>
public class YamlProblemTests
{
    private const string WriteShared = "are not read; write the shared attributes as an entry of types and name it";

    [Fact]
    public void A_duplicate_key_names_both_places_and_keeps_the_first_entry()
    {
        var (root, problems) = YamlText.Read("parts:\n  K1: a\n  K2: b\n  K1: c\nruns: d\nparts: e\n");

        Assert.Equal(
            "p:4:3: key 'K1' is here a second time; the first is at p:2:3\np:6:1: key 'parts' is here a second time; the first is at p:1:1\n",
            problems);
        Assert.Equal("{parts: {K1: a, K2: b}, runs: d}", YamlText.Shape(root!));
    }

    [Fact]
    public void Duplicate_keys_are_found_in_flow_mappings_however_quoted_and_among_many() =>
        Assert.Equal(
            "p:1:11: key 'a' is here a second time; the first is at p:1:5\np:32:1: key 'k7' is here a second time; the first is at p:8:1\n",
            YamlText.Read("x: {a: 1, \"a\": 2}\n" + string.Concat(Enumerable.Range(1, 30).Select(number => $"k{number}: v\n")) + "k7: w\n").Problems);

    [Fact]
    public void Aliases_anchors_and_merge_keys_are_reported_in_one_go() =>
        Assert.Equal(
            $"p:2:6: anchors such as '&c' {WriteShared}\n"
            + $"p:4:3: merge keys '<<' {WriteShared}\n"
            + $"p:4:7: aliases such as '*c' {WriteShared}\n"
            + $"p:5:4: anchors such as '&s' {WriteShared}\n"
            + $"p:6:4: aliases such as '*s' {WriteShared}\n",
            YamlText.Problems("K1:\n  a: &c {b: 1}\nK2:\n  <<: *c\nd: &s text\ne: *s\n"));

    [Fact]
    public void An_alias_as_key_is_reported_once() =>
        Assert.Equal($"p:1:1: aliases such as '*x' {WriteShared}\n", YamlText.Problems("*x : 1\n"));

    [Theory]
    [InlineData("a: !foo b\n", "p:1:4: the tag '!foo' is not read here")]
    [InlineData("a:\n  - !!binary b\n", "p:2:5: the tag '!!binary' is not read here")]
    [InlineData("a: !!map b\n", "p:1:4: the tag '!!map' is not read here")]
    [InlineData("!!str {a: b}\n", "p:1:1: the tag '!!str' is not read here")]
    [InlineData("a: !<tag:x> b\n", "p:1:4: the tag 'tag:x' is not read here")]
    [InlineData("a: ! b\n", "p:1:4: the tag '!' is not read here")]
    public void Tags_other_than_the_core_ones_in_their_place_are_refused(string text, string problem) =>
        Assert.Equal(problem + "; delete it, or quote a text that begins with '!'\n", YamlText.Problems(text));

    [Theory]
    [InlineData("a: b\n---\nc: d\n", "p:2:1")]
    [InlineData("--- a\n--- b\n", "p:2:1")]
    [InlineData("a: b\n...\nc: d\n", "p:3:1")]
    public void A_second_document_is_refused(string text, string place) =>
        Assert.Equal(
            place + ": a second document begins here; one file holds one document: put the second into a file of its own\n",
            YamlText.Problems(text));

    [Theory]
    [InlineData("[a]: b\n", "p:1:1: a list cannot be a key; write a text before the ':', and quote a name that begins with '['\n")]
    [InlineData("x:\n  [1..4]: b\n", "p:2:3: a list cannot be a key; write a text before the ':', and quote a name that begins with '['\n")]
    [InlineData("? {a: b}\n: c\n", "p:1:3: a mapping cannot be a key; write a text before the ':', and quote a text that begins with '{'\n")]
    [InlineData("[a]: b\n[c]: d\n", "p:1:1: a list cannot be a key; write a text before the ':', and quote a name that begins with '['\np:2:1: a list cannot be a key; write a text before the ':', and quote a name that begins with '['\n")]
    [InlineData(": b\n", "p:1:1: there is no key before the ':'; expected 'key: value'\n")]
    public void Keys_that_are_no_text_are_refused(string text, string problems) => Assert.Equal(problems, YamlText.Problems(text));

    [Theory]
    [InlineData("")]
    [InlineData("\n\n")]
    [InlineData("# only a comment\n")]
    [InlineData("---\n")]
    [InlineData("---\n...\n")]
    public void An_empty_document_is_a_problem(string text) =>
        Assert.Equal("p:1:1: the document is empty; expected lines such as 'key: value'\n", YamlText.Problems(text));

    [Fact]
    public void A_forgotten_space_in_a_flow_mapping_is_found() =>
        Assert.Equal(
            "p:1:18: a space is missing after this ':'; expected 'length: 62 m'\n",
            YamlText.Problems("T1: {b: c, length:62 m}\n"));

    [Theory]
    [InlineData("a:\n \tb: 1\n", "p:2:2")]
    [InlineData("\ta: b\n", "p:1:1")]
    public void A_tab_in_the_indentation_is_a_problem_even_where_the_text_can_be_read(string text, string place) =>
        Assert.Equal($"{place}: a tab is used for indentation here; YAML is indented with spaces\n", YamlText.Read(text).Problems);

    [Theory]
    [InlineData("\"\\u202e\"", "U+202E changes the direction in which text is shown and can make a name read as another; delete it")]
    [InlineData("\"a\\0b\"", "there is a NUL character (U+0000) here; delete it, or if the file is UTF-16 save the file as UTF-8")]
    [InlineData("\"\\x1b[2J\"", "there is a control character (U+001B) here; delete it")]
    public void An_escape_cannot_smuggle_in_a_forbidden_character(string value, string why) =>
        Assert.Equal($"p:1:4: an escape in this text makes a character that is not allowed: {why}\n", YamlText.Problems($"a: {value}\n"));

    [Fact]
    public void Forbidden_characters_are_refused_even_when_the_text_was_not_loaded_from_a_file()
    {
        Assert.Equal("p:2:4: there is a control character (U+0007) here; delete it\n", YamlText.Problems("a: b\nc: \u0007\n"));
        Assert.Equal("p:1:5: U+D834 is half of a character; type the character again\n", YamlText.Problems("a: b" + '\uD834'));
    }

    [Fact]
    public void Nesting_is_allowed_to_the_limit_and_refused_beyond_it()
    {
        // 32 brackets are 32 levels; the 33rd stands in column 33.
        Assert.NotNull(YamlText.Read(new string('[', 32) + new string(']', 32)).Root);
        Assert.Equal(
            "p:1:33: lists and mappings are nested more than 32 deep here; no plant needs that\n",
            YamlText.Problems(new string('[', 33) + new string(']', 33)));
        Assert.Equal(
            "p:33:33: lists and mappings are nested more than 32 deep here; no plant needs that\n",
            YamlText.Problems(string.Concat(Enumerable.Range(0, 33).Select(depth => new string(' ', depth) + "a:\n")) + new string(' ', 33) + "b\n"));
    }

    [Fact]
    public void Texts_are_read_to_the_length_limit_and_refused_beyond_it()
    {
        Assert.Equal(65_536, ((YamlScalar)YamlText.Read(new string('x', 65_536)).Root!).Value.Length);
        Assert.Equal(
            "p:1:4: this text has 65537 characters, at most 65536 are read\np:2:4: this text has 65538 characters, at most 65536 are read\n",
            YamlText.Problems($"a: {new string('x', 65_537)}\nb: '{new string('x', 65_538)}'\n"));
    }

    [Fact]
    public void Nodes_are_read_to_the_limit_and_refused_beyond_it()
    {
        // One list and 1,999,999 items are 2,000,000 nodes: the item on line 2,000,000 is the first beyond the limit.
        Assert.Equal(
            "p:2000000:2: the document has more than 2000000 keys and values; split it into several files\n",
            YamlText.Problems(string.Concat(Enumerable.Repeat("-\n", 2_100_000))));
    }

    [Fact]
    public void A_long_name_is_shortened_in_a_message() =>
        Assert.Equal(
            $"p:1:4: anchors such as '&{new string('n', 40)}…' {WriteShared}\n",
            YamlText.Problems($"a: &{new string('n', 5000)} b\n"));

    [Fact]
    public void Problems_already_in_the_list_do_not_count_against_a_good_document()
    {
        var problems = new ProblemList();
        problems.Add(new SourcePlace("other", 1, 1), "x");

        Assert.NotNull(YamlReader.Read("a: b", "p", problems));
        Assert.Equal(1, problems.Count);
    }
}
