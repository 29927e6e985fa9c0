using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning;

/// <summary>How separate networks reach an outlet.</summary>
public enum SeparationPolicy
{
    /// <summary>Each network has trunks, cassettes and panels of its own all the way.</summary>
    Own,

    /// <summary>Each network has its own trunk to a zone box, where a pair of each goes into one cable for each outlet.</summary>
    Gathered,
}

/// <summary>The words for <see cref="SeparationPolicy"/> in documents.</summary>
public static class SeparationWords
{
    public static IReadOnlyList<string> All { get; } = ["own", "gathered"];

    public static string Word(this SeparationPolicy policy) => All[(int)policy];
}

/// <summary>Which links go on to a parallel application that comes later.</summary>
public enum LaterLinks
{
    /// <summary>Every link, so that a leg lies for each from the beginning.</summary>
    All,

    /// <summary>As many as there are arrays for the pairs now.</summary>
    Arrays,
}

/// <summary>The words for <see cref="LaterLinks"/> in documents.</summary>
public static class LaterLinksWords
{
    public static IReadOnlyList<string> All { get; } = ["all", "arrays"];

    public static string Word(this LaterLinks links) => All[(int)links];
}

/// <summary>One of the separate networks that a brief asks for.</summary>
/// <param name="Network">Name, colour and key code.</param>
/// <param name="Label">The short letters that names of its parts begin with.</param>
/// <param name="Application">What its links are for now.</param>
public sealed record BriefNetwork(Network Network, string Label, Application Application)
{
    /// <summary>What its trunks have to carry later, or null.</summary>
    public Application? Later { get; init; }

    /// <summary>Which links go on to what comes later, where pairs give way to arrays.</summary>
    public LaterLinks LaterLinks { get; init; }

    /// <summary>The most switches it may have in one equipment room, or null.</summary>
    public int? Switches { get; init; }

    /// <summary>How much more than its links is ready to be patched, where that is not what the brief says of all.</summary>
    internal Percentage? Spare { get; init; }

    /// <summary>Of what has come later: the arrays that lie for so many links of a landing; null where there were no pairs before.</summary>
    internal Func<int, int>? ArraysBefore { get; init; }

    public string Name => Network.Name;
}

/// <summary>A room. One without a distance holds switches; the others are reached from one of those.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Label">The short letters of its name.</param>
/// <param name="Place">Where the brief names it.</param>
public sealed record BriefRoom(string Name, string Label, SourcePlace Place)
{
    /// <summary>The length of the cable way from the equipment room; null for an equipment room.</summary>
    public Length? Distance { get; init; }

    /// <summary>Index of the equipment room that it is reached from, itself for an equipment room.</summary>
    public int From { get; init; }

    /// <summary>Name of the first rack; null where there are no racks.</summary>
    public string? Rack { get; init; }

    /// <summary>Units of its racks that are taken already, counted from the top of the first.</summary>
    public int UnitsTaken { get; init; }

    /// <summary>The highest number that a panel of it has already.</summary>
    public int PanelsTaken { get; init; }
}

/// <summary>Outlets that are alike.</summary>
/// <param name="Name">Their names.</param>
/// <param name="Room">Index of their room.</param>
/// <param name="Links">For each network of the brief how many links each outlet has.</param>
/// <param name="Place">Where the brief names them.</param>
public sealed record BriefOutlets(PlannedName Name, int Room, IReadOnlyList<int> Links, SourcePlace Place)
{
    /// <summary>The length of the cable way from where the room's trunks end to each outlet; null where the outlet is there.</summary>
    public Length? Distance { get; init; }

    /// <summary>How the brief writes the names, those of several groups together; null where nothing is written.</summary>
    public string? Written { get; init; }

    /// <summary>Links of one outlet.</summary>
    public int LinksEach => Links.Sum();
}

/// <summary>The lengths of patch cords.</summary>
public sealed record CordLengths
{
    private static readonly Length s_short = Length.FromMillimetres(500);
    private static readonly Length s_two = Length.FromMillimetres(2_000);
    private static readonly Length s_three = Length.FromMillimetres(3_000);

    /// <summary>From a switch to its cassette or panel.</summary>
    public Length Switch { get; init; } = s_two;

    /// <summary>In a zone box.</summary>
    public Length Zone { get; init; } = s_short;

    /// <summary>From an outlet to its device.</summary>
    public Length Device { get; init; } = s_three;
}

/// <summary>What cable is longer than its way: a share of it and a length, both added.</summary>
public sealed record Slack(Percentage Share, Length Extra)
{
    /// <summary>A way with its slack.</summary>
    public long Over(long millimetres) => (long)decimal.Ceiling(millimetres * (100 + Share.Value) / 100) + Extra.Millimetres;

    public override string ToString() => Extra.Millimetres == 0 ? Share.ToString() : Share.Value == 0 ? Extra.ToString() : $"{Share} and {Extra}";
}

/// <summary>Everything that a plant is planned from: what is wanted, and what may be bought.</summary>
public sealed record Brief
{
    public required PlantTitle Title { get; init; }

    public required IReadOnlyList<BriefNetwork> Networks { get; init; }

    public required IReadOnlyList<BriefRoom> Rooms { get; init; }

    public required IReadOnlyList<BriefOutlets> Outlets { get; init; }

    public required FibreClass Fibre { get; init; }

    /// <summary>The method, or null where they are to be compared.</summary>
    public PlanMethod? Method { get; init; }

    /// <summary>Fibres in an array connector, or null where bases are to be compared.</summary>
    public int? Base { get; init; }

    public SeparationPolicy Separation { get; init; }

    /// <summary>How much more than the links now is ready to be patched.</summary>
    public Percentage Spare { get; init; }

    public Slack Slack { get; init; } = new(default, default);

    public CordLengths Cords { get; init; } = new();

    /// <summary>The lengths that cable is stocked in, ascending; empty where it is made to the metre.</summary>
    public IReadOnlyList<Length> StockLengths { get; init; } = [];

    /// <summary>The numbers of legs that trunks come with, ascending.</summary>
    public IReadOnlyList<int> TrunkLegs { get; init; } = [1, 2, 4, 6, 8, 12, 24];

    /// <summary>True when every cassette, at both ends and in the zone box, is to be of one kind.</summary>
    public bool OneCassette { get; init; }

    /// <summary>Whether array connectors are angled; null where the fibre decides.</summary>
    public bool? Angled { get; init; }

    /// <summary>The largest loss of an array mating that the maker states, or null.</summary>
    public Decibel? ArrayLoss { get; init; }

    /// <summary>The largest loss of a duplex mating that the maker states, or null.</summary>
    public Decibel? DuplexLoss { get; init; }

    /// <summary>The margin that every link keeps, or null.</summary>
    public Decibel? Margin { get; init; }

    public LimitProfile Limits { get; init; } = LimitProfile.Default;

    /// <summary>Cassettes side by side in a panel of one rack unit.</summary>
    /// <remarks>Null for as many as make 48 duplex ports.</remarks>
    public int? CassettesPerPanel { get; init; }

    /// <summary>Array adapters side by side in a panel of one rack unit.</summary>
    public int AdaptersPerPanel { get; init; } = 12;

    /// <summary>Units of a rack.</summary>
    public int RackUnits { get; init; } = 42;

    public int PortsPerSwitch { get; init; } = 48;

    /// <summary>What plans are sorted by.</summary>
    public PlanWeights Weights { get; init; } = PlanWeights.Default;

    /// <summary>The user's prices, or null.</summary>
    public PriceList? Prices { get; init; }

    /// <summary>Where the brief says a thing, by the path of its keys, such as <c>fibre</c> or <c>rooms.Stage.distance</c>.</summary>
    public IReadOnlyDictionary<string, SourcePlace> Places { get; init; } = new Dictionary<string, SourcePlace>();

    /// <summary>For segments of a plant that grows what of them is there; the others are planned as a whole.</summary>
    internal IReadOnlyDictionary<SegmentKey, SegmentRoom> Segments { get; init; } = new Dictionary<SegmentKey, SegmentRoom>();

    /// <summary>How much more than the links of a network is ready to be patched.</summary>
    internal Percentage SpareOf(int network) => Networks[network].Spare ?? Spare;

    /// <summary>Number of links asked for.</summary>
    public int LinkCount => Outlets.Sum(o => o.Name.Count * o.LinksEach);

    /// <summary>True when the array connectors are angled.</summary>
    public bool IsAngled => Angled ?? !Fibre.IsMultimode;

    /// <summary>
    /// True where trunks carry the pins and cassettes none: where parallel ports are planned now or later, so that trunks can stay
    /// when cassettes give way to panels.
    /// </summary>
    public bool TrunksArePinned { get; init; }

    /// <summary>True where a network has parallel ports now or later.</summary>
    public bool HasParallel => Networks.Any(n => n.Application.IsParallel || n.Later is { IsParallel: true });

    /// <summary>The way in millimetres that a laid cable covers.</summary>
    /// <param name="outlets">The outlets that it leads to.</param>
    /// <param name="cable">0 for the first cable of a link, 1 for that from its zone box on.</param>
    internal long WayOf(BriefOutlets outlets, int cable)
    {
        long room = Rooms[outlets.Room].Distance?.Millimetres ?? 0, outlet = outlets.Distance?.Millimetres ?? 0;
        return Separation == SeparationPolicy.Own ? room + outlet : cable == 0 ? room : outlet;
    }

    /// <summary>How many segments lie in series on the way to outlets: 2 through a zone box, else 1.</summary>
    internal int SegmentsTo(BriefOutlets outlets) => Separation == SeparationPolicy.Gathered && outlets.Distance is not null ? 2 : 1;

    /// <summary>Where the brief says something, or the nearest to it.</summary>
    public SourcePlace PlaceOf(string requirement)
    {
        for (string key = requirement; ;)
        {
            if (Places.TryGetValue(key, out SourcePlace place))
                return place;
            int dot = key.LastIndexOf('.');
            if (dot < 0)
                return Places.TryGetValue("", out SourcePlace whole) ? whole : new SourcePlace("brief", 0, 0);
            key = key[..dot];
        }
    }
}
