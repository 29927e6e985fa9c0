using System.Text;
using PolarityMap.Documents.Editing;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Editing;

/// <summary>Entries written into documents of every form; the expected texts were written by hand.</summary>
public class OverlayEditorTests
{
    private static readonly OverlayEntry[] s_cord = [new PartEntry("C-7", [("type", "A-to-B")], "remedy: another cord")];
    private static readonly OverlayEntry[] s_swap = [new ListEntry("exchanged", "K-1/1 and K-1/2", null)];

    private static string Edit(string text, params OverlayEntry[] entries)
    {
        var problems = new ProblemList();
        byte[]? edited = OverlayEditor.Apply(Encoding.UTF8.GetBytes(text), "p.yaml", entries, problems);
        Assert.Equal("", problems.ToString());
        return Encoding.UTF8.GetString(edited!);
    }

    private static string Refusal(string text, params OverlayEntry[] entries)
    {
        var problems = new ProblemList();
        Assert.Null(OverlayEditor.Apply(Encoding.UTF8.GetBytes(text), "p.yaml", entries, problems));
        return problems.ToString();
    }

    [Fact]
    public void A_document_without_a_section_gets_one_at_its_end() => Assert.Equal(
        "plant: P # mine\nparts: { A: duplex interface }\n\nas-built:\n  parts:\n    # remedy: another cord\n    C-7: { type: A-to-B }\n  exchanged:\n    - K-1/1 and K-1/2\n",
        Edit("plant: P # mine\nparts: { A: duplex interface }\n", [.. s_swap, .. s_cord]));

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void Lines_end_as_those_of_the_document_do_also_without_one_at_the_end(string end)
    {
        string document = $"plant: P{end}parts:{end}  A: duplex interface";
        string section = $"as-built:{end}  exchanged:{end}    - K-1/1 and K-1/2";
        Assert.Equal($"{document}{end}{end}{section}", Edit(document, s_swap));
        Assert.Equal($"{document}{end}{end}{section}{end}", Edit(document + end, s_swap));
    }

    [Fact]
    public void A_byte_order_mark_stays_and_none_comes()
    {
        byte[] text = Encoding.UTF8.GetBytes("plant: P\n");
        Assert.Equal([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes("plant: P\n\nas-built:\n  exchanged:\n    - K-1/1 and K-1/2\n")], OverlayEditor.Apply([0xEF, 0xBB, 0xBF, .. text], "p.yaml", s_swap, new ProblemList())!);
        Assert.Equal((byte)'p', OverlayEditor.Apply(text, "p.yaml", s_swap, new ProblemList())![0]);
    }

    [Fact]
    public void A_list_that_is_there_gets_lines_with_its_own_indentation() => Assert.Equal(
        "as-built:\n    exchanged:\n          - A/1 and A/2   # seen on Monday\n          - K-1/1 and K-1/2\n\n# The end.\n",
        Edit("as-built:\n    exchanged:\n          - A/1 and A/2   # seen on Monday\n\n# The end.\n", s_swap));

    [Fact]
    public void A_list_without_indentation_keeps_it() => Assert.Equal(
        "as-built:\n  exchanged:\n  - A/1 and A/2\n  - K-1/1 and K-1/2\n  moved:\n  - A/3 to A/4\n",
        Edit("as-built:\n  exchanged:\n  - A/1 and A/2\n  moved:\n  - A/3 to A/4\n", s_swap));

    [Fact]
    public void A_list_that_is_not_there_comes_after_the_others() => Assert.Equal(
        "as-built:\n   moved:\n     - A/3 to A/4\n   parts:\n     # remedy: another cord\n     C-7: { type: A-to-B }\n   exchanged:\n     - K-1/1 and K-1/2\nplant: P\n",
        Edit("as-built:\n   moved:\n     - A/3 to A/4\nplant: P\n", [.. s_cord, .. s_swap]));

    [Theory]
    [InlineData("as-built:\n", "as-built:\n  exchanged:\n    - K-1/1 and K-1/2\n")]
    [InlineData("as-built: # nothing yet\nplant: P\n", "as-built: # nothing yet\n  exchanged:\n    - K-1/1 and K-1/2\nplant: P\n")]
    [InlineData("as-built:\n  exchanged:\n", "as-built:\n  exchanged:\n    - K-1/1 and K-1/2\n")]
    public void A_section_or_list_with_nothing_in_it_is_filled(string text, string edited) => Assert.Equal(edited, Edit(text, s_swap));

    [Theory]
    [InlineData("{ type: A-to-A }", "{ type: A-to-B }")]
    [InlineData("{type: A-to-A, length: 2 m}  # old", "{type: A-to-B, length: 2 m}  # old")]
    [InlineData("{ type: 'A-to-A' }", "{ type: A-to-B }")]
    [InlineData("{ length: 2 m }", "{ length: 2 m, type: A-to-B }")]
    [InlineData("{ length: 2 m, }", "{ length: 2 m, type: A-to-B, }")]
    [InlineData("{}", "{ type: A-to-B }")]
    [InlineData("{ length: 2 m,\n      jacket: red } # two lines", "{ length: 2 m,\n      jacket: red, type: A-to-B } # two lines")]
    [InlineData("\n      type: A-to-A   # from the wrong drawer\n      length: 2 m", "\n      type: A-to-B   # from the wrong drawer\n      length: 2 m")]
    [InlineData("\n      length: 2 m   # measured", "\n      length: 2 m   # measured\n      type: A-to-B")]
    public void A_part_that_has_an_entry_has_its_attribute_changed_in_it(string before, string after) => Assert.Equal(
        $"as-built:\n  parts:\n    C-6: {{ type: A-to-A }}\n    C-7: {after}\n    C-8: {{ type: A-to-A }}\n",
        Edit($"as-built:\n  parts:\n    C-6: {{ type: A-to-A }}\n    C-7: {before}\n    C-8: {{ type: A-to-A }}\n", s_cord));

    [Fact]
    public void A_list_of_legs_is_replaced_as_a_whole() => Assert.Equal(
        "as-built:\n  parts:\n    T: { spare: [2, 3, 5], length: 3 m }\n",
        Edit("as-built:\n  parts:\n    T: { spare: [2, 3], length: 3 m }\n", new PartEntry("T", [("spare", "[2, 3, 5]")], null)));

    [Fact]
    public void A_part_without_an_entry_gets_one_after_the_others() => Assert.Equal(
        "as-built:\n  parts:\n    C-[1..7]: { type: A-to-A }\n    # remedy: another cord\n    C-7: { type: A-to-B }\n  moved: []\n",
        Edit("as-built:\n  parts:\n    C-[1..7]: { type: A-to-A }\n  moved: []\n", s_cord));

    [Fact]
    public void Names_that_would_mean_something_else_are_quoted() => Assert.Equal(
        "plant: P\n\nas-built:\n  parts:\n    \"null\": { jacket: \"red: dark\" }\n    S/1:B~S/2:B: { type: A-to-B }\n",
        Edit("plant: P\n", new PartEntry("null", [("jacket", "\"red: dark\"")], null), new PartEntry("S/1:B~S/2:B", [("type", "A-to-B")], null)));

    [Fact]
    public void A_text_on_lines_of_its_own_at_the_end_does_not_grow_by_an_empty_line() => Assert.Equal(
        "plant: P\nparts:\n  A:\n    kind: duplex interface\n    note: |+\n      Kept\nas-built:\n  exchanged:\n    - K-1/1 and K-1/2\n",
        Edit("plant: P\nparts:\n  A:\n    kind: duplex interface\n    note: |+\n      Kept\n", s_swap));

    [Theory]
    [InlineData("{ plant: P, parts: { A: duplex interface } }\n", "p.yaml:1:1: the document is written in braces as a whole")]
    [InlineData("plant: P\nas-built: { moved: [] }\n", "p.yaml:2:11: the as-built section is written in braces")]
    [InlineData("as-built:\n  exchanged: [A/1 and A/2]\n", "p.yaml:2:14: the list 'exchanged' is written in brackets")]
    [InlineData("as-built: yes\n", "p.yaml:1:11: there is a text where entries were expected")]
    [InlineData("as-built: !!map\n  moved: []\n", "p.yaml:1:11: there is a tag here")]
    public void What_cannot_be_edited_line_by_line_is_refused_with_its_place(string text, string problem) =>
        Assert.Equal(problem + ", which is not changed without a hand; expected lines of its own for each entry, or the entry put in by hand\n", Refusal(text, s_swap));

    [Theory]
    [InlineData("as-built:\n  parts: { C-7: { type: A-to-A } }\n", "p.yaml:2:10: the list 'parts' is written in brackets")]
    [InlineData("as-built:\n  parts:\n    C-7: A-to-B cord\n", "p.yaml:3:10: the entry of C-7 holds no attributes")]
    [InlineData("as-built:\n  parts:\n    C-7:\n      type: >\n        A-to-A\n", "p.yaml:4:13: this value stands on several lines or has a tag")]
    [InlineData("as-built:\n  parts:\n    C-7: { type: }\n", "p.yaml:3:18: there is no value here")]
    [InlineData("as-built:\n  parts:\n    C-7:\n      note: |\n        Long\n", "p.yaml:4:7: what stands here ends in a text on lines of its own")]
    public void An_entry_of_a_part_that_cannot_be_edited_is_refused_with_its_place(string text, string problem) =>
        Assert.StartsWith(problem, Refusal(text, s_cord), StringComparison.Ordinal);

    [Theory]
    [InlineData("plant: &a P\n", "p.yaml:1:8: anchors such as '&a' are not read")]
    [InlineData("- plant\n", "p.yaml:1:1: this is no mapping")]
    [InlineData("plant: [\n", "p.yaml:1:8:")]
    public void What_is_no_plant_document_is_refused(string text, string problem) => Assert.StartsWith(problem, Refusal(text, s_swap), StringComparison.Ordinal);

    [Fact]
    public void Every_line_of_the_author_is_still_there_byte_for_byte()
    {
        foreach (string path in Directory.EnumerateFiles(Path.Combine(Repository.Root, "gallery"), "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            string text = File.ReadAllText(path);
            string edited = Edit(text, [.. s_swap, new PartEntry("NEW", [("type", "A-to-B")], null)]);
            var before = new Queue<string>(text.Split('\n'));
            foreach (string line in edited.Split('\n'))
            {
                if (before.Count > 0 && before.Peek() == line)
                    before.Dequeue();
            }

            Assert.True(before.All(l => l.Length == 0), path);
        }
    }
}
