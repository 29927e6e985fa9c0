using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>What is said about a connector and about a kind of mating.</summary>
internal static class FaceWords
{
    /// <summary>The kind in one line, such as <c>12-position array MPO, keys aligned (key up to key up), pinned to unpinned, both flat</c>.</summary>
    public static string Title(MatingKind kind)
    {
        (FaceSide left, FaceSide right) = (kind.Left, kind.Right);
        var words = new List<string>();
        string a = Connector(left), b = Connector(right);
        words.Add(a == b || (left.Face == right.Face && (left.Shape.Connector.Length == 0 || right.Shape.Connector.Length == 0)) ? a.Length >= b.Length ? a : b : $"{a} with {b}");
        if (kind.Fits && left.Face.Family == ConnectorFamily.Array)
            words.Add(kind.Keys == Keying.Aligned ? "keys aligned (key up to key up)" : "keys opposed (key up to key down)");
        if (left.Shape.Pinned is { } pinned && right.Shape.Pinned is { } others)
            words.Add(pinned == others ? $"both {Pinned(pinned)}" : $"{Pinned(pinned)} to {Pinned(others)}");
        if (left.Shape.Polish is { } polish && right.Shape.Polish is { } other)
            words.Add(polish == other ? $"both {polish.Word()}" : $"{polish.Word()} to {other.Word()}");
        if (left.Part.Shape.IsInterface)
            words.Add(right.Part.Shape.IsInterface ? "two interfaces" : "at an interface");
        string all = string.Join(", ", words) + (kind.Fits ? "" : ": does not fit");
        return char.ToUpperInvariant(all[0]) + all[1..];
    }

    /// <summary>Which mating is drawn and how many are like it.</summary>
    public static string Example(MatingKind kind)
    {
        string where = kind.Adapter is { } adapter ? $" in {adapter}" : "";
        string alike = kind.Count == 1 ? ", the only one of its kind" : $", and {kind.Count - 1} alike";
        string others = (kind.HasOneColouring, kind.HasOneKeyCode) switch
        {
            (true, true) => "",
            (false, true) => " Fibre colours are those of this one.",
            (true, false) => " Key codes are those of this one.",
            _ => " Fibre colours and key codes are those of this one.",
        };
        return $"{Side(kind.Left)} with {Side(kind.Right)}{where}{alike}.{others}";
    }

    /// <summary>What the connector is, such as <c>cassette, guide pins, angled (8 degrees)</c>.</summary>
    public static string What(FaceSide side)
    {
        string words = side.Part.Kind;
        if (side.Face.Family == ConnectorFamily.Bare)
            return $"{words}, {side.Face}";
        if (side.Shape.Connector.Length > 0 && side.Face.Family != ConnectorFamily.Array)
            words += $", {side.Shape.Connector}";
        if (side.Key is { } key)
            words += $", key code {key}";
        if (side.Shape.Pinned is { } pinned)
            words += pinned ? ", guide pins" : ", pin holes";
        return $"{words}, {PolishWords(side.Shape.Polish)}";
    }

    /// <summary>From where the face is seen.</summary>
    public static string Seen(FaceSide side, bool turned)
    {
        if (side.Face.Family == ConnectorFamily.Bare)
            return "Fibres in the order of their numbers.";
        string what = side.Part.Shape.IsInterface ? "Seen looking into its port, key up"
            : side.Part.Shape.IsCable ? "Plug, seen looking into its ferrule, key up"
            : "Inner plug, seen looking into its ferrule, key up";
        return turned ? $"{what}; turned over in the adapter." : $"{what}.";
    }

    /// <summary>The end face in words; 8 degrees by five public sources.</summary>
    private static string PolishWords(Polish? polish) => polish switch
    {
        null => "end face not stated",
        Polish.Flat => "flat",
        { } angled => $"{angled.Word()} (8\u00A0degrees)",
    };

    private static string Pinned(bool pinned) => pinned ? "pinned" : "unpinned";

    private static string Connector(FaceSide side) => side.Shape.Connector.Length == 0 ? $"{side.Face}" : $"{side.Face} {side.Shape.Connector}";

    private static string Side(FaceSide side) => side.TakenPosition == 0 ? side.Address : $"{side.Address}:{side.Face.PositionName(side.TakenPosition)}";
}
