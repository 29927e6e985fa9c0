using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Planning;

/// <summary>Binds a brief's sections.</summary>
internal sealed class BriefBinder(NodeReader reader, BriefPrices prices)
{
    private const int MostPerPanel = 96;

    private const int MostUnits = 100;

    private const int MostPortsPerSwitch = 4096;

    private const int MostLegs = 24;

    private readonly BriefFields _fields = new(reader);
    private readonly Dictionary<string, SourcePlace> _places = [];

    private ProblemList Problems => reader.Problems;

    /// <summary>The brief, or null after a report.</summary>
    public Brief? Bind(YamlMapping root)
    {
        reader.CheckKeys(root, BriefKeys.OfBrief, "a brief");
        _places[""] = root.Place;
        Note(root, "");
        PlantTitle title = Title(root);
        var lists = new BriefLists(reader, _fields, _places, Note);
        IReadOnlyList<BriefNetwork> networks = lists.Networks(root);
        IReadOnlyList<(BriefRoom Room, YamlScalar? From)> read = lists.Rooms(root);
        IReadOnlyList<BriefRoom> rooms = [.. read.Select(r => r.Room)];
        IReadOnlyList<BriefOutlets> outlets = lists.Outlets(root, networks, rooms);

        // What is not read yet may be what seems to be missing.
        if (Problems.IsEmpty)
            rooms = new BriefReach(reader, read, outlets).Rooms(root.Find(BriefKeys.Rooms)!.Place);
        if (Problems.IsEmpty)
            CheckGathered(root, rooms, outlets);
        string? fibre = Required(root, BriefKeys.Fibre, "'fibre:' with a class such as OM4") ? _fields.Word(root, BriefKeys.Fibre, FibreClass.Names) : null;
        Brief? brief = fibre is null ? null : Choices(root, new Brief
        {
            Title = title,
            Networks = networks,
            Rooms = rooms,
            Outlets = outlets,
            Fibre = FibreClass.Find(fibre)!,
            Places = _places,
        });
        return Problems.IsEmpty ? brief : null;
    }

    /// <summary>Gathered networks need a zone box: the outlets have a distance from it, and it has one from the switches.</summary>
    private void CheckGathered(YamlMapping root, IReadOnlyList<BriefRoom> rooms, IReadOnlyList<BriefOutlets> outlets)
    {
        if (root.Find(BriefKeys.Separation) is not YamlScalar { Value: "gathered" } gathered)
            return;
        const string expected = $"'{BriefKeys.Distance}:' of the outlets, the way on from the zone box, or '{BriefKeys.Separation}: own'";
        if (outlets.All(o => o.Distance is null))
            Problems.Add(gathered.Place, "no outlet has a distance, so there is no zone box to gather networks in", expected);
        else if (outlets.FirstOrDefault(o => o.Distance is not null && rooms[o.Room].Distance is null) is { } near)
            Problems.Add(gathered.Place, $"{rooms[near.Room].Name} holds switches, so that the trunks to a zone box for {near.Written} in it would have no length", $"a room with a '{BriefKeys.Distance}:' for them, or '{BriefKeys.Separation}: own'");
    }

    private PlantTitle Title(YamlMapping root)
    {
        string title = Required(root, BriefKeys.Brief, "'brief:' followed by a title") ? _fields.Text(root, BriefKeys.Brief, "a title") ?? "" : "";
        string? date = _fields.Text(root, DocumentKeys.Date, "a date such as 2026-03-01");
        if (date is not null && !DateOnly.TryParseExact(date, "yyyy-MM-dd", out _))
            Problems.Add(root.Find(DocumentKeys.Date)!.Place, $"'{PartNames.Shorten(date)}' is no date", "a date such as 2026-03-01");
        return new PlantTitle(title)
        {
            Site = _fields.Text(root, DocumentKeys.Site, "a text"),
            Number = _fields.Text(root, DocumentKeys.Number, "a text"),
            Revision = _fields.Text(root, DocumentKeys.Revision, "a text"),
            Date = date,
            Author = _fields.Text(root, DocumentKeys.Author, "a text"),
        };
    }

    private Brief Choices(YamlMapping root, Brief brief)
    {
        string? method = _fields.Word(root, BriefKeys.Method, BriefKeys.Methods);
        string? array = _fields.Word(root, BriefKeys.Base, BriefKeys.Bases);
        return brief with
        {
            Method = method is null ? null : PlanMethod.Find(method),
            Base = array is null ? null : BriefKeys.BaseOf(array),
            Separation = _fields.Word(root, BriefKeys.Separation, SeparationWords.All) == SeparationPolicy.Gathered.Word() ? SeparationPolicy.Gathered : SeparationPolicy.Own,
            OneCassette = _fields.YesNo(root, BriefKeys.OneCassette) ?? false,
            Angled = _fields.YesNo(root, BriefKeys.Angled),
            Spare = _fields.Share(root, BriefKeys.Spare) ?? brief.Spare,
            Slack = _fields.Slack(root, BriefKeys.Slack) ?? brief.Slack,
            Cords = Cords(root),
            StockLengths = _fields.Ascending(root, BriefKeys.StockLengths, "lengths such as [10 m, 25 m, 50 m]", n => _fields.LengthOf(n, "a length in stock")) ?? brief.StockLengths,
            TrunkLegs = _fields.Ascending(root, BriefKeys.TrunkLegs, "numbers such as [1, 4, 8]", n => _fields.WholeOf(n, "legs", 1, MostLegs)) ?? brief.TrunkLegs,
            ArrayLoss = _fields.Loss(root, BriefKeys.ArrayLoss),
            DuplexLoss = _fields.Loss(root, BriefKeys.DuplexLoss),
            Margin = _fields.Loss(root, BriefKeys.Margin),
            Limits = _fields.Word(root, BriefKeys.Limits, LimitProfile.Names) is { } limits ? LimitProfile.Find(limits)! : brief.Limits,
            CassettesPerPanel = _fields.Whole(root, BriefKeys.CassettesPerPanel, 1, MostPerPanel) ?? brief.CassettesPerPanel,
            AdaptersPerPanel = _fields.Whole(root, BriefKeys.AdaptersPerPanel, 1, MostPerPanel) ?? brief.AdaptersPerPanel,
            RackUnits = _fields.Whole(root, BriefKeys.RackUnits, 1, MostUnits) ?? brief.RackUnits,
            PortsPerSwitch = _fields.Whole(root, BriefKeys.PortsPerSwitch, 1, MostPortsPerSwitch) ?? brief.PortsPerSwitch,
            Weights = Weights(root),
            Prices = prices.Read(root, _fields.Text(root, BriefKeys.Currency, "a currency in your own words, such as EUR without tax")),
        };
    }

    private CordLengths Cords(YamlMapping root)
    {
        var usual = new CordLengths();
        if (root.Find(BriefKeys.Cords) is not { } node || reader.Mapping(node, BriefKeys.Cords, "lengths such as { switch: 2 m, device: 3 m }") is not { } cords)
            return usual;
        reader.CheckKeys(cords, BriefKeys.OfCords, BriefKeys.Cords);
        return new CordLengths
        {
            Switch = _fields.Length(cords, BriefKeys.Switch) ?? usual.Switch,
            Zone = _fields.Length(cords, BriefKeys.Zone) ?? usual.Zone,
            Device = _fields.Length(cords, BriefKeys.Device) ?? usual.Device,
        };
    }

    private PlanWeights Weights(YamlMapping root)
    {
        PlanWeights weights = PlanWeights.Default;
        if (root.Find(BriefKeys.Weights) is not { } node || reader.Mapping(node, BriefKeys.Weights, "numbers such as { kinds: 4, parts: 3 }") is not { } map)
            return weights;
        reader.CheckKeys(map, BriefKeys.OfWeights, BriefKeys.Weights);
        foreach (string name in BriefKeys.OfWeights)
        {
            if (_fields.Weight(map, name) is { } weight)
                weights = weights.With(name, weight);
        }

        return weights;
    }

    private bool Required(YamlMapping root, string key, string expected)
    {
        if (root.Find(key) is not null)
            return true;
        Problems.Add(root.Place, $"the brief has no '{key}:'", expected);
        return false;
    }

    /// <summary>Keeps where each key of a mapping stands, so that a refusal can name the place.</summary>
    private void Note(YamlMapping map, string path)
    {
        foreach (YamlEntry entry in map.Entries)
            _places.TryAdd(path + entry.Key.Value, entry.Key.Place);
    }
}
