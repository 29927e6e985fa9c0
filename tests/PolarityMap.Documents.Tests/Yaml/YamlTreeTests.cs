using PolarityMap.Documents.Yaml;
using Xunit;

namespace PolarityMap.Documents.Tests.Yaml;

public class YamlTreeTests
{
    private static YamlNode Tree(string text)
    {
        var (root, problems) = YamlText.Read(text);
        Assert.Equal("", problems);
        return root!;
    }

    // Small documents in the manner of chapter 2 of the YAML 1.2.2 specification, results written by hand.
    [Theory]
    [InlineData("- a\n- b c\n- d\n", "[a, b c, d]")]
    [InlineData("a: 65\nb: 0.278 # comment\nc: 147\n", "{a: 65, b: 0.278, c: 147}")]
    [InlineData("a:\n  - x\n  - y\nb:\n- z\n", "{a: [x, y], b: [z]}")]
    [InlineData("-\n  name: x\n  hr: 65\n- name: y\n  hr: 63\n", "[{name: x, hr: 65}, {name: y, hr: 63}]")]
    [InlineData("- [name, hr]\n- [x, 65]\n", "[[name, hr], [x, 65]]")]
    [InlineData("m: {hr: 65, avg: 0.278}\ns: {\n    hr: 63,\n    avg: 0.288,\n  }\n", "{m: {hr: 65, avg: 0.278}, s: {hr: 63, avg: 0.288}}")]
    [InlineData("- - x\n  - y\n- z\n", "[[x, y], z]")]
    [InlineData("a: 'it''s'\nb: \"tab\\tquote\\\"\"\n", "{a: \"it's\", b: \"tab\tquote\"\"}")]
    [InlineData("a: |\n  x\n    y\n\n  z\nb: >-\n  x\n  y\n", "{a: |x\\n  y\\n\\nz\\n, b: |x y}")]
    [InlineData("a: one\n  two\n\n  three\n", "{a: one two\\nthree}")]
    [InlineData("a: \"one\n  two\"\n", "{a: \"one two\"}")]
    [InlineData("a:\nb: ~\nc: null\nd: \"\"\ne: '~'\nf: !!str ~\n", "{a: null, b: null, c: null, d: \"\", e: \"~\", f: ~}")]
    [InlineData("{\"a\":1,\"b\":[true,null]}", "{\"a\": 1, \"b\": [true, null]}")]
    [InlineData("? a\n: b\n", "{a: b}")]
    [InlineData("[a: b, c]", "[{a: b}, c]")]
    [InlineData("%YAML 1.2\n---\na: b\n...\n", "{a: b}")]
    [InlineData("a: !!int 3\nb: !!map {c: !!seq [d]}\n", "{a: 3, b: {c: [d]}}")]
    [InlineData("SW-L-[1..4]: switch\nruns:\n  - SW-L-[1..4]/1..6, K1/1..24\n", "{SW-L-[1..4]: switch, runs: [SW-L-[1..4]/1..6, K1/1..24]}")]
    [InlineData("a: K1/1:3\nb: https://x\n", "{a: K1/1:3, b: https://x}")]
    [InlineData("a: [x,\n\ty]\n", "{a: [x, y]}")]
    [InlineData("a: |\n  x\n  \ty\n", "{a: |x\\n\ty\\n}")]
    [InlineData("<<X: a\n\"<<\": b\n", "{<<X: a, \"<<\": b}")]
    public void Documents_give_the_tree_that_they_show(string text, string shape)
    {
        Assert.Equal(shape, YamlText.Shape(Tree(text)));

        // The kind of line break changes nothing.
        Assert.Equal(shape, YamlText.Shape(Tree(text.Replace("\n", "\r\n", StringComparison.Ordinal))));
        Assert.Equal(shape, YamlText.Shape(Tree(text.Replace("\n", "\r", StringComparison.Ordinal))));
    }

    // Places counted by hand: a node ends just after its last character, whatever blank lines and comments follow.
    [Theory]
    [InlineData("ab: cd\n", "1:1-1:7 {1:1-1:3 ab: 1:5-1:7 cd}")]
    [InlineData(
        "a:\n  b: [x, 'y z']   # why\n\n\nc: {d: e }\n",
        "1:1-5:11 {1:1-1:2 a: 2:3-2:16 {2:3-2:4 b: 2:6-2:16 [2:7-2:8 x, 2:10-2:15 \"y z\"]}, 5:1-5:2 c: 5:4-5:11 {5:5-5:6 d: 5:8-5:9 e}}")]
    [InlineData("- a\n- - b\n  - c\n\n\n", "1:1-3:6 [1:3-1:4 a, 2:3-3:6 [2:5-2:6 b, 3:5-3:6 c]]")]
    [InlineData("a:\n- b\nc:\nd: e", "1:1-4:5 {1:1-1:2 a: 2:1-2:4 [2:3-2:4 b], 3:1-3:2 c: 3:3-3:3 null, 4:1-4:2 d: 4:4-4:5 e}")]
    [InlineData("a: [\n  b,\n  ]\n", "1:1-3:4 {1:1-1:2 a: 1:4-3:4 [2:3-2:4 b]}")]
    [InlineData("[x: y, z]", "1:1-1:10 [1:2-1:6 {1:2-1:3 x: 1:5-1:6 y}, 1:8-1:9 z]")]
    [InlineData("a: \"b\n  c\"\n", "1:1-2:5 {1:1-1:2 a: 1:4-2:5 \"b c\"}")]
    [InlineData("𝄞: 光\n", "1:1-1:6 {1:1-1:3 𝄞: 1:5-1:6 光}")] // the clef is two UTF-16 code units
    public void Every_node_knows_where_it_starts_and_ends(string text, string places)
    {
        Assert.Equal(places, YamlText.Places(Tree(text)));
        Assert.Equal(places, YamlText.Places(Tree(text.Replace("\n", "\r\n", StringComparison.Ordinal))));
    }

    [Theory]
    [InlineData("key: abcdef\n", 0, 1, 6)]
    [InlineData("key: abcdef\n", 3, 1, 9)]
    [InlineData("key: abcdef\n", 6, 1, 12)]
    [InlineData("key: 'abc'\n", 0, 1, 7)]
    [InlineData("key: \"abc\"\n", 2, 1, 9)]
    [InlineData("key:\n  'a b' # c\n", 2, 2, 6)]
    [InlineData("key: 'it''s'\n", 4, 1, 6)] // an escape
    [InlineData("key: \"a\\tb\"\n", 2, 1, 6)] // an escape
    [InlineData("key: !!str abc\n", 1, 1, 6)] // a tag
    [InlineData("key: one\n  two\n", 5, 1, 6)] // two lines
    [InlineData("key: |\n  abc\n", 1, 1, 6)] // block text
    [InlineData("key: abc\n", 4, 1, 6)] // no such character
    [InlineData("key: abc\n", -1, 1, 6)]
    public void The_place_of_a_character_is_exact_or_that_of_the_scalar(string text, int index, int line, int column)
    {
        var scalar = Assert.IsType<YamlScalar>(((YamlMapping)Tree(text)).Find("key"));

        Assert.Equal(new SourcePlace("p", line, column), scalar.PlaceAt(index));
    }

    [Fact]
    public void A_mapping_finds_its_keys_whether_few_or_many()
    {
        var few = (YamlMapping)Tree("a: 1\nb: 2\n");
        var many = (YamlMapping)Tree(string.Concat(Enumerable.Range(1, 30).Select(number => $"k{number}: v{number}\n")));

        Assert.Equal("2", few.Find("b")?.ToString());
        Assert.Null(few.Find("B"));
        Assert.Equal("v1", many.Find("k1")?.ToString());
        Assert.Equal("v30", many.Find("k30")?.ToString());
        Assert.Null(many.Find("k31"));
        Assert.Equal(Enumerable.Range(1, 30).Select(number => "k" + number), many.Entries.Select(entry => entry.Key.Value));
    }

    [Theory]
    [InlineData("length:62 m", true)]
    [InlineData("K1:cassette K2:cassette", true)]
    [InlineData("62 m", false)]
    [InlineData("K1/1:3", false)]
    [InlineData("https://x", false)]
    [InlineData("'length:62 m'", false)]
    public void A_forgotten_space_after_a_colon_can_be_recognised(string text, bool looks) =>
        Assert.Equal(looks, Assert.IsType<YamlScalar>(Tree(text)).LooksLikeEntryWithoutSpace);
}
