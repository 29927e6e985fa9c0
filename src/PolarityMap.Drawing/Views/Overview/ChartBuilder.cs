using System.Runtime.InteropServices;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>
/// Folds like parts into boxes and like cables into lines. Time is linear in the positions of the chosen strands: parts are told
/// apart by their words once, strands only by numbers.
/// </summary>
internal sealed class ChartBuilder
{
    private const int None = -1;

    private readonly ViewInput _input;
    private readonly Plant _plant;
    private readonly Stops _stops;
    private readonly bool _byName;
    private readonly bool _hasNetworks;
    private readonly Chart _chart = new();
    private readonly StopNetworks _networks;

    private readonly Dictionary<Likeness, int> _kinds = [];
    private readonly int[] _kindOf;
    private readonly int[] _columnOf;
    private readonly BoxGroup?[] _boxOf;
    private readonly Dictionary<(int Node, int Column), BoxGroup> _boxAgain = [];
    private readonly Dictionary<(BoxSort Sort, int Kind, int Column), BoxGroup> _boxes = [];

    private readonly Dictionary<(BoxGroup From, BoxGroup To, int Kind), LineGroup> _lines = [];
    private readonly (LineGroup Line, CableUse Use)[] _useOf;
    private readonly Dictionary<(int Cable, LineGroup Line), CableUse> _usesAgain = [];
    private readonly (BoxGroup First, BoxGroup Last)[] _ends;
    private readonly Dictionary<BoxGroup, HashSet<int>> _networksOfBox = [];
    private readonly Dictionary<LineGroup, HashSet<int>> _networksOfLine = [];

    private ChartBuilder(ViewInput input, Stops stops, int[] ranks, bool byName)
    {
        _input = input;
        _plant = input.Traced.Plant;
        _stops = stops;
        _byName = byName;
        _hasNetworks = _plant.Networks.Count > 0;
        _columnOf = ranks;
        _networks = StopNetworks.Of(input.Traced, stops);
        _kindOf = new int[stops.PartCount];
        Array.Fill(_kindOf, -1);
        _boxOf = new BoxGroup?[stops.NodeCount];
        _useOf = new (LineGroup, CableUse)[stops.PartCount];
        _ends = new (BoxGroup, BoxGroup)[stops.Starts.Count - 1];
    }

    /// <summary>The chart of the chosen strands.</summary>
    /// <param name="input">What was chosen.</param>
    /// <param name="stops">Their ways.</param>
    /// <param name="ranks">The column of each node.</param>
    /// <param name="byName">True when parts whose names differ in more than numbers are boxes of their own.</param>
    public static Chart Make(ViewInput input, Stops stops, int[] ranks, bool byName)
    {
        var builder = new ChartBuilder(input, stops, ranks, byName);
        for (int s = 0; s + 1 < stops.Starts.Count; s++)
            builder.AddStrand(s);
        builder.Finish();
        return builder._chart;
    }

    private void AddStrand(int strand)
    {
        int start = _stops.Starts[strand];
        int end = _stops.Starts[strand + 1];
        BoxGroup? before = null;
        int column = -1;
        for (int i = start; i < end; i++)
        {
            int node = _stops.Nodes[i];
            column = Math.Max(_columnOf[node], column + 1);
            BoxGroup box = BoxAt(node, column);
            box.Strands++;
            box.Ends += (i == start ? 1 : 0) + (i == end - 1 ? 1 : 0);
            if (_hasNetworks && box.Networks.Count == 0)
                _networks.AddTo(SetOf(_networksOfBox, box), strand);
            if (before is not null)
                AddPassage(strand, before, box, _stops.Cables[i], _stops.Legs[i]);
            _ends[strand] = (i == start ? box : _ends[strand].First, box);
            before = box;
        }
    }

    private BoxGroup BoxAt(int node, int column)
    {
        if (_boxOf[node] is { } box && box.Column == column)
            return box;
        if (_boxOf[node] is not null && _boxAgain.TryGetValue((node, column), out BoxGroup? again))
            return again;
        (BoxSort sort, int part) = node < _stops.PartCount ? (BoxSort.Part, node) : _stops.Extras[node - _stops.PartCount];
        if (!_boxes.TryGetValue((sort, KindOf(part), column), out box))
        {
            _boxes[(sort, KindOf(part), column)] = box = new BoxGroup(sort, column) { Networks = Stated(_plant.Parts[part]) };
            while (_chart.Columns.Count <= column)
                _chart.Columns.Add([]);
            _chart.Columns[column].Add(box);
        }

        box.Parts.Add(part);
        if (_boxOf[node] is null)
        {
            _boxOf[node] = box;
            _chart.PartCount += sort == BoxSort.Part ? 1 : 0;
        }
        else
        {
            _boxAgain[(node, column)] = box;
            box.IsAgain = true;
        }

        return box;
    }

    private void AddPassage(int strand, BoxGroup from, BoxGroup to, int cable, int leg)
    {
        LineGroup line;
        CableUse? use = null;
        if (cable >= 0 && _useOf[cable] is { Line: { } known } && known.From == from && known.To == to)
        {
            (line, use) = _useOf[cable];
        }
        else
        {
            int kind = cable < 0 ? -1 : KindOf(cable);
            if (!_lines.TryGetValue((from, to, kind), out LineGroup? found))
            {
                _lines[(from, to, kind)] = found = new LineGroup(from, to) { Networks = cable < 0 ? [] : Stated(_plant.Parts[cable]) };
                _chart.Lines.Add(found);
            }

            line = found;
            if (cable >= 0)
                use = UseOf(cable, line);
        }

        line.Strands++;
        if (_hasNetworks && line.Networks.Count == 0)
            _networks.AddTo(SetOf(_networksOfLine, line), strand);
        if (use is null)
            return;
        use.Fibres++;
        if (leg > 0)
            use.Legs |= 1UL << (leg - 1);
    }

    private CableUse UseOf(int cable, LineGroup line)
    {
        bool isNew = _useOf[cable].Line is null;
        if (!isNew && _usesAgain.TryGetValue((cable, line), out CableUse? use))
            return use;
        use = new CableUse(cable);
        line.Cables.Add(use);
        if (!isNew)
        {
            _usesAgain[(cable, line)] = use;
        }
        else
        {
            _chart.CableCount++;
            line.NewCables++;
            line.NewMillimetres += _plant.Parts[cable].Length?.Millimetres ?? 0;
            line.NewWithoutLength += _plant.Parts[cable].Length is null ? 1 : 0;
            _useOf[cable] = (line, use);
        }

        return use;
    }

    private int KindOf(int part)
    {
        if (_kindOf[part] >= 0)
            return _kindOf[part];
        Part p = _plant.Parts[part];
        bool isBox = !Chart.IsLine(p.Shape);
        bool stated = p.Network >= 0 || p.PortNetworks.Count > 0;
        ref int kind = ref CollectionsMarshal.GetValueRefOrAddDefault(_kinds, new Likeness(p, stated ? None : _networks.OfPart(part), isBox, isBox && _byName), out bool known);
        if (!known)
            kind = _kinds.Count - 1;
        return _kindOf[part] = kind;
    }

    /// <summary>The networks that a part states, in rising order; none when those of its strands decide.</summary>
    private static IReadOnlyList<int> Stated(Part part)
    {
        if (part.PortNetworks.Count == 0)
            return part.Network >= 0 ? [part.Network] : [];
        var all = new SortedSet<int>(part.PortNetworks);
        all.Remove(None);
        return [.. all];
    }

    private static HashSet<int> SetOf<T>(Dictionary<T, HashSet<int>> sets, T key)
        where T : notnull
    {
        ref HashSet<int>? set = ref CollectionsMarshal.GetValueRefOrAddDefault(sets, key, out _);
        return set ??= [];
    }

    private void Finish()
    {
        foreach ((BoxGroup box, HashSet<int> networks) in _networksOfBox)
            box.Networks = Sorted(networks);
        foreach ((LineGroup line, HashSet<int> networks) in _networksOfLine)
            line.Networks = Sorted(networks);

        // Columns that hold nothing, as behind a circle, are left out.
        _chart.Columns.RemoveAll(c => c.Count == 0);
        for (int c = 0; c < _chart.Columns.Count; c++)
        {
            foreach (BoxGroup box in _chart.Columns[c])
                box.Column = c;
        }

        _chart.StrandCount = _stops.Starts.Count - 1;
        for (int s = 0; s < _chart.StrandCount; s++)
            _networks.Count(s, _chart.StrandsOfNetwork);
        TallyFaults();
    }

    private static int[] Sorted(HashSet<int> set)
    {
        int[] sorted = [.. set];
        Array.Sort(sorted);
        return sorted;
    }

    /// <summary>Gives every box the ends of faulty strands that lie in it.</summary>
    private void TallyFaults()
    {
        if (_input.Findings.Count == 0)
            return;
        IReadOnlyList<int> strands = _input.Selection.Strands;
        var index = new Dictionary<int, int>(strands.Count);
        for (int i = 0; i < strands.Count; i++)
            index[strands[i]] = i;
        var isError = new Dictionary<int, bool>();
        foreach (Finding finding in _input.Findings)
        {
            bool error = finding.Rule.Severity == Severity.Error;
            foreach (int strand in finding.Strands)
            {
                if (!index.TryGetValue(strand, out int s))
                    continue;
                isError[s] = error || isError.GetValueOrDefault(s);
                Faults(_ends[s].First).Add(error, finding.Rule.Code);
                Faults(_ends[s].Last).Add(error, finding.Rule.Code);
            }
        }

        foreach ((int s, bool error) in isError)
        {
            FaultTally first = Faults(_ends[s].First);
            FaultTally last = Faults(_ends[s].Last);
            Count(first, error);
            if (last != first)
                Count(last, error);
        }

        static void Count(FaultTally tally, bool error)
        {
            tally.Errors += error ? 1 : 0;
            tally.Warnings += error ? 0 : 1;
        }
    }

    private static FaultTally Faults(BoxGroup box) => box.Faults ??= new FaultTally();
}
