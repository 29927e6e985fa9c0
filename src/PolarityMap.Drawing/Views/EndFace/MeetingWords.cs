using PolarityMap.Core.Parts;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>What meets what, in words. The rules are those that <see cref="Face.Facing"/> states with their sources.</summary>
internal static class MeetingWords
{
    private const char Minus = '\u2212';

    /// <summary>The rule of a kind, such as <c>Keys aligned: i meets 13 − i.</c></summary>
    public static string Rule(MatingKind kind)
    {
        if (!kind.Fits)
            return "No fibre meets another.";
        Face face = kind.Left.Face;
        if (kind.Left.TakenPosition > 0 || kind.Right.TakenPosition > 0)
        {
            FaceSide port = kind.Left.TakenPosition > 0 ? kind.Left : kind.Right;
            return $"The simplex plug meets {port.Face.PositionName(port.TakenPosition)} of the duplex port. The other position takes a plug of its own.";
        }

        return face.Family switch
        {
            ConnectorFamily.Bare => face.Count == 1 ? "The two fibres meet." : "Fibre i meets fibre i.",
            ConnectorFamily.Simplex => "The two fibres meet.",
            ConnectorFamily.Duplex => "A meets B, and B meets A.",
            _ => Array(face, kind.Keys),
        };
    }

    /// <summary>Every pair that is drawn, such as <c>1 meets 12, 2 meets 11</c>.</summary>
    public static string Pairs(MatingKind kind)
    {
        var pairs = new List<string>();
        foreach (FacePlace place in kind.Left.Drawn)
        {
            if (kind.PartnerOf(place.Position) is > 0 and int partner)
                pairs.Add($"{Named(place)} meets {Named(kind.Right.Places[partner - 1])}");
        }

        return pairs.Count == 0 ? "No fibre meets another." : string.Join(", ", pairs) + ".";
    }

    private static string Named(FacePlace place) => place.Name.Length == 0 ? "the plug" : place.Name;

    private static string Array(Face face, Keying keys)
    {
        int columns = face.Columns;
        if (face.Rows == 1)
            return keys == Keying.Aligned ? $"Keys aligned: i meets {columns + 1} {Minus} i." : "Keys opposed: i meets i.";
        if (keys == Keying.Aligned)
            return $"Keys aligned: each row meets its own, turned round. 1 to {columns}: i meets {columns + 1} {Minus} i. {columns + 1} to {2 * columns}: i meets {(3 * columns) + 1} {Minus} i.";
        return $"Keys opposed: the two rows change places. 1 to {columns}: i meets i + {columns}. {columns + 1} to {2 * columns}: i meets i {Minus} {columns}.";
    }
}
