using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Planning;

/// <summary>Collects a planned plant: types once each, families by name, sections in order, and what stands in the way.</summary>
internal sealed class PlanDraft
{
    private readonly Dictionary<string, PlannedType> _types = [];
    private readonly HashSet<string> _typeNames = [];
    private readonly List<PlannedType> _inOrder = [];
    private readonly List<PlannedSection> _sections = [];
    private readonly List<Refusal> _refusals = [];
    private readonly Dictionary<int, RackBook> _racks = [];

    public PlanDraft(Brief brief, PlanCandidate candidate)
    {
        Brief = brief;
        Candidate = candidate;
        Defaults = new PartDefaults { Fibre = brief.Fibre, TrunksArePinned = brief.TrunksArePinned || brief.HasParallel };
    }

    public Brief Brief { get; }

    public PlanCandidate Candidate { get; }

    public PartDefaults Defaults { get; }

    public IReadOnlyList<PlannedType> Types => _inOrder;

    public IReadOnlyList<PlannedSection> Sections => _sections;

    public IReadOnlyList<Refusal> Refusals => _refusals;

    public PlannedSection Section(string heading)
    {
        var section = new PlannedSection(heading);
        _sections.Add(section);
        return section;
    }

    /// <summary>The type with this content, under the name that it was first asked for by.</summary>
    public PlannedType Type(string name, string of, Action<AttributeValues> set)
    {
        var type = new PlannedType(name, of, set, Defaults);
        if (_types.TryGetValue(type.Content, out PlannedType? known))
            return known;
        if (!type.IsWritten)
        {
            type.Name = of;
        }
        else
        {
            type.Name = Free(name);
        }

        _types.Add(type.Content, type);
        _inOrder.Add(type);
        return type;
    }

    /// <summary>Gives a type another name, unless that is taken.</summary>
    public void Rename(PlannedType type, string name)
    {
        if (type.Name == name || !IsFree(name))
            return;
        _typeNames.Remove(type.Name);
        _typeNames.Add(name);
        type.Name = name;
    }

    /// <summary>A family whose parts are all described by one line.</summary>
    public static PlannedFamily Family(PlannedSection section, PlannedPart line)
    {
        PlannedFamily family = Family(section, line.Name);
        family.Add(line);
        return family;
    }

    /// <summary>A family whose lines follow.</summary>
    public static PlannedFamily Family(PlannedSection section, PlannedName name)
    {
        var family = new PlannedFamily(name);
        section.FamilyList.Add(family);
        return family;
    }

    public RackBook Racks(int room)
    {
        if (!_racks.TryGetValue(room, out RackBook? book))
            _racks[room] = book = new RackBook(Brief.Rooms[room], Brief.RackUnits, Candidate.Base);
        return book;
    }

    public void Refuse(Refusal refusal)
    {
        if (!_refusals.Any(r => r.Requirement == refusal.Requirement && r.Reason == refusal.Reason))
            _refusals.Add(refusal);
    }

    /// <summary>The cable to buy for a way: with slack, rounded up to stock or to the metre.</summary>
    public Length Cable(Length way, string requirement)
    {
        if (CableOf(Brief, way.Millimetres) is { } cable)
            return cable;
        long needed = Brief.Slack.Over(way.Millimetres);
        Length whole = WholeMetres(needed), longest = Brief.StockLengths[^1];
        Refuse(new Refusal(requirement, RefusalCode.Stock, $"the way of {way} needs {Length.FromMillimetres(Math.Min(needed, Length.MaxMillimetres))} of cable with its slack, and the longest in stock is {longest}") { Needed = whole });
        return whole;
    }

    /// <summary>The cable to buy for a way in millimetres; null where none in stock is long enough.</summary>
    public static Length? CableOf(Brief brief, long way)
    {
        long needed = brief.Slack.Over(way);
        if (brief.StockLengths.Count == 0)
            return WholeMetres(needed);
        foreach (Length stock in brief.StockLengths)
        {
            if (stock.Millimetres >= needed)
                return stock;
        }

        return null;
    }

    /// <summary>Millimetres up to the metre.</summary>
    public static Length WholeMetres(long millimetres)
    {
        const long metre = 1_000;
        return Length.FromMillimetres(Math.Min(Length.MaxMillimetres, (millimetres + metre - 1) / metre * metre));
    }

    private string Free(string name)
    {
        string free = name;
        for (int n = 2; !IsFree(free); n++)
            free = $"{name} {n}";
        _typeNames.Add(free);
        return free;
    }

    private bool IsFree(string name) => !_typeNames.Contains(name) && PartKinds.Find(name) is null && Catalogue.Find(name) is null;
}
