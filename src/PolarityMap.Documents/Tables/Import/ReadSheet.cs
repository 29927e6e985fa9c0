namespace PolarityMap.Documents.Tables.Import;

/// <summary>What the rows of a sheet tell.</summary>
public enum SheetForm
{
    /// <summary>Nothing that is known.</summary>
    Unknown,

    /// <summary>Strands hop by hop.</summary>
    Hops,

    /// <summary>A mating, or a cord between two ports, in each row.</summary>
    Matings,

    /// <summary>A part in each row.</summary>
    Parts,

    /// <summary>A link in each row.</summary>
    Links,

    /// <summary>A network in each row.</summary>
    Networks,

    /// <summary>A setting of the plant in each row.</summary>
    Settings,
}

/// <summary>A sheet with its headings understood.</summary>
public sealed class ReadSheet
{
    /// <summary>Headings stand in one of the first rows; titles may stand above them.</summary>
    private const int MostTitles = 20;

    private readonly Dictionary<string, TableColumn> _byMeaning = [];

    private ReadSheet(TableSheet sheet, SheetForm form, int headerAt, IReadOnlyList<TableColumn> columns)
    {
        Name = sheet.Name;
        Form = form;
        HeaderRow = headerAt < 0 ? 0 : sheet.Rows[headerAt].Number;
        Columns = columns;
        Rows = headerAt < 0 ? [] : [.. sheet.Rows.Skip(headerAt + 1).Where(r => !r.Cells.SequenceEqual(sheet.Rows[headerAt].Cells))];
        foreach (TableColumn column in columns)
        {
            if (column.Meaning is { } meaning)
                _byMeaning[meaning] = column;
        }
    }

    public string Name { get; }

    public SheetForm Form { get; }

    /// <summary>The number of the row with the headings, or 0 where none was found.</summary>
    public int HeaderRow { get; }

    public IReadOnlyList<TableColumn> Columns { get; }

    /// <summary>The rows below the headings, without headings that are repeated.</summary>
    public IReadOnlyList<TableRow> Rows { get; }

    /// <summary>Finds the headings of a sheet and what its rows tell.</summary>
    public static ReadSheet Of(TableSheet sheet)
    {
        for (int i = 0; i < sheet.Rows.Count && i < MostTitles; i++)
        {
            IReadOnlyList<TableColumn> columns = TableColumns.Read(sheet.Rows[i]);
            if (FormOf(columns) is var form and not SheetForm.Unknown)
                return new ReadSheet(sheet, form, i, columns);
        }

        return new ReadSheet(sheet, SheetForm.Unknown, -1, sheet.Rows.Count > 0 ? TableColumns.Read(sheet.Rows[0]) : []);
    }

    public bool Has(string meaning) => _byMeaning.ContainsKey(meaning);

    /// <summary>The text of a row under a meaning; empty where there is no such column.</summary>
    public string Text(TableRow row, string meaning) => _byMeaning.TryGetValue(meaning, out TableColumn? column) ? row[column.Index] : "";

    /// <summary>The number of a column as people count, from 1; 0 where there is no such column.</summary>
    public int ColumnOf(string meaning) => _byMeaning.TryGetValue(meaning, out TableColumn? column) ? column.Index + 1 : 0;

    /// <summary>True when the rows of this form are asked for what stands under a meaning.</summary>
    public bool Reads(string meaning) => Form switch
    {
        SheetForm.Hops => meaning is "strand" or "hop" or "part" or "kind" or "attributes" or "in" or "out" or "meets" or "keys" or "through" or "link"
            || (meaning == "type" && !Has("kind")),
        SheetForm.Settings => meaning is "setting" or "value",
        SheetForm.Networks => meaning == "network" || Binding.DocumentKeys.OfNetwork.Contains(meaning),
        SheetForm.Links => meaning == "link",
        SheetForm.Parts => meaning is "part" or "kind" or "attributes" or "link" || TableColumns.Attribute(meaning) is not null,
        SheetForm.Matings => meaning is "from" or "to" or "part" or "kind" or "cord" or "keys" or "through" or "attributes" or "link" || TableColumns.Attribute(meaning) is not null,
        _ => false,
    };

    public TableProblem Problem(TableRow row, string meaning, string reason) => new(Name, row.Number, ColumnOf(meaning), reason);

    private static SheetForm FormOf(IReadOnlyList<TableColumn> columns)
    {
        bool Has(string meaning) => columns.Any(c => c.Meaning == meaning);
        if (Has("part") && Has("in") && Has("out"))
            return SheetForm.Hops;
        if (Has("setting") && Has("value"))
            return SheetForm.Settings;
        if (Has("from") && Has("to"))
            return SheetForm.Matings;
        if (Has("part") && (Has("kind") || Has("type")))
            return SheetForm.Parts;
        if (Has("network") && (Has("colour") || Has("may-share") || Has("plain-fits")))
            return SheetForm.Networks;
        return Has("link") && columns.Count <= 3 ? SheetForm.Links : SheetForm.Unknown;
    }
}
