using System.Text;
using PolarityMap.Core.Parts;

namespace PolarityMap.Documents.Tables.Import;

/// <summary>Where a line of the draft comes from.</summary>
internal sealed record Origin(string Sheet, int Row, int Column);

/// <summary>A line of the document to be, with the column of the table behind each piece of it.</summary>
internal sealed class DraftLine(string sheet, int row)
{
    private readonly StringBuilder _text = new();
    private readonly List<(int Start, int Column)> _pieces = [];

    public bool IsDropped { get; set; }

    public string Sheet => sheet;

    public int Row => row;

    /// <summary>Adds a piece that stands in a column of the table, counted from 1; 0 for none.</summary>
    public DraftLine Add(string text, int column = 0)
    {
        if (column > 0)
            _pieces.Add((_text.Length + 1, column));
        _text.Append(text);
        return this;
    }

    /// <summary>The table's column behind a column of the line, both counted from 1.</summary>
    public int ColumnAt(int column)
    {
        int found = 0;
        foreach ((int start, int of) in _pieces)
        {
            if (start <= column)
                found = of;
        }

        return found > 0 || _pieces.Count == 0 ? found : _pieces[0].Column;
    }

    public override string ToString() => _text.ToString();
}

/// <summary>The document that a table becomes, line by line.</summary>
internal sealed class Draft
{
    private readonly Dictionary<string, DraftLine> _networks = new(StringComparer.Ordinal);
    private readonly List<string> _networkOrder = [];
    private readonly Dictionary<string, string> _types = new(StringComparer.Ordinal);
    private readonly List<DraftLine> _typeLines = [];

    /// <summary>Title-block texts and defaults in the order of the table.</summary>
    public List<(string Key, DraftLine Line)> Settings { get; } = [];

    public List<DraftLine> Parts { get; } = [];

    public List<DraftLine> Runs { get; } = [];

    public List<DraftLine> Links { get; } = [];

    /// <summary>Declares a network with its attributes, or leaves it as it is when it was declared with some.</summary>
    public void Network(string name, DraftLine line)
    {
        if (_networks.TryAdd(name, line))
            _networkOrder.Add(name);
    }

    /// <summary>Declares the networks that attributes name.</summary>
    public void NetworksOf(IEnumerable<CellAttribute> attributes, string sheet, int row)
    {
        foreach (CellAttribute attribute in attributes)
        {
            if (attribute.Name is not ("network" or "networks"))
                continue;
            foreach (string name in attribute.Words)
            {
                if (!_networks.ContainsKey(name))
                    Network(name, new DraftLine(sheet, row).Add($"  {AttributeWords.Quoted(name)}:", attribute.Column));
            }
        }
    }

    /// <summary>The name of a type for cords without a name; cords that are alike share one.</summary>
    public string TypeOf(string kind, int kindColumn, IReadOnlyList<CellAttribute> attributes, string sheet, int row)
    {
        string key = $"{kind}\n{string.Join('\n', attributes.Select(a => $"{a.Name}: {a.Value}"))}";
        if (_types.TryGetValue(key, out string? name))
            return name;
        name = $"cord type {_types.Count + 1}";
        _types[key] = name;
        _typeLines.Add(Described(new DraftLine(sheet, row).Add($"  {name}: "), kind, kindColumn, attributes));
        return name;
    }

    /// <summary>Ends a line with a description between braces.</summary>
    public static DraftLine Described(DraftLine line, string kind, int kindColumn, IReadOnlyList<CellAttribute> attributes)
    {
        line.Add("{ kind: ").Add(AttributeWords.Quoted(kind), kindColumn);
        foreach (CellAttribute attribute in attributes)
            line.Add(", ").Add($"{AttributeWords.Quoted(attribute.Name)}: {attribute.Value}", attribute.Column);
        return line.Add(" }");
    }

    /// <summary>The document, and for each of its lines, counted from 1, what it was made from.</summary>
    public (string Text, IReadOnlyList<DraftLine?> Lines) Write(string title)
    {
        var text = new StringBuilder();
        var lines = new List<DraftLine?> { null };
        void Fixed(string line)
        {
            text.Append(line).Append('\n');
            lines.Add(null);
        }

        void Section(string? name, IEnumerable<DraftLine> content)
        {
            bool first = name is not null;
            foreach (DraftLine line in content)
            {
                if (line.IsDropped)
                    continue;
                if (first)
                    Fixed(name!);
                first = false;
                text.Append(line).Append('\n');
                lines.Add(line);
            }
        }

        if (!Settings.Any(s => s.Key == "plant" && !s.Line.IsDropped))
            Fixed($"plant: {AttributeWords.Quoted(title)}");
        Section(null, Settings.Where(s => !IsDefault(s.Key)).Select(s => s.Line));
        Section("networks:", _networkOrder.Select(n => _networks[n]));
        Section("defaults:", Settings.Where(s => IsDefault(s.Key)).Select(s => s.Line));
        Section("types:", _typeLines);
        Section("parts:", Parts);
        Section("runs:", Runs);
        Section("links:", Links);
        return (text.ToString(), lines);
    }

    /// <summary>True for what stands under <c>defaults</c>.</summary>
    public static bool IsDefault(string key) => Binding.DocumentKeys.OfDefaults.Contains(key);
}
