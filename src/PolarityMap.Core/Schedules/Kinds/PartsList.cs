using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Schedules.Kinds;

/// <summary>The parts to order, alike ones together. Alike is what a document describes alike, wherever it stands.</summary>
public sealed class PartsList : ScheduleKind
{
    private const int MostNames = 4;

    public override string Name => "parts";

    public override string Title => "Parts list";

    public override string Purpose => "For whoever orders: every part with its quantity, alike parts together.";

    public override IReadOnlyList<ScheduleColumn> Columns { get; } =
    [
        new("item", "Item", CellKind.Whole),
        new("quantity", "Quantity", CellKind.Whole),
        new("type", "Type"),
        new("kind", "Kind"),
        new("fibres", "Fibres", CellKind.Whole),
        new("fibre-class", "Fibre class"),
        new("length", "Length each (m)", CellKind.Metres),
        new("total-length", "Length together (m)", CellKind.Metres),
        new("key-code", "Key code"),
        new("description", "Description"),
        new("networks", "Networks"),
        new("names", "Names"),
    ];

    protected override IEnumerable<IReadOnlyList<Cell>> Rows(ScheduleInput input)
    {
        Plant plant = input.Plant;
        var items = new Dictionary<Alike, Item>();
        var inOrder = new List<Item>();

        // Parts made of one description share it.
        var descriptions = new Dictionary<AttributeValues, string>(ReferenceEqualityComparer.Instance);
        for (int i = 0; i < plant.Parts.Count; i++)
        {
            Part part = plant.Parts[i];
            string described = "";
            if (part.Values is { } values && !descriptions.TryGetValue(values, out described!))
                descriptions[values] = described = Described(part, values);
            var alike = new Alike(
                part.Kind, PartFacts.Type(part), part.Length?.Millimetres ?? -1, part.Fibre?.Name, KeyCode(plant, i),
                described);
            if (!items.TryGetValue(alike, out Item? item))
                inOrder.Add(items[alike] = item = new Item(part, alike));
            item.Count++;
            item.AddNetworks(plant, part);
            if (part.IsInline)
                item.Unnamed++;
            else if (item.Names.Count < MostNames)
                item.Names.Add(part.Name);
        }

        int number = 0;
        foreach (Item item in inOrder.OrderBy(static i => KindOrder(i.Part.Kind)))
            yield return Row(++number, item);
    }

    private static IReadOnlyList<Cell> Row(int number, Item item)
    {
        int fibres = PartFacts.Fibres(item.Part);
        return
        [
            Cell.Of(number), Cell.Of(item.Count), Cell.Of(item.Alike.Type), Cell.Of(item.Part.Kind),
            fibres > 0 ? Cell.Of(fibres) : Cell.Empty, Cell.Of(fibres > 0 ? item.Part.Fibre?.Name : null), Cell.Of(item.Part.Length),
            item.Part.Length is { } l ? Cell.OfMetres(l.Millimetres * item.Count / 1000m) : Cell.Empty,
            Cell.Of(item.Alike.KeyCode), Cell.Of(item.Alike.Attributes), Cell.Of(string.Join(", ", item.Networks)), Cell.Of(Names(item)),
        ];
    }

    /// <summary>What has a column of its own, or says where a part is and not what it is.</summary>
    private static bool IsElsewhere(string attribute) => attribute is "length" or "network" or "networks" or "room" or "note" or "fibre" or "key" or "spare";

    /// <summary>What a document says of a part, and base, pins and end face of its array connectors where it leaves them out: an order has to say them.</summary>
    private static string Described(Part part, AttributeValues values)
    {
        if (PartKinds.Find(part.Kind) is not { } kind)
            return "";
        var said = AttributeWords.Of(kind, values, part.Shape).Where(a => !IsElsewhere(a.Name)).ToList();
        PortShape[] arrays = [.. part.Shape.Ports.Where(p => p is { Base: > 0, IsAdapter: false })];
        void Add(string attribute, string? word)
        {
            if (word is not null && !said.Exists(a => a.Name == attribute))
                said.Add((attribute, word));
        }

        bool AreAlike<T>(Func<PortShape, T> of) => arrays.Length > 0 && arrays.All(p => Equals(of(p), of(arrays[0])));
        Add("base", !part.Shape.IsInterface && AreAlike(p => p.Base) ? arrays[0].Base.ToString(System.Globalization.CultureInfo.InvariantCulture) : null);
        Add("pins", arrays.Length > 0 && part.Shape.IsCable ? PinnedEnds(arrays) : AreAlike(p => p.Pinned) && arrays[0].Pinned is { } pinned ? pinned ? "pinned" : "unpinned" : null);
        Add("polish", AreAlike(p => p.Polish) ? arrays[0].Polish?.Word() : null);

        // What is said and what goes without saying in one order, so that parts that are alike are told alike.
        string[] order = [.. kind.AllAttributes.Select(a => a.Name)];
        return string.Join(", ", said.OrderBy(a => Array.IndexOf(order, a.Name) is >= 0 and int at ? at : order.Length).Select(a => $"{a.Name}: {a.Value}"));
    }

    private static string PinnedEnds(PortShape[] arrays) => (arrays.Any(p => p is { Side: Side.Near, Pinned: true }), arrays.Any(p => p is { Side: Side.Far, Pinned: true })) switch
    {
        (true, true) => "both",
        (true, false) => "near",
        (false, true) => "far",
        _ => "none",
    };

    private static string Names(Item item)
    {
        string names = string.Join(", ", item.Names);
        int more = item.Count - item.Unnamed - item.Names.Count;
        return more > 0 ? $"{names} and {more} more" : names;
    }

    private static int KindOrder(string kind)
    {
        for (int i = 0; i < PartKinds.All.Count; i++)
        {
            if (PartKinds.All[i].Name == kind)
                return i;
        }

        return PartKinds.All.Count;
    }

    /// <summary>The codes of its keyed connectors; empty for plain ones.</summary>
    private static string KeyCode(Plant plant, int index)
    {
        var codes = new List<string>();
        for (int p = 0; p < plant.Parts[index].Shape.Ports.Count; p++)
        {
            if (plant.KeyOf(new PortRef(index, p)) is { } code && !codes.Contains(code))
                codes.Add(code);
        }

        return string.Join(", ", codes);
    }

    private readonly record struct Alike(string Kind, string Type, long Length, string? Fibre, string KeyCode, string Attributes);

    private sealed class Item(Part part, Alike alike)
    {
        public Part Part { get; } = part;

        public Alike Alike { get; } = alike;

        public int Count { get; set; }

        public int Unnamed { get; set; }

        public List<string> Names { get; } = [];

        public List<string> Networks { get; } = [];

        public void AddNetworks(Plant plant, Part part)
        {
            foreach (int network in part.PortNetworks.Count > 0 ? part.PortNetworks : [part.Network])
            {
                if (network >= 0 && !Networks.Contains(plant.Networks[network].Name))
                    Networks.Add(plant.Networks[network].Name);
            }
        }
    }
}
