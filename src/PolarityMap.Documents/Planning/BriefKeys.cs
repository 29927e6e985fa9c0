using PolarityMap.Core.Planning;
using PolarityMap.Documents.Binding;

namespace PolarityMap.Documents.Planning;

/// <summary>The keys of a brief and of its sections, each written once.</summary>
public static class BriefKeys
{
    public const string Brief = "brief";
    public const string Networks = DocumentKeys.Networks;
    public const string Rooms = "rooms";
    public const string Outlets = "outlets";
    public const string Application = "application";
    public const string Later = "later";
    public const string LaterLinks = "later-links";
    public const string Fibre = DocumentKeys.Fibre;
    public const string Method = "method";
    public const string Base = "base";
    public const string Separation = "separation";
    public const string Spare = "spare";
    public const string Slack = "slack";
    public const string Cords = "cords";
    public const string StockLengths = "stock-lengths";
    public const string TrunkLegs = "trunk-legs";
    public const string OneCassette = "one-cassette";
    public const string Angled = "angled";
    public const string ArrayLoss = "array-loss";
    public const string DuplexLoss = "duplex-loss";
    public const string Margin = DocumentKeys.Margin;
    public const string Limits = DocumentKeys.Limits;
    public const string CassettesPerPanel = "cassettes-per-panel";
    public const string AdaptersPerPanel = "adapters-per-panel";
    public const string RackUnits = "rack-units";
    public const string PortsPerSwitch = "ports-per-switch";
    public const string Weights = "weights";
    public const string Prices = "prices";
    public const string Currency = "currency";

    public const string Label = "label";
    public const string Switches = "switches";
    public const string Distance = "distance";
    public const string From = "from";
    public const string Rack = "rack";
    public const string Room = "room";
    public const string Links = DocumentKeys.Links;
    public const string Switch = "switch";
    public const string Zone = "zone";
    public const string Device = "device";

    /// <summary>The word that leaves the method or the base open.</summary>
    public const string Compare = "compare";

    /// <summary>Title-block texts that go on into the plant, without the title.</summary>
    public static readonly IReadOnlyList<string> Titles = [DocumentKeys.Site, DocumentKeys.Number, DocumentKeys.Revision, DocumentKeys.Date, DocumentKeys.Author];

    /// <summary>Every key of a brief, in the order in which one would write them.</summary>
    public static readonly IReadOnlyList<string> OfBrief =
    [
        Brief, .. Titles, Networks, Rooms, Outlets, Application, Later, LaterLinks, Fibre, Method, Base, Separation, OneCassette, Angled, Spare, Slack, Cords,
        StockLengths, TrunkLegs, ArrayLoss, DuplexLoss, Margin, Limits, CassettesPerPanel, AdaptersPerPanel, RackUnits, PortsPerSwitch,
        Weights, Prices, Currency,
    ];

    public static readonly IReadOnlyList<string> OfNetwork = [Label, Application, Later, LaterLinks, Switches, DocumentKeys.Colour, DocumentKeys.Key, DocumentKeys.PlainFits];

    public static readonly IReadOnlyList<string> OfRoom = [Label, Distance, From, Rack];

    public static readonly IReadOnlyList<string> OfOutlets = [Room, Distance, Links];

    public static readonly IReadOnlyList<string> OfCords = [Switch, Zone, Device];

    public static IReadOnlyList<string> OfWeights => PlanWeights.Names;

    /// <summary>The words for a method.</summary>
    public static readonly IReadOnlyList<string> Methods = [.. PlanMethod.Names, Compare];

    /// <summary>The words for a base.</summary>
    public static readonly IReadOnlyList<string> Bases = [.. PlanCandidate.Bases.Select(b => b.ToString(System.Globalization.CultureInfo.InvariantCulture)), Compare];

    /// <summary>The base of a word that has been checked, or null for <see cref="Compare"/>.</summary>
    public static int? BaseOf(string word) => word == Compare ? null : int.Parse(word, System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The applications by name.</summary>
    public static IReadOnlyList<string> Applications => PolarityMap.Core.Optics.Application.Names;
}
