using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Parts.Kinds;

/// <summary>The attributes that parts with fibres and connectors have in common, and the ports they make.</summary>
internal static class Connectors
{
    public static AttributeSpec Fibre { get; } =
        AttributeSpec.OptionalChoice("fibre", "Cabled fibre class, such as OM4 or OS2.", FibreClass.Names);

    public static AttributeSpec Jacket { get; } =
        new("jacket", AttributeSort.Text, "Colour of the cable's jacket. It says nothing about fibre class or network unless the plant's legend does.");

    public static AttributeSpec Attenuation { get; } =
        new("attenuation", AttributeSort.Attenuation, "Largest attenuation that the maker states at the wavelength used, such as '3.0 dB/km'.");

    public static AttributeSpec ArrayLoss { get; } =
        new("array-loss", AttributeSort.Loss, "Largest loss of a mating at its array connectors that the maker states, such as '0.35 dB'.");

    public static AttributeSpec ExpectedArrayLoss { get; } =
        new("expected-array-loss", AttributeSort.Loss, "Loss to expect of a mating at its array connectors, such as '0.2 dB'.");

    public static AttributeSpec DuplexLoss { get; } =
        new("duplex-loss", AttributeSort.Loss, "Largest loss of a mating at its duplex or simplex connectors that the maker states, such as '0.25 dB'.");

    public static AttributeSpec ExpectedDuplexLoss { get; } =
        new("expected-duplex-loss", AttributeSort.Loss, "Loss to expect of a mating at its duplex or simplex connectors, such as '0.15 dB'.");

    public static AttributeSpec CablePins { get; } =
        AttributeSpec.OptionalChoice("pins", "Which ends have guide pins. Without it cords have none, and trunks none unless the plant pins its trunks.", ["none", "near", "far", "both"]);

    public static AttributeSpec PortPins { get; } =
        AttributeSpec.OptionalChoice("pins", "Whether its array connectors have guide pins. Without it they have, unless the plant pins its trunks.", ["pinned", "unpinned"]);

    public static AttributeSpec PlugPins { get; } =
        AttributeSpec.Choice("pins", "Whether its array plugs have guide pins.", ["pinned", "unpinned"], "unpinned");

    public static AttributeSpec ArrayPolish { get; } =
        AttributeSpec.OptionalChoice("polish", "End face of its array connectors. Without it angled for single-mode fibre and flat for multimode, which is the practice and not a rule.", PolishWords.All);

    public static AttributeSpec FarPolish { get; } =
        AttributeSpec.OptionalChoice("far-polish", "End face of the far end, where it differs.", PolishWords.All);

    public static AttributeSpec DuplexPolish { get; } =
        AttributeSpec.Choice("duplex-polish", "End face of its duplex or simplex connectors.", ["flat", "angled"], "flat");

    public static AttributeSpec FarDuplexPolish { get; } =
        AttributeSpec.OptionalChoice("far-duplex-polish", "End face of the far end, where it differs.", ["flat", "angled"]);

    /// <summary>Duplex and simplex connectors of the standards: IEC 61754-20, -4, and ST and FC by TIA-604-2 and -4 (from memory but LC).</summary>
    private static readonly string[] s_duplexNames = ["LC", "SC", "ST", "FC"];

    public static AttributeSpec Connector { get; } =
        AttributeSpec.Choice("connector", "Its duplex or simplex connector.", s_duplexNames, "LC");

    public static AttributeSpec FarConnector { get; } =
        AttributeSpec.OptionalChoice("far-connector", "Connector of the far end, where it differs.", s_duplexNames);

    public static AttributeSpec KeyedEnds { get; } =
        AttributeSpec.Choice("keyed", "Which ends carry the network's key code; an end that enters an interface carries none.", ["none", "near", "far", "both"], "both");

    public static AttributeSpec Keyed { get; } =
        AttributeSpec.Choice("keyed", "Whether its duplex connectors carry the network's key code.", ["yes", "no"], "yes");

    public static AttributeSpec Key { get; } =
        new("key", AttributeSort.Text, "Key code of its duplex connectors, where it is not that of the network.");

    public static AttributeSpec PortNetworks { get; } =
        new("networks", AttributeSort.Networks, "The network of each duplex port in order, where ports of several networks sit side by side.");

    /// <summary>The fibre class of a part: its own, or the plant's.</summary>
    public static FibreClass? FibreOf(AttributeValues values) =>
        values.Word("fibre") is { } name ? FibreClass.Find(name) : values.Defaults.Fibre;

    /// <summary>An array port with the part's stated polish and losses.</summary>
    /// <param name="name">The port's name.</param>
    /// <param name="array">Its array base.</param>
    /// <param name="side">Its side.</param>
    /// <param name="values">The part's attributes.</param>
    /// <param name="pinned">Whether it has pins.</param>
    public static PortShape Array(string name, ArrayBase array, Side side, AttributeValues values, bool pinned)
    {
        string? word = (side == Side.Far ? values.Word("far-polish") : null) ?? values.Word("polish");
        return new PortShape(name, array.Face, side)
        {
            Base = array.Fibres,
            Pinned = pinned,
            Polish = word is not null ? PolishWords.Parse(word) : FibreOf(values) is { } fibre ? fibre.IsMultimode ? Polish.Flat : Polish.Angled : null,
            StatedLoss = values.Loss("array-loss"),
            ExpectedLoss = values.Loss("expected-array-loss"),
            Connector = "MPO",
        };
    }

    /// <summary>A duplex or simplex port with the part's connector, polish, key and losses.</summary>
    public static PortShape Duplex(string name, Face face, Side side, AttributeValues values, bool keyed)
    {
        bool far = side == Side.Far;
        return new PortShape(name, face, side)
        {
            Connector = (far ? values.Word("far-connector") : null) ?? values.Word("connector") ?? "",
            Polish = PolishWords.Parse((far ? values.Word("far-duplex-polish") : null) ?? values.Word("duplex-polish") ?? "flat"),
            StatedLoss = values.Loss("duplex-loss"),
            ExpectedLoss = values.Loss("expected-duplex-loss"),
            IsKeyed = keyed,
        };
    }

    /// <summary>Whether an end of a cable is named by an attribute that takes none, near, far or both.</summary>
    public static bool Names(string? word, Side side) => word == "both" || word == (side == Side.Near ? "near" : "far");

    /// <summary>Whether the array connectors of a cassette and the like have pins.</summary>
    public static bool PinsOfPort(AttributeValues values) => values.Word("pins") is { } word ? word == "pinned" : !values.Defaults.TrunksArePinned;
}
