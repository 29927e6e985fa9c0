using System.Globalization;
using PolarityMap.Core.Parts;
using PolarityMap.Documents.Text;

namespace PolarityMap.Documents.Tables.Import;

/// <summary>What a row says of positions, in the names of the plant that is made.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Row">The row.</param>
/// <param name="In">Where the strand enters the part, or empty.</param>
/// <param name="Out">Where it leaves, or empty.</param>
/// <param name="Meets">What it meets there, or empty.</param>
internal readonly record struct ReadHop(ReadSheet Sheet, TableRow Row, string In, string Out, string Meets);

/// <summary>A port as an address names it.</summary>
internal readonly record struct NamedPort(string Part, string Port, string Position)
{
    public override string ToString() => Position.Length > 0 ? $"{Part}/{Port}:{Position}" : $"{Part}/{Port}";
}

/// <summary>
/// Collects the rows of a connection schedule: parts from what they say of themselves, matings from what each row meets or, where
/// there is no such column, from the row of the next hop.
/// </summary>
internal sealed class HopTable(Draft draft, Rejects rejects, List<TableProblem> remarks, AttributeCells attributes)
{
    /// <summary>Two names with their ports, and a port behind them: no address is longer, and each stroke in one is a place to try.</summary>
    private const int LongestAddress = 1_000;

    private readonly Dictionary<string, HopPart> _parts = new(StringComparer.Ordinal);
    private readonly List<HopPart> _inOrder = [];
    private readonly List<(ReadSheet Sheet, TableRow Row)> _rows = [];
    private readonly List<ReadHop> _hopsAsRead = [];
    private readonly HashSet<string> _free = new(StringComparer.Ordinal);

    /// <summary>The rows with addresses, for comparing.</summary>
    public List<ReadHop> Hops { get; } = [];

    /// <summary>Takes a row: first only its part.</summary>
    public void Add(ReadSheet sheet, TableRow row)
    {
        string name = sheet.Text(row, "part");
        if (name.Length == 0)
        {
            if (sheet.Text(row, "link").Length == 0)
                rejects.Add(sheet.Problem(row, "part", "the row names no part"));
            return;
        }

        _rows.Add((sheet, row));
        string kind = sheet.Text(row, "kind"), all = sheet.Text(row, "attributes");
        string kindMeaning = kind.Length > 0 ? "kind" : "type";
        if (kind.Length == 0)
            kind = sheet.Text(row, "type");
        if (!_parts.TryGetValue(name, out HopPart? part))
        {
            _parts[name] = part = new HopPart(name, sheet, row);
            _inOrder.Add(part);
        }

        if (kind.Length == 0)
            return;
        if (part.Kind is null)
            (part.Kind, part.Attributes, part.Sheet, part.Row, part.KindMeaning) = (kind, all, sheet, row, kindMeaning);
        else if (part.Kind != kind || part.Attributes != all)
            rejects.Add(sheet.Problem(row, part.Kind != kind ? kindMeaning : "attributes", $"{AttributeCells.Short(name)} is described otherwise in row {part.Row!.Number}"));
    }

    /// <summary>Writes parts and matings when all rows are known.</summary>
    public void Finish()
    {
        foreach (HopPart part in _inOrder.Where(p => p.Kind is null))
            rejects.Add(part.First.Problem(part.FirstRow, part.First.Has("kind") ? "kind" : "type", $"no row says what kind {AttributeCells.Short(part.Name)} is"));

        List<HopJoint> joints = Joints();
        var inline = new InlineCords(draft, joints);
        foreach (HopPart part in _inOrder)
        {
            if (part.Kind is not null && Described(part) is { } described && (Names.IsValid(part.Name, out _) || !inline.Take(part, described)))
                Declare(part, described);
        }

        foreach (HopJoint joint in joints)
        {
            if (!joint.IsWritten)
                Run(joint);
        }

        foreach (ReadHop hop in _hopsAsRead)
            Hops.Add(hop with { In = Renamed(hop.In), Out = Renamed(hop.Out), Meets = Renamed(hop.Meets) });
    }

    private void Declare(HopPart part, IReadOnlyList<CellAttribute> described)
    {
        if (!Names.IsValid(part.Name, out _))
        {
            part.WrittenName = Free(part.Name);
            if (part.WrittenName.Length == 0)
            {
                rejects.Add(part.Sheet!.Problem(part.Row!, "part", $"'{AttributeCells.Short(part.Name)}' is no name for a part; expected {Names.Rule}"));
                return;
            }

            remarks.Add(part.Sheet!.Problem(part.Row!, "part", $"'{AttributeCells.Short(part.Name)}' is no name for a part and is called {part.WrittenName}"));
        }

        var line = new DraftLine(part.Sheet!.Name, part.Row!.Number).Add("  ").Add(AttributeWords.Quoted(part.WrittenName), part.Sheet.ColumnOf("part")).Add(": ");
        draft.Parts.Add(Draft.Described(line, part.Kind!, part.Sheet.ColumnOf(part.KindMeaning), described));
    }

    /// <summary>A name without the strokes and colons that a cord has from its ends; empty where that is none either.</summary>
    private string Free(string name)
    {
        string plain = name.Replace('/', '.').Replace(':', '.');
        string free = plain;
        for (int n = 2; _parts.ContainsKey(free) || !_free.Add(free); n++)
            free = $"{plain}#{n}";
        return Names.IsValid(free, out _) ? free : "";
    }

    private IReadOnlyList<CellAttribute>? Described(HopPart part)
    {
        if (attributes.Line(part.Attributes, part.Sheet!.ColumnOf("attributes"), out string why) is not { } described)
        {
            rejects.Add(part.Sheet.Problem(part.Row!, "attributes", why));
            return null;
        }

        draft.NetworksOf(described, part.Sheet.Name, part.Row!.Number);
        return described;
    }

    private List<HopJoint> Joints()
    {
        var joints = new List<HopJoint>();
        var seen = new HashSet<(string, string, string)>();
        var next = new Dictionary<(string, string, int), (ReadSheet Sheet, TableRow Row)>();
        foreach ((ReadSheet sheet, TableRow row) in _rows)
        {
            if (!sheet.Has("meets") && Hop(sheet, row) is { } hop)
                next.TryAdd((sheet.Name, sheet.Text(row, "strand"), hop), (sheet, row));
        }

        foreach ((ReadSheet sheet, TableRow row) in _rows)
        {
            string meets = sheet.Text(row, "meets"), meaning = "meets";
            if (!sheet.Has("meets") && Hop(sheet, row) is { } hop && next.TryGetValue((sheet.Name, sheet.Text(row, "strand"), hop + 1), out var after))
                (meets, meaning) = (after.Sheet.Text(after.Row, "in"), "out");
            string enters = sheet.Text(row, "in"), leaves = sheet.Text(row, "out"), through = sheet.Text(row, "through");
            _hopsAsRead.Add(new ReadHop(sheet, row, enters, leaves, meets));
            if (leaves.Length == 0 || (meets.Length == 0 && through.Length == 0))
                continue;
            if (Port(leaves) is not { } a)
            {
                rejects.Add(sheet.Problem(row, "out", Unknown(leaves)));
                continue;
            }

            NamedPort? b = meets.Length > 0 ? Port(meets) : null;
            if (meets.Length > 0 && b is null)
            {
                rejects.Add(sheet.Problem(row, meaning, Unknown(meets)));
                continue;
            }

            if (through.Length > 0 && Port(through) is null)
            {
                rejects.Add(sheet.Problem(row, "through", Unknown(through)));
                continue;
            }

            // Only a simplex plug in a wider port needs the position; else the whole ports meet.
            bool simplex = b is { } there && (a.Position.Length == 0) != (there.Position.Length == 0) && b.Value.Port.Length > 0 && IsPosition(a, there);
            NamedPort from = simplex ? a : a with { Position = "" };
            NamedPort? to = simplex ? b : b is { } other ? other with { Position = "" } : null;
            string first = from.ToString(), second = to?.ToString() ?? "";
            (string, string, string) key = string.CompareOrdinal(first, second) <= 0 ? (first, second, through) : (second, first, through);
            if (seen.Add(key))
                joints.Add(new HopJoint(sheet, row, from, to, sheet.Text(row, "keys"), through.Length > 0 ? Port(through) : null));
        }

        return joints;
    }

    /// <summary>True when one of the two names a position of a duplex port: only there goes a simplex plug.</summary>
    private static bool IsPosition(NamedPort a, NamedPort b) => (a.Position.Length > 0 ? a.Position : b.Position) is "A" or "B" or "a" or "b";

    private static int? Hop(ReadSheet sheet, TableRow row) =>
        int.TryParse(sheet.Text(row, "hop"), NumberStyles.None, CultureInfo.InvariantCulture, out int hop) && hop < int.MaxValue ? hop : null;

    private static string Unknown(string address) => $"'{AttributeCells.Short(address)}' is no port of a part that a row describes; expected an address such as K-1/3 or K-1/rear:7";

    /// <summary>The part, port and position of an address. A cord that has its name from its ends has strokes in it.</summary>
    private NamedPort? Port(string address)
    {
        if (address.Length > LongestAddress)
            return null;
        for (int stroke = address.LastIndexOf('/'); stroke > 0; stroke = address.LastIndexOf('/', stroke - 1))
        {
            if (!_parts.TryGetValue(address[..stroke], out HopPart? part))
                continue;
            string rest = address[(stroke + 1)..];
            int colon = rest.IndexOf(':');
            return colon < 0 ? new NamedPort(part.Name, rest, "") : new NamedPort(part.Name, rest[..colon], rest[(colon + 1)..]);
        }

        return null;
    }

    private string Renamed(string address) => Port(address) is { } port ? (port with { Part = _parts[port.Part].WrittenName }).ToString() : "";

    private void Run(HopJoint joint)
    {
        string Stop(NamedPort port) => AttributeWords.Quoted((port with { Part = _parts[port.Part].WrittenName }).ToString());
        ReadSheet sheet = joint.Sheet;
        var stops = new List<(string Text, string Meaning)>();
        if (!joint.Plugged.Contains(joint.From.Part))
            stops.Add((Stop(joint.From), "out"));
        if (joint.Keys.Length > 0 && stops.Count > 0)
            stops.Add((AttributeWords.Quoted(joint.Keys), "keys"));
        if (joint.Through is { } through)
            stops.Add((Stop(through), "through"));
        if (joint.Keys.Length > 0 && stops.Count == 1)
            stops.Add((AttributeWords.Quoted(joint.Keys), "keys"));
        if (joint.To is { } to && !joint.Plugged.Contains(to.Part))
            stops.Add((Stop(to), "meets"));

        // What is left of an adapter whose plugs the runs of cords have brought is no run of its own.
        if (stops.TrueForAll(s => s.Meaning is "through" or "keys"))
            return;
        if (stops[^1].Meaning == "keys")
            stops.RemoveAt(stops.Count - 1);
        var line = new DraftLine(sheet.Name, joint.Row.Number).Add("  - [");
        for (int i = 0; i < stops.Count; i++)
            line.Add(i > 0 ? ", " : "").Add(stops[i].Text, sheet.ColumnOf(stops[i].Meaning));
        draft.Runs.Add(line.Add("]"));
    }
}

/// <summary>A part as rows describe it.</summary>
internal sealed class HopPart(string name, ReadSheet first, TableRow firstRow)
{
    public string Name { get; } = name;

    /// <summary>The sheet and row that name it first.</summary>
    public ReadSheet First { get; } = first;

    public TableRow FirstRow { get; } = firstRow;

    /// <summary>Its name in the document.</summary>
    public string WrittenName { get; set; } = name;

    public string? Kind { get; set; }

    public string KindMeaning { get; set; } = "kind";

    public string Attributes { get; set; } = "";

    public ReadSheet? Sheet { get; set; }

    public TableRow? Row { get; set; }
}

/// <summary>Two ports that rows say to meet, or a plug alone in an adapter.</summary>
internal sealed class HopJoint(ReadSheet sheet, TableRow row, NamedPort from, NamedPort? to, string keys, NamedPort? through)
{
    public ReadSheet Sheet { get; } = sheet;

    public TableRow Row { get; } = row;

    public NamedPort From { get; } = from;

    public NamedPort? To { get; } = to;

    public string Keys { get; } = keys;

    public NamedPort? Through { get; } = through;

    /// <summary>True when the run of a cord holds it.</summary>
    public bool IsWritten { get; set; }

    /// <summary>The cords whose runs have brought their plugs to the adapter.</summary>
    public HashSet<string> Plugged { get; } = [];
}
