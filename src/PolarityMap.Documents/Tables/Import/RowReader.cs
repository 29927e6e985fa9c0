using PolarityMap.Core.Parts;
using PolarityMap.Documents.Text;

namespace PolarityMap.Documents.Tables.Import;

/// <summary>Turns the rows of sheets into the lines of a draft.</summary>
internal sealed class RowReader(Draft draft, Rejects rejects, List<TableProblem> remarks, HashSet<(string Sheet, int Row)> broken)
{
    private readonly AttributeCells _attributes = new();
    private readonly HashSet<string> _links = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _parts = new(StringComparer.Ordinal);
    private HopTable? _hops;

    /// <summary>What hop sheets say of positions, to be compared with what the plant then does.</summary>
    public IReadOnlyList<ReadHop> Hops => _hops?.Hops ?? [];

    public void Read(ReadSheet sheet)
    {
        // A cord may be named before the row that describes it.
        bool isMixed = sheet.Form == SheetForm.Matings && sheet.Has("part");
        if (isMixed)
            Read(sheet, sheet.Rows.Where(r => IsPart(sheet, r)));
        Read(sheet, isMixed ? sheet.Rows.Where(r => !IsPart(sheet, r)) : sheet.Rows);
    }

    private void Read(ReadSheet sheet, IEnumerable<TableRow> rows)
    {
        foreach (TableRow row in rows)
        {
            if (broken.Contains((sheet.Name, row.Number)))
                continue;
            if (Unfit(row) is { } column)
            {
                rejects.Add(new TableProblem(sheet.Name, row.Number, column, "the cell holds a character that no document may hold"));
                continue;
            }

            switch (sheet.Form)
            {
                case SheetForm.Hops:
                    (_hops ??= new HopTable(draft, rejects, remarks, _attributes)).Add(sheet, row);
                    Link(sheet, row);
                    break;
                case SheetForm.Settings:
                    Setting(sheet, row);
                    break;
                case SheetForm.Networks:
                    Network(sheet, row);
                    break;
                case SheetForm.Parts:
                case SheetForm.Matings when IsPart(sheet, row):
                    Part(sheet, row);
                    break;
                case SheetForm.Matings:
                    Mating(sheet, row);
                    Link(sheet, row);
                    break;
                default:
                    Link(sheet, row);
                    break;
            }
        }
    }

    /// <summary>True for a row of a mixed sheet that describes a part.</summary>
    private static bool IsPart(ReadSheet sheet, TableRow row) =>
        sheet.Text(row, "from").Length == 0 && sheet.Text(row, "to").Length == 0 && sheet.Text(row, "part").Length > 0;

    /// <summary>Writes what needed all rows to be known.</summary>
    public void Finish() => _hops?.Finish();

    /// <summary>The first column with a character that documents refuse or a line break, which no name has; or null.</summary>
    private static int? Unfit(TableRow row)
    {
        for (int i = 0; i < row.Cells.Count; i++)
        {
            if (ForbiddenCharacters.IndexIn(row.Cells[i]) >= 0)
                return i + 1;
        }

        return null;
    }

    private void Link(ReadSheet sheet, TableRow row)
    {
        string link = sheet.Text(row, "link");
        if (link.Length > 0 && _links.Add(link))
            draft.Links.Add(new DraftLine(sheet.Name, row.Number).Add("  - ").Add(Quote(link), sheet.ColumnOf("link")));
    }

    private void Setting(ReadSheet sheet, TableRow row)
    {
        string key = sheet.Text(row, "setting"), value = sheet.Text(row, "value");
        if (key.Length == 0 || value.Length == 0)
        {
            rejects.Add(sheet.Problem(row, key.Length == 0 ? "setting" : "value", "a setting has a name and a value"));
            return;
        }

        string written = Quote(value);
        if (key == Binding.DocumentKeys.Colours && value[0] == '[')
        {
            if (_attributes.Line($"{key}: {value}", 0, out string why) is not [var list])
            {
                rejects.Add(sheet.Problem(row, "value", why));
                return;
            }

            written = list.Value;
        }

        // A key that a document does not know is left to its reader, which tells the nearest one.
        string indent = Draft.IsDefault(key) ? "  " : "";
        draft.Settings.Add((key, new DraftLine(sheet.Name, row.Number).Add(indent).Add(Quote(key), sheet.ColumnOf("setting")).Add(": ").Add(written, sheet.ColumnOf("value"))));
    }

    private void Network(ReadSheet sheet, TableRow row)
    {
        string name = sheet.Text(row, "network");
        if (name.Length == 0)
        {
            rejects.Add(sheet.Problem(row, "network", "the network has no name"));
            return;
        }

        var line = new DraftLine(sheet.Name, row.Number).Add("  ").Add(Quote(name), sheet.ColumnOf("network")).Add(": {");
        string comma = " ";
        foreach (string key in Binding.DocumentKeys.OfNetwork)
        {
            string value = sheet.Text(row, key);
            if (value.Length == 0)
                continue;
            string written = key == Binding.DocumentKeys.MayShare && value != "none"
                ? $"[{string.Join(", ", value.Trim('[', ']').Split(',').Select(w => Quote(w.Trim())))}]"
                : Quote(value);
            line.Add(comma + key + ": ").Add(written, sheet.ColumnOf(key));
            comma = ", ";
        }

        draft.Network(name, line.Add(" }"));
    }

    private void Part(ReadSheet sheet, TableRow row)
    {
        string name = sheet.Text(row, "part");
        if (Link(sheet, row, name))
            return;
        bool byType = !sheet.Has("kind");
        string kind = sheet.Text(row, byType ? "type" : "kind");
        if (name.Length == 0 || kind.Length == 0)
        {
            string missing = name.Length == 0 ? "part" : byType ? "type" : "kind";
            rejects.Add(sheet.Problem(row, missing, name.Length == 0 ? "the part has no name" : $"{AttributeCells.Short(name)} does not say what kind it is"));
            return;
        }

        if (Attributes(sheet, row, byType ? "type" : "", out _) is not { } attributes)
            return;
        _parts[name] = row.Number;
        draft.NetworksOf(attributes, sheet.Name, row.Number);
        var line = new DraftLine(sheet.Name, row.Number).Add("  ").Add(Quote(name), sheet.ColumnOf("part")).Add(": ");
        draft.Parts.Add(Draft.Described(line, kind, sheet.ColumnOf(byType ? "type" : "kind"), attributes));
    }

    /// <summary>A row that tells a link and no part.</summary>
    private bool Link(ReadSheet sheet, TableRow row, string part)
    {
        if (part.Length > 0 || sheet.Text(row, "link").Length == 0)
            return false;
        Link(sheet, row);
        return true;
    }

    /// <summary>A row of two ports, with a cord, an adapter or nothing between them.</summary>
    private void Mating(ReadSheet sheet, TableRow row)
    {
        string from = sheet.Text(row, "from"), to = sheet.Text(row, "to");
        if (from.Length == 0 && to.Length == 0 && sheet.Text(row, "link").Length > 0)
            return;
        string cord = sheet.Text(row, "cord"), keys = sheet.Text(row, "keys"), through = sheet.Text(row, "through");
        foreach ((string meaning, string text) in (ReadOnlySpan<(string, string)>)[("from", from), ("to", to), ("cord", cord), ("through", through)])
        {
            if (!IsOneStop(text))
            {
                rejects.Add(sheet.Problem(row, meaning, $"'{AttributeCells.Short(text)}' is more than one port or cord; write a row for each"));
                return;
            }
        }

        if (from.Length == 0 || to.Length == 0)
        {
            rejects.Add(sheet.Problem(row, from.Length == 0 ? "from" : "to", "a row joins two ports; expected one such as K-1/3"));
            return;
        }

        if (cord.Length > 0 && (keys.Length > 0 || through.Length > 0))
        {
            string meaning = keys.Length > 0 ? "keys" : "through";
            rejects.Add(sheet.Problem(row, meaning, $"'{meaning}' is for two ports that meet; with a cord between them write a row for each end of it"));
            return;
        }

        var line = new DraftLine(sheet.Name, row.Number).Add("  - [").Add(Quote(from), sheet.ColumnOf("from"));
        if (cord.Length > 0)
        {
            if (Cord(sheet, row, cord) is not { } stop)
                return;
            line.Add(", ");
            AddStop(line, sheet, stop);
        }

        if (keys.Length > 0)
            line.Add(", ").Add(Quote(keys), sheet.ColumnOf("keys"));
        if (through.Length > 0)
            line.Add(", ").Add(Quote(through), sheet.ColumnOf("through"));
        draft.Runs.Add(line.Add(", ").Add(Quote(to), sheet.ColumnOf("to")).Add("]"));
    }

    /// <summary>A cord and its length stand in two columns and in one stop.</summary>
    private static void AddStop(DraftLine line, ReadSheet sheet, (string Cord, string Length) stop)
    {
        string whole = stop.Length.Length > 0 ? $"{stop.Cord} {stop.Length}" : stop.Cord;
        if (stop.Length.Length > 0 && Quote(whole) == whole)
            line.Add(stop.Cord, sheet.ColumnOf("cord")).Add(" ").Add(stop.Length, sheet.ColumnOf("length"));
        else
            line.Add(Quote(whole), sheet.ColumnOf("cord"));
    }

    /// <summary>A cord as a stop: a cable that a sheet describes, a type with its length, or a type of its own for more attributes.</summary>
    private (string Cord, string Length)? Cord(ReadSheet sheet, TableRow row, string cord)
    {
        bool isNamed = cord.Contains('/') || cord.Contains('[') || _parts.ContainsKey(cord);
        if (Attributes(sheet, row, "", out string length) is not { } attributes)
            return null;
        CellAttribute[] own = [.. attributes.Where(a => a.Name != "length")];
        if (isNamed)
        {
            // What a named cable is stands with the parts; a network beside it is that of the row.
            if (length.Length > 0 || own.Any(a => a.Name != "network"))
                remarks.Add(sheet.Problem(row, "cord", $"{AttributeCells.Short(cord)} is described among the parts; what this row says of it is not read"));
            return (cord, "");
        }

        draft.NetworksOf(own, sheet.Name, row.Number);
        string type = own.Length == 0 ? cord : draft.TypeOf(cord, sheet.ColumnOf("cord"), own, sheet.Name, row.Number);
        return (type, length);
    }

    /// <summary>The attributes of a row: those in columns of their own, then those of the column for all. Null after a report.</summary>
    private List<CellAttribute>? Attributes(ReadSheet sheet, TableRow row, string without, out string length)
    {
        length = "";
        var attributes = new List<CellAttribute>();
        foreach (TableColumn column in sheet.Columns)
        {
            if (column.Meaning is not { } meaning || meaning == without || (meaning == "keys" && sheet.Form == SheetForm.Matings) || TableColumns.Attribute(meaning) is not { } spec)
                continue;
            string text = row[column.Index];
            if (text.Length == 0)
                continue;
            if (AttributeCells.Column(spec, text, column.Unit, column.Index + 1, out string reason) is not { } attribute)
            {
                rejects.Add(sheet.Problem(row, meaning, reason));
                return null;
            }

            if (meaning == "length")
                length = AttributeCells.WithUnit(text, column.Unit, ["m", "cm", "mm", "km", "ft"]);
            attributes.Add(attribute);
        }

        string all = sheet.Text(row, "attributes");
        if (all.Length == 0)
            return attributes;
        if (_attributes.Line(all, sheet.ColumnOf("attributes"), out string why) is not { } line)
        {
            rejects.Add(sheet.Problem(row, "attributes", why));
            return null;
        }

        attributes.AddRange(line.Where(a => attributes.TrueForAll(o => o.Name != a.Name)));
        return attributes;
    }

    /// <summary>True when no comma outside brackets makes two stops of it.</summary>
    private static bool IsOneStop(string text)
    {
        int depth = 0;
        foreach (char c in text)
        {
            depth += c switch { '[' => 1, ']' => -1, _ => 0 };
            if (c is '\n' or '\r' || (c == ',' && depth <= 0))
                return false;
        }

        return true;
    }

    private static string Quote(string text) => AttributeWords.Quoted(text);
}
