using System.Text;
using CsCheck;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Schedules;
using PolarityMap.Documents.Tables;
using Xunit;

namespace PolarityMap.Documents.Tests.Tables;

public sealed class CsvTests
{
    private static readonly ScheduleColumn[] Columns = [new("text", "Text"), new("length", "Length (m)", CellKind.Metres), new("loss", "Loss (dB)", CellKind.Decibels), new("date", "Date", CellKind.Blank)];

    private static Schedule Of(params IReadOnlyList<Cell>[] rows) => new("t", "T", "For tests.", Columns, rows);

    private static string Written(Schedule schedule) => Encoding.UTF8.GetString(CsvWriter.Write(schedule));

    private static Cell Metres(long millimetres) => Cell.Of(Length.FromMillimetres(millimetres));

    // RFC 4180: CRLF ends every row, quotes around what holds a comma, quote or line break, quotes inside twice.
    [Fact]
    public void Rows_are_written_as_RFC_4180_has_it()
    {
        string csv = Written(Of([Cell.Of("a, \"b\"\nc"), Metres(2500), Cell.Of(new Decibel(-0.305m)), Cell.Empty], [Cell.Of("=1"), Metres(62_000), Cell.Empty, Cell.Empty]));
        Assert.Equal("text,length,loss,date\r\n\"a, \"\"b\"\"\nc\",2.5,-0.31,\r\n'=1,62,,\r\n", csv);
    }

    [Fact]
    public void The_file_is_UTF_8_without_a_mark() => Assert.Equal((byte)'t', CsvWriter.Write(Of([Cell.Of("ä"), Cell.Empty, Cell.Empty, Cell.Empty]))[0]);

    [Fact]
    public void Every_text_is_read_back_as_it_was() =>
        Gen.OneOf(Gen.Char["'=+-@\t\r\n,;\" abcä舞_x"].Array[1, 12].Select(c => new string(c)), Gen.String[Gen.Char.AlphaNumeric, 1, 20]).Array[1, 4].Sample(texts =>
        {
            TableSheet sheet = CsvReader.Read("t", CsvWriter.Write(Of([.. texts.Select(t => (IReadOnlyList<Cell>)[Cell.Of(t), Metres(1), Cell.Empty, Cell.Empty])])));
            Assert.Equal(texts, sheet.Rows.Skip(1).Select(r => r.Cells[0]));
        });

    [Theory]
    [InlineData("a,b\r\n1,2\r\n")]
    [InlineData("a;b\n1;2")]
    [InlineData("a\tb\r1\t2\r")]
    [InlineData("sep=;\r\na;b\r\n1;2\r\n")]
    [InlineData("\uFEFFa,b\r\n\r\n,\r\n\"1\",\"2\"\r\n")]
    [InlineData("\"a, with; two\"\tb\n1\t2\n")]
    public void Separators_line_ends_marks_and_blank_rows_make_no_difference(string text)
    {
        TableSheet sheet = CsvReader.Read("t", Encoding.UTF8.GetBytes(text));
        Assert.Equal(2, sheet.Rows.Count);
        Assert.Equal(["1", "2"], sheet.Rows[1].Cells);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Text_in_UTF_16_is_read_when_it_says_so(bool bigEndian)
    {
        var encoding = new UnicodeEncoding(bigEndian, true);
        TableSheet sheet = CsvReader.Read("t", [.. encoding.GetPreamble(), .. encoding.GetBytes("ort\tzu\r\nBühne\tK-1\r\n")]);
        Assert.Equal(["Bühne", "K-1"], sheet.Rows[1].Cells);
    }

    [Fact]
    public void Rows_are_numbered_as_spreadsheet_programs_do()
    {
        TableSheet sheet = CsvReader.Read("t", "a,b\n\"one\ntwo\",x\n\n1,2\n"u8);
        Assert.Equal([1, 2, 4], sheet.Rows.Select(r => r.Number));
    }

    [Theory]
    [InlineData("a,b\n\"open,2\n", "row 2: a quoted cell has no end")]
    [InlineData("a,b\n\"x\"y,2\n", "row 2: there is text after a closing quote")]
    public void Quotes_that_do_not_close_are_told_with_their_row(string text, string expected) =>
        Assert.StartsWith(expected, Assert.Throws<TableException>(() => CsvReader.Read("t", Encoding.UTF8.GetBytes(text))).Message, StringComparison.Ordinal);

    [Fact]
    public void Another_encoding_is_told_with_its_line() =>
        Assert.StartsWith("line 2 is not UTF-8", Assert.Throws<TableException>(() => CsvReader.Read("t", [.. "a,b\n"u8, 0xFC, .. ",2\n"u8])).Message, StringComparison.Ordinal);

    [Fact]
    public void Bytes_that_are_no_text_are_refused() =>
        Assert.Contains("NUL", Assert.Throws<TableException>(() => CsvReader.Read("t", [1, 0, 2, 0])).Message, StringComparison.Ordinal);

    [Fact]
    public void More_than_is_read_is_refused()
    {
        Assert.Contains("columns", Refused(new string(',', TableLimits.Columns)), StringComparison.Ordinal);
        Assert.Contains("rows", Refused(string.Concat(Enumerable.Repeat("a\n", TableLimits.Rows + 1))), StringComparison.Ordinal);
        Assert.Contains("characters", Refused(new string('a', TableLimits.CellLength + 1)), StringComparison.Ordinal);
        static string Refused(string text) => Assert.Throws<TableException>(() => CsvReader.Read("t", Encoding.UTF8.GetBytes(text))).Message;
    }

    [Fact]
    public void No_text_at_all_is_harmless() =>
        Gen.Byte.Array[0, 40].Sample(bytes =>
        {
            try
            {
                CsvReader.Read("t", bytes);
            }
            catch (TableException told)
            {
                Assert.NotEqual("", told.Message);
            }
        });
}
