using System.Diagnostics;
using System.Text;
using CsCheck;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;
using Xunit;

namespace PolarityMap.Documents.Tests.Yaml;

/// <summary>No text makes the reader throw, hang, or answer nothing.</summary>
public class YamlRobustnessTests
{
    /// <summary>Ten times what the slowest of these takes on a slow machine; a quadratic reader would need hours.</summary>
    private const int Patience = 20_000;

    private const string Valid =
        """
        # a plant
        title: "A \"small\" hall"
        types:
          T12: {kind: trunk, size: 12, length: 62 m}
        parts:
          SW-L-[1..4]: switch
          K1:
            type: cassette
            note: >-
              between the
              rooms
        runs:
          - SW-L-1/1..6, K1/1..6
          - [K1/rear, T1, 'K2/rear']
          - - x
            - ? complex
              : |
                 text
        """;

    [Fact]
    public void The_document_that_is_mutated_is_valid() => Assert.Equal("", YamlText.Read(Valid).Problems);

    [Fact]
    public void Random_bytes_never_throw() =>
        Gen.Byte.Array[0, 60].Sample(
            bytes =>
            {
                var problems = new ProblemList();
                if (TextLoader.TryDecode(bytes, "p", problems, out var text))
                    Check(text);
                else
                    Assert.False(problems.IsEmpty);
            },
            iter: 3_000);

    [Fact]
    public void Random_texts_of_the_signs_of_YAML_never_throw() =>
        Gen.String[Gen.Char["[]{},:-?#&*!|>'\"%@`\\ \n\n\n\t\rab:  .<"], 0, 60].Sample(Check, iter: 6_000);

    [Fact]
    public void Random_lines_of_a_document_in_random_order_never_throw()
    {
        string[] pieces = [.. Valid.Split('\n'), "---", "...", "a: &x", "  <<: *x", "\t", "    [", "  }", "'", "  \"", "- |2", "? ", ": ", "%TAG ! x", "a: !t"];
        Gen.Int[0, pieces.Length - 1].Array[0, 12].Sample(picks => Check(string.Join('\n', picks.Select(pick => pieces[pick]))), iter: 3_000);
    }

    [Fact]
    public void Random_mutations_of_a_valid_document_never_throw()
    {
        var edit = Gen.Select(Gen.Int[0, Valid.Length - 1], Gen.Char["[]{},:-?#&*!|>'\"%@`\\ \n\tx"], Gen.Int[0, 3]);
        edit.Array[1, 4].Sample(
            edits =>
            {
                var text = new StringBuilder(Valid);
                foreach (var (position, character, kind) in edits)
                {
                    var at = Math.Min(position, text.Length - 1);
                    _ = kind switch
                    {
                        0 => text.Insert(at, character),
                        1 => text.Remove(at, 1),
                        2 => text.Remove(at, 1).Insert(at, character),
                        _ => text.Remove(at, Math.Min(text.Length - at - 1, 7)),
                    };
                }

                Check(text.ToString());
            },
            iter: 3_000);
    }

    // Made on demand: megabytes of text as test data would be printed and compared by the test runner.
    private static string Hostile(string what) => what switch
    {
        "open lists" => new string('[', 100_000),
        "open mappings" => new string('{', 100_000),
        "open lists on lines of their own" => Repeat("[\n", 100_000),
        "nested flow mappings" => Repeat("{a: ", 100_000),
        "nested flow pairs" => Repeat("[a: ", 100_000),
        "closing brackets" => new string(']', 1_000_000),
        "nested block lists" => Repeat("- ", 100_000),
        "nested keys" => Repeat("? ", 100_000),
        "colons" => Repeat(": ", 100_000),
        "anchors" => Repeat("&a ", 100_000),
        "anchored items" => Repeat("- &a b\n", 30_000),
        "tags" => Repeat("!a ", 100_000),
        "tag directives" => Repeat("%TAG !a! tag:x\n", 100_000),
        "reserved directives" => Repeat("%A b\n", 100_000) + "a: b",
        "documents" => Repeat("---\n", 100_000),
        "document ends" => Repeat("...\n", 100_000),
        "quotes" => new string('\'', 1_000_001),
        "open quotes on lines" => Repeat("a: \"\n", 100_000),
        "brackets wide open at the limit" => "a: " + new string('[', 31) + Repeat("x, ", 50_000),
        "a line of 3 MB" => "a: " + new string('x', 3_000_000),
        "a quote of 3 MB" => "a: \"" + new string('x', 3_000_000),
        "a key of 3 MB" => new string('x', 3_000_000) + ": a",
        "an anchor of 3 MB" => "a: &" + new string('x', 3_000_000) + " b",
        "a tag of 3 MB" => "a: !" + new string('x', 3_000_000) + " b",
        "spaces of 3 MB" => "a: |\n" + new string(' ', 3_000_000) + "b",
        "tabs of 3 MB" => "a:\n" + new string('\t', 3_000_000) + "b: c",
        "line breaks of 1 MB" => "a: b\n" + new string('\n', 1_000_000) + " c\nd",
        "the same key again and again" => Repeat("a: b\n", 60_000),
        "tabs on every line" => "a:\n" + Repeat("   \tb\n", 100_000),
        _ => throw new ArgumentOutOfRangeException(nameof(what)),
    };

    [Theory]
    [InlineData("open lists")]
    [InlineData("open mappings")]
    [InlineData("open lists on lines of their own")]
    [InlineData("nested flow mappings")]
    [InlineData("nested flow pairs")]
    [InlineData("closing brackets")]
    [InlineData("nested block lists")]
    [InlineData("nested keys")]
    [InlineData("colons")]
    [InlineData("anchors")]
    [InlineData("anchored items")]
    [InlineData("tags")]
    [InlineData("tag directives")]
    [InlineData("reserved directives")]
    [InlineData("documents")]
    [InlineData("document ends")]
    [InlineData("quotes")]
    [InlineData("open quotes on lines")]
    [InlineData("brackets wide open at the limit")]
    [InlineData("a line of 3 MB")]
    [InlineData("a quote of 3 MB")]
    [InlineData("a key of 3 MB")]
    [InlineData("an anchor of 3 MB")]
    [InlineData("a tag of 3 MB")]
    [InlineData("spaces of 3 MB")]
    [InlineData("tabs of 3 MB")]
    [InlineData("line breaks of 1 MB")]
    [InlineData("the same key again and again")]
    [InlineData("tabs on every line")]
    public void Hostile_texts_are_answered_in_bounded_time(string what)
    {
        var text = Hostile(what);
        var watch = Stopwatch.StartNew();
        var (root, problems) = YamlText.Read(text);

        Assert.True(watch.ElapsedMilliseconds < Patience);
        Assert.True(root is not null || problems.Length > 0);
        Assert.True(problems.Length < 20_000, "messages do not grow with the document");
    }

    [Fact]
    public void Nested_aliases_are_not_expanded()
    {
        // Nine levels of nine references: expanded, half a thousand million words.
        var text = new StringBuilder("a0: &a0 word\n");
        for (var level = 1; level <= 9; level++)
            text.Append($"a{level}: &a{level} [{string.Join(", ", Enumerable.Repeat($"*a{level - 1}", 9))}]\n");
        var problems = new ProblemList();

        Assert.Null(YamlReader.Read(text.ToString(), "p", problems));
        Assert.Equal(10 + 81, problems.Count);
    }

    [Fact]
    public void An_anchor_that_holds_itself_is_two_problems()
    {
        var problems = YamlText.Problems("a: &x\n  b: *x\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);

        Assert.StartsWith("p:1:4: anchors such as '&x'", problems[0], StringComparison.Ordinal);
        Assert.StartsWith("p:2:6: aliases such as '*x'", problems[1], StringComparison.Ordinal);
        Assert.Equal(2, problems.Length);
    }

    private static string Repeat(string text, int times) => new StringBuilder(text.Length * times).Insert(0, text, times).ToString();

    private static void Check(string text)
    {
        var problems = new ProblemList();
        var root = YamlReader.Read(text, "p", problems);

        Assert.True(root is not null || !problems.IsEmpty);
        var lines = text.Split('\n').Length + text.Count(character => character == '\r');
        foreach (var problem in problems.Items)
        {
            Assert.InRange(problem.Place.Line, 1, lines);
            Assert.InRange(problem.Place.Column, 1, text.Length + 1);

            // The library speaks like this; we do not.
            Assert.DoesNotContain("While ", problem.Message, StringComparison.Ordinal);
            Assert.DoesNotContain("Exception", problem.Message, StringComparison.Ordinal);
        }

        if (root is not null)
            CheckNode(root, 0);
    }

    private static void CheckNode(YamlNode node, int depth)
    {
        Assert.True(node is YamlScalar || depth < YamlReader.MaxDepth);
        Assert.True((node.Place.Line, node.Place.Column).CompareTo((node.EndLine, node.EndColumn)) <= 0, YamlText.Places(node));
        switch (node)
        {
            case YamlSequence sequence:
                foreach (var item in sequence.Items)
                    CheckInside(node, item, depth);
                break;
            case YamlMapping mapping:
                var keys = new HashSet<string>();
                foreach (var entry in mapping.Entries)
                {
                    Assert.True(keys.Add(entry.Key.Value));
                    Assert.Same(entry.Value, mapping.Find(entry.Key.Value));
                    CheckInside(node, entry.Key, depth);
                    CheckInside(node, entry.Value, depth);
                }

                break;
            default:
                break;
        }
    }

    private static void CheckInside(YamlNode outer, YamlNode inner, int depth)
    {
        Assert.True((outer.Place.Line, outer.Place.Column).CompareTo((inner.Place.Line, inner.Place.Column)) <= 0, YamlText.Places(outer));
        Assert.True((inner.EndLine, inner.EndColumn).CompareTo((outer.EndLine, outer.EndColumn)) <= 0, YamlText.Places(outer));
        CheckNode(inner, depth + 1);
    }
}
