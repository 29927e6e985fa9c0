using System.Text;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Text;

public class TextLoaderTests
{
    private static (bool Good, string Text, string Problems) Load(byte[] bytes)
    {
        var problems = new ProblemList();
        var good = TextLoader.TryDecode(bytes, "p", problems, out var text);
        Assert.Equal(good, problems.IsEmpty);
        return (good, text, problems.ToString());
    }

    private static string Refused(byte[] bytes)
    {
        var (good, text, problems) = Load(bytes);
        Assert.False(good);
        Assert.Equal("", text);
        return problems;
    }

    [Fact]
    public void Text_with_all_line_breaks_tabs_and_other_scripts_stays_as_it_is()
    {
        const string Source = "a: b\r\nc:\td\ré: 光 𝄞\n";

        Assert.Equal((true, Source, ""), Load(Encoding.UTF8.GetBytes(Source)));
    }

    [Fact]
    public void A_byte_order_mark_is_dropped() => Assert.Equal((true, "a: b", ""), Load([0xEF, 0xBB, 0xBF, .. "a: b"u8]));

    [Fact]
    public void An_empty_file_is_empty_text() => Assert.Equal((true, "", ""), Load([]));

    // The marks are those of the Unicode standard's table of byte order marks (from memory).
    [Theory]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x61, 0x00 }, "UTF-16")]
    [InlineData(new byte[] { 0xFE, 0xFF, 0x00, 0x61 }, "UTF-16")]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x00, 0x00, 0x61, 0x00, 0x00, 0x00 }, "UTF-32")]
    [InlineData(new byte[] { 0x00, 0x00, 0xFE, 0xFF, 0x00, 0x00, 0x00, 0x61 }, "UTF-32")]
    public void Other_encodings_are_named_and_refused(byte[] bytes, string encoding) =>
        Assert.Equal($"p:1:1: the file is {encoding}; save the file as UTF-8\n", Refused(bytes));

    // Ill-formed by the Unicode standard's table of well-formed UTF-8 (from memory): a Latin-1 letter, a lone
    // continuation, an overlong slash, a surrogate, a code point past U+10FFFF, a sequence cut off by the end.
    [Theory]
    [InlineData(new byte[] { 0xE4, 0x20 }, "E4")]
    [InlineData(new byte[] { 0x80 }, "80")]
    [InlineData(new byte[] { 0xC0, 0xAF }, "C0")]
    [InlineData(new byte[] { 0xED, 0xA0, 0x80 }, "ED")]
    [InlineData(new byte[] { 0xF5, 0x80, 0x80, 0x80 }, "F5")]
    [InlineData(new byte[] { 0xE2, 0x82 }, "E2")]
    public void The_first_byte_that_is_not_UTF8_is_shown_with_its_place(byte[] bad, string code) =>
        Assert.Equal(
            $"p:3:4: byte 0x{code} is not UTF-8 here; save the file as UTF-8\n",
            Refused([.. "a: b\r\nc\n"u8, .. "é: "u8, .. bad]));

    [Fact]
    public void The_mark_at_the_start_takes_no_column_from_a_bad_byte() =>
        Assert.Equal("p:1:2: byte 0xFF is not UTF-8 here; save the file as UTF-8\n", Refused([0xEF, 0xBB, 0xBF, 0x61, 0xFF]));

    [Theory]
    [InlineData("\u0001", "there is a control character (U+0001) here; delete it")]
    [InlineData("\u001B", "there is a control character (U+001B) here; delete it")]
    [InlineData("\u007F", "there is a control character (U+007F) here; delete it")]
    [InlineData("\u0085", "there is a control character (U+0085) here; delete it")]
    [InlineData("\u009F", "there is a control character (U+009F) here; delete it")]
    [InlineData("\0", "there is a NUL character (U+0000) here; delete it, or if the file is UTF-16 save the file as UTF-8")]
    [InlineData("\u2028", "there is a line separator (U+2028) here; use an ordinary line break")]
    [InlineData("\uFEFF", "there is a byte order mark (U+FEFF) inside the text; delete it")]
    public void Control_characters_are_refused_with_their_place(string character, string message) =>
        Assert.Equal($"p:2:4: {message}\n", Refused(Encoding.UTF8.GetBytes("a: b\nc: " + character)));

    // The nine override, embedding and isolate characters of the Unicode bidirectional algorithm (from memory).
    [Theory]
    [InlineData('\u202A')]
    [InlineData('\u202B')]
    [InlineData('\u202C')]
    [InlineData('\u202D')]
    [InlineData('\u202E')]
    [InlineData('\u2066')]
    [InlineData('\u2067')]
    [InlineData('\u2068')]
    [InlineData('\u2069')]
    public void Characters_that_turn_the_direction_of_text_are_refused(char character) =>
        Assert.Equal(
            $"p:1:6: U+{(int)character:X4} changes the direction in which text is shown and can make a name read as another; delete it\n",
            Refused(Encoding.UTF8.GetBytes("a: SW" + character + "1")));

    [Fact]
    public void Several_control_characters_are_reported_in_one_go() =>
        Assert.Equal(
            "p:1:1: there is a control character (U+0007) here; delete it\np:2:2: there is a control character (U+0008) here; delete it\n",
            Refused("\u0007\r\nx\u0008"u8.ToArray()));

    [Fact]
    public void A_file_of_NULs_reports_only_the_first_ones()
    {
        var problems = new ProblemList();

        Assert.False(TextLoader.TryDecode(new byte[1_000_000], "p", problems, out _));
        Assert.Equal(10, problems.Count);
    }

    [Fact]
    public void A_file_is_read_up_to_the_size_limit_and_refused_beyond()
    {
        var bytes = new byte[16_777_217];
        Array.Fill(bytes, (byte)'a');

        Assert.Equal(
            "p:1:1: the file has 16777217 bytes, more than the 16777216 that are read; split it into several files\n",
            Refused(bytes));
        Assert.True(Load(bytes[1..]).Good);
    }
}
