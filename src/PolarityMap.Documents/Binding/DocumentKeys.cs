namespace PolarityMap.Documents.Binding;

/// <summary>The keys of a document's top level and of its fixed sections, each written once.</summary>
public static class DocumentKeys
{
    public const string Plant = "plant";
    public const string Site = "site";
    public const string Revision = "revision";
    public const string Date = "date";
    public const string Author = "author";
    public const string Number = "number";
    public const string Networks = "networks";
    public const string Defaults = "defaults";
    public const string Include = "include";
    public const string Catalogue = "catalogue";
    public const string Types = "types";
    public const string Parts = "parts";
    public const string Runs = "runs";
    public const string Links = "links";
    public const string Design = "design";
    public const string AsBuilt = "as-built";

    /// <summary>The key that names a part's kind or type.</summary>
    public const string Kind = "kind";

    public const string Colour = "colour";
    public const string Key = "key";
    public const string PlainFits = "plain-fits";
    public const string MayShare = "may-share";

    public const string Fibre = "fibre";
    public const string Pins = "pins";
    public const string Limits = "limits";
    public const string Colours = "colours";
    public const string Margin = "margin";
    public const string GroupIndex = "group-index";

    public const string Exchanged = "exchanged";
    public const string Moved = "moved";
    public const string Unplugged = "unplugged";
    public const string Plugged = "plugged";

    /// <summary>The title-block texts, with what each is.</summary>
    public static readonly IReadOnlyList<(string Key, string Meaning)> Titles =
    [
        (Plant, "The plant's title."),
        (Site, "Where the plant is."),
        (Revision, "Revision index for the title block."),
        (Date, "Date of issue, such as 2026-03-01."),
        (Author, "Who made the document."),
        (Number, "Identification number for the title block."),
    ];

    /// <summary>Every key of a plant document.</summary>
    public static readonly IReadOnlyList<string> OfPlant = [.. Titles.Select(t => t.Key), Networks, Defaults, Include, Types, Parts, Runs, Links, AsBuilt];

    /// <summary>Every key of a network.</summary>
    public static readonly IReadOnlyList<string> OfNetwork = [Colour, Key, PlainFits, MayShare];

    /// <summary>Every key of the defaults.</summary>
    public static readonly IReadOnlyList<string> OfDefaults = [Fibre, Pins, Limits, Colours, Margin, GroupIndex];

    /// <summary>Every key of an as-built document.</summary>
    public static readonly IReadOnlyList<string> OfOverlay = [.. Titles.Select(t => t.Key), Design, AsBuilt];

    /// <summary>Every key of a catalogue file.</summary>
    public static readonly IReadOnlyList<string> OfCatalogue = [Catalogue, Types];

    /// <summary>Every key of an as-built section.</summary>
    public static readonly IReadOnlyList<string> OfAsBuilt = [Parts, Exchanged, Moved, Unplugged, Plugged];
}
