using System.Globalization;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Schedules;
using PolarityMap.Core.Schedules.Kinds;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Observations;
using PolarityMap.Documents.Tables;
using PolarityMap.Documents.Text;

namespace PolarityMap.Documents.Planning;

/// <summary>
/// Reads a user's price list, a table in CSV or a workbook: the columns of a parts list and one more, <c>price</c>. A row without a
/// price is one that is still to be filled in.
/// </summary>
internal sealed class PriceTable(string path, ProblemList problems)
{
    /// <summary>The column of prices.</summary>
    public const string Price = "price";

    /// <summary>The most rows: far beyond what a plant is ordered from.</summary>
    private const int MostLines = 10_000;

    private const decimal MostPrice = 1_000_000_000;

    /// <summary>What a row says of the part.</summary>
    private static readonly string[] s_said = ["type", "kind", "fibres", "fibre-class", "length", "key-code", "description"];

    /// <summary>What a parts list says besides, of which nothing is made.</summary>
    private static readonly string[] s_others = ["item", "quantity", "total-length", "networks", "names"];

    /// <summary>The headings of workbooks, which are for people.</summary>
    private static readonly Dictionary<string, string> s_headings = Headings();

    private readonly NodeReader _reader = new(problems);

    /// <summary>The columns that a list may have.</summary>
    public static IReadOnlyList<string> Columns { get; } = [.. s_said, Price, .. s_others];

    /// <summary>The lines that have a price; empty after a report.</summary>
    public IReadOnlyList<PriceLine> Read(byte[] bytes)
    {
        try
        {
            return SeenTable.IsWorkbook(path, bytes) ? Workbook(bytes) : Csv(CsvReader.Decode(bytes));
        }
        catch (TableException wrong)
        {
            problems.Add(new SourcePlace(path, 0, 0), wrong.Message);
            return [];
        }
    }

    private IReadOnlyList<PriceLine> Csv(string text)
    {
        if (!ForbiddenCharacters.Check(text, path, problems))
            return [];
        var lines = new LineIndex(text, path);
        List<PlacedRow> rows = CsvReader.ReadPlaced(text, out _);
        return Lines([.. rows.Select(r => r.Row)], (row, column) => lines.PlaceAt(column < rows[row].CellStarts.Count ? rows[row].CellStarts[column] : rows[row].Start));
    }

    /// <summary>A workbook has no lines: rows and columns are told instead.</summary>
    private IReadOnlyList<PriceLine> Workbook(byte[] bytes)
    {
        IReadOnlyList<TableSheet> sheets = TableFile.Read(path, bytes, out IReadOnlyList<TableProblem> cells);
        if (sheets.FirstOrDefault(s => s.Rows.Count > 0) is not { } sheet)
            return Lines([], (_, _) => new SourcePlace(path, 0, 0));
        foreach (TableProblem cell in cells.Where(c => c.Sheet == sheet.Name))
            problems.Add(new SourcePlace(path, cell.Row, cell.Column), cell.Reason);
        return Lines(sheet.Rows, (row, column) => new SourcePlace(path, sheet.Rows[row].Number, column + 1));
    }

    private IReadOnlyList<PriceLine> Lines(IReadOnlyList<TableRow> rows, Func<int, int, SourcePlace> placeOf)
    {
        if (rows.Count == 0)
        {
            problems.Add(new SourcePlace(path, 1, 1), "the price list is empty", $"a first line such as 'type,fibres,length,{Price}'");
            return [];
        }

        if (Headings(rows[0], c => placeOf(0, c)) is not { } columns)
            return [];
        if (rows.Count > MostLines)
        {
            problems.Add(placeOf(MostLines, 0), $"there are more than {MostLines} rows; a plant is ordered from less");
            return [];
        }

        var lines = new List<PriceLine>();
        var known = new Dictionary<PriceLine, SourcePlace>();
        for (int row = 1; row < rows.Count; row++)
        {
            if (Line(rows[row], columns, c => placeOf(row, c)) is not { } line)
                continue;
            SourcePlace here = placeOf(row, 0);
            PriceLine said = line with { Price = 0 };
            if (known.TryGetValue(said, out SourcePlace first))
                problems.Add(here, $"this part has a price already, {NodeReader.Where(first, here)}", "each part once");
            else
                known[said] = here;
            lines.Add(line with { Place = here });
        }

        return problems.IsEmpty ? lines : [];
    }

    private static Dictionary<string, string> Headings()
    {
        var headings = new Dictionary<string, string> { ["price each"] = Price };
        foreach (ScheduleColumn column in new PartsList().Columns)
            headings[column.Heading.ToLowerInvariant()] = column.Key;
        return headings;
    }

    /// <summary>For each heading its column, or null after a report.</summary>
    private Dictionary<string, int>? Headings(TableRow row, Func<int, SourcePlace> placeOf)
    {
        var columns = new Dictionary<string, int>();
        int before = problems.Count;
        for (int c = 0; c < row.Cells.Count; c++)
        {
            string heading = row[c].ToLowerInvariant();
            if (heading.Length == 0)
                continue;
            heading = s_headings.GetValueOrDefault(heading, heading);
            if (!Columns.Contains(heading))
                _reader.Unknown(placeOf(c), $"there is no column '{PartNames.Shorten(row[c])}'", heading, Columns);
            else if (!columns.TryAdd(heading, c))
                problems.Add(placeOf(c), $"column '{heading}' is here a second time");
        }

        if (problems.Count == before && !columns.ContainsKey(Price))
            problems.Add(placeOf(0), $"column '{Price}' is missing", $"a first line such as 'type,fibres,length,{Price}'");
        else if (problems.Count == before && !s_said.Any(columns.ContainsKey))
            problems.Add(placeOf(0), "no column says what a price is for", NodeReader.OneOf(s_said));
        return problems.Count == before ? columns : null;
    }

    /// <summary>A row; null where it has no price yet, or after a report.</summary>
    private PriceLine? Line(TableRow row, Dictionary<string, int> columns, Func<int, SourcePlace> placeOf)
    {
        string? Text(string name) => columns.TryGetValue(name, out int c) && row[c] is { Length: > 0 } text ? text : null;
        decimal? Number(string name, string expected, decimal most, bool isWhole = false)
        {
            if (Text(name) is not { } text)
                return null;
            if (TryNumber(text, out decimal number) && number <= most && !(isWhole && number != decimal.Truncate(number)))
                return number;
            problems.Add(placeOf(columns[name]), $"'{PartNames.Shorten(text)}' is no {name}", expected);
            return null;
        }

        int before = problems.Count;
        decimal? price = Number(Price, "a number such as 41.50, without the currency", MostPrice);
        var line = new PriceLine(price ?? 0)
        {
            Type = Text("type"),
            Kind = Text("kind"),
            Fibres = (int?)Number("fibres", "a whole number of fibres", 100_000, isWhole: true),
            FibreClass = Text("fibre-class"),
            Metres = Number("length", "a number of metres such as 62", 1_000_000),
            KeyCode = Text("key-code"),
            Description = Text("description"),
        };
        if (problems.Count > before || price is null)
            return null;
        if (line.Said > 0)
            return line;
        problems.Add(placeOf(0), "the row does not say what its price is for", NodeReader.OneOf(s_said));
        return null;
    }

    /// <summary>A number with a point, or with a comma before one or two digits, as many countries write prices.</summary>
    private static bool TryNumber(string text, out decimal number)
    {
        int comma = text.IndexOf(',');
        if (comma >= 0 && !text.Contains('.') && comma == text.LastIndexOf(',') && text.Length - comma is 2 or 3)
            text = text.Replace(',', '.');
        return decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);
    }
}
