using System.Runtime.CompilerServices;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Budget;

/// <summary>
/// The budgets of every strand that is lit between two interfaces, and of every link: the one record that rules, reports and
/// the table read. Reckoned when first asked for, in one pass over the strands.
/// </summary>
public sealed class BudgetTable
{
    private static readonly ConditionalWeakTable<TracedPlant, BudgetTable> s_tables = [];

    private readonly Lock _lock = new();
    private readonly StrandReckoner _reckoner;
    private readonly Dictionary<int, int> _indexOf = [];
    private StrandBudget[]? _strands;
    private LinkBudget[]? _links;
    private bool? _hasApplications;

    private BudgetTable(TracedPlant traced, LimitProfile limits)
    {
        Traced = traced;
        Limits = limits;
        _reckoner = new StrandReckoner(traced, limits);
    }

    public TracedPlant Traced { get; }

    /// <summary>The limits that the figures are reckoned and judged by.</summary>
    public LimitProfile Limits { get; }

    /// <summary>True when any interface says what it is for; where none does there is nothing to judge.</summary>
    public bool HasApplications => _hasApplications ??= AnyApplication();

    /// <summary>The strands that are lit between two interfaces, in their order; one that carries light both ways stands twice.</summary>
    public IReadOnlyList<StrandBudget> Strands
    {
        get
        {
            Reckon();
            return _strands!;
        }
    }

    /// <summary>
    /// The links that have a lit strand, in the order of the document, then pairs of ports that light joins without a link. A
    /// link's strand that comes out at a wrong port is still the link's.
    /// </summary>
    public IReadOnlyList<LinkBudget> Links
    {
        get
        {
            Reckon();
            return _links!;
        }
    }

    /// <summary>The table of a plant by its own limits. There is one, however often it is asked for.</summary>
    public static BudgetTable Of(TracedPlant traced) => s_tables.GetValue(traced, static t => new BudgetTable(t, t.Plant.Practice.Limits));

    /// <summary>The table of a plant by other limits than its own.</summary>
    public static BudgetTable Of(TracedPlant traced, LimitProfile limits) =>
        limits == traced.Plant.Practice.Limits ? Of(traced) : new BudgetTable(traced, limits);

    /// <summary>The budget of a declared link, or null when nothing lights it from end to end.</summary>
    public LinkBudget? OfLink(int link)
    {
        Reckon();
        return _indexOf.TryGetValue(link, out int i) ? _links![i] : null;
    }

    /// <summary>
    /// The limit for a light-source test of the strand's fixed part. Null where the strand is two cords and nothing between
    /// them, or where a length or the fibre in it is not known.
    /// </summary>
    public AcceptanceLimit? Acceptance(StrandBudget budget)
    {
        lock (_lock)
            return _reckoner.Acceptance(budget);
    }

    /// <summary>What a light-source test may read over a way, by what is stated of its parts; null where it passes none.</summary>
    /// <param name="way">The positions where light enters and leaves part after part: in, out, in, out, ….</param>
    public WayLimit? Way(ReadOnlySpan<int> way)
    {
        lock (_lock)
            return _reckoner.Way(way);
    }

    /// <summary>How many of a strand's matings fit into its limit beside its fibre and splices, the best ones counted first.</summary>
    public int MatingsThatFit(StrandBudget budget)
    {
        lock (_lock)
            return _reckoner.MatingsThatFit(budget);
    }

    private bool AnyApplication()
    {
        foreach (Part part in Traced.Plant.Parts)
        {
            if (part.Shape.IsInterface && part.Shape.Ports.Any(p => p.Application is not null))
                return true;
        }

        return false;
    }

    private void Reckon()
    {
        lock (_lock)
        {
            if (_links is not null)
                return;
            var strands = new List<StrandBudget>();
            for (int strand = 0; strand < Traced.Strands.OpenCount; strand++)
                AddStrand(strand, strands);
            _strands = [.. strands];
            _links = Group(strands);
        }
    }

    /// <summary>A strand has a budget for each direction in which one end sends and the other hears.</summary>
    private void AddStrand(int strand, List<StrandBudget> strands)
    {
        ReadOnlySpan<int> positions = Traced.Strands[strand];
        int first = positions[0], last = positions[^1];
        if (positions.Length < 2 || Traced.Graph.LaneAt(first) is not { } one || Traced.Graph.LaneAt(last) is not { } other)
            return;
        if (one.Direction != LaneDirection.Receive && Meets(one.Direction, other.Direction))
            strands.Add(_reckoner.Reckon(strand, first, last));
        if (other.Direction != LaneDirection.Receive && Meets(other.Direction, one.Direction))
            strands.Add(_reckoner.Reckon(strand, last, first));
    }

    private static bool Meets(LaneDirection sends, LaneDirection hears) =>
        sends == LaneDirection.Both ? hears == LaneDirection.Both : hears == LaneDirection.Receive;

    private LinkBudget[] Group(List<StrandBudget> strands)
    {
        var links = new LinkIndex(Traced.Plant.Links);
        var declared = new List<StrandBudget>?[Traced.Plant.Links.Count];
        var pairs = new Dictionary<(PortRef, PortRef), List<StrandBudget>>();
        var order = new List<(PortRef From, PortRef To)>();
        foreach (StrandBudget strand in strands)
        {
            // Both directions of a two-way strand are told from the same end.
            ReadOnlySpan<int> positions = Traced.Strands[strand.Strand];
            LinkEnd from = EndAt(positions[0]);
            LinkEnd to = EndAt(positions[^1]);
            if (links.Find(from, to) is >= 0 and int link)
            {
                (declared[link] ??= []).Add(strand);
                continue;
            }

            (PortRef, PortRef) key = (from.Port, to.Port);
            if (!pairs.TryGetValue(key, out List<StrandBudget>? pair) && !pairs.TryGetValue((to.Port, from.Port), out pair))
            {
                pairs[key] = pair = [];
                order.Add(key);
            }

            pair.Add(strand);
        }

        var budgets = new List<LinkBudget>();
        for (int i = 0; i < declared.Length; i++)
        {
            if (declared[i] is not { } lit)
                continue;
            _indexOf[i] = budgets.Count;
            budgets.Add(new LinkBudget(i, Traced.Plant.Links[i].From, Traced.Plant.Links[i].To, Ordered(lit)));
        }

        foreach ((PortRef from, PortRef to) in order)
            budgets.Add(new LinkBudget(-1, new LinkEnd(from, 0), new LinkEnd(to, 0), Ordered(pairs[(from, to)])));
        return [.. budgets];
    }

    private static StrandBudget[] Ordered(List<StrandBudget> strands) => [.. strands.Order(Comparer<StrandBudget>.Create(LinkBudget.WorstFirst))];

    private LinkEnd EndAt(int position)
    {
        PortRef port = Traced.Graph.PlaceOf(position).Port;
        return new LinkEnd(port, Traced.Graph.LaneAt(position)!.Value.Group);
    }
}
