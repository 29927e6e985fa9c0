using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>Matings that are alike, drawn as one panel by the first of them.</summary>
/// <param name="Number">Its number in the set, from 1.</param>
/// <param name="Left">The connector drawn left.</param>
/// <param name="Right">The connector drawn right.</param>
/// <param name="Keys">How the keys lie.</param>
/// <param name="Fits">False when no fibre meets another.</param>
/// <param name="Adapter">Address of the adapter in which the two plugs of the first mating meet, or null.</param>
internal sealed record MatingKind(int Number, FaceSide Left, FaceSide Right, Keying Keys, bool Fits, string? Adapter)
{
    /// <summary>How many matings are of this kind.</summary>
    public int Count { get; set; } = 1;

    /// <summary>False when the colours behind the places differ from mating to mating.</summary>
    public bool HasOneColouring { get; set; } = true;

    /// <summary>False when the key codes differ from mating to mating.</summary>
    public bool HasOneKeyCode { get; set; } = true;

    /// <summary>What was found about these matings.</summary>
    public List<Finding> Findings { get; } = [];

    /// <summary>True when the right connector lies upside down in the adapter.</summary>
    public bool IsTurned => Fits && Left.Face.Family == ConnectorFamily.Array && Keys == Keying.Opposed;

    /// <summary>True when a fibre of one connector meets an empty place of the other.</summary>
    public bool HasDarkPairs => Left.Places.Any(p => PartnerOf(p.Position) is > 0 and int partner && p.IsUsed != Right.Places[partner - 1].IsUsed);

    /// <summary>
    /// The position of the right connector that touches a position of the left one, or 0 where none does. It asks the face for it,
    /// as the strands do.
    /// </summary>
    public int PartnerOf(int leftPosition)
    {
        if (!Fits)
            return 0;
        if (Left.TakenPosition == 0 && Right.TakenPosition == 0)
            return Left.Face.Facing(Keys, leftPosition);
        return leftPosition == Math.Max(1, Left.TakenPosition) ? Math.Max(1, Right.TakenPosition) : 0;
    }
}
