using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>What is behind one fibre place of an end face.</summary>
/// <param name="Position">Its number in the port, from 1.</param>
/// <param name="Name">Its name as printed beside it; empty for the one place of a simplex connector.</param>
/// <param name="IsUsed">False for a place that no fibre comes to.</param>
/// <param name="Colour">Colour of the cable fibre behind it, or null where none is known.</param>
/// <param name="Lane">What an interface does there, or null.</param>
/// <param name="LaneNumber">The lane's number, or 0 where it is none or would mislead.</param>
internal sealed record FacePlace(int Position, string Name, bool IsUsed, FibreColour? Colour, LaneDirection? Lane, int LaneNumber)
{
    /// <summary>The places of a port in the order of their numbers.</summary>
    public static FacePlace[] Of(TracedPlant traced, Core.Plants.PortRef port)
    {
        PortShape shape = traced.Plant.Port(port);
        var places = new FacePlace[shape.PositionCount];
        for (int n = 1; n <= places.Length; n++)
        {
            int position = traced.Graph.PositionOf(port, n);
            Lane? lane = traced.Graph.LaneAt(position);
            int fibre = CableFibre.NumberAt(traced, position);

            // Which lanes of two rows belong together is not settled, so a number would mislead, unless the document gives it.
            bool numbered = lane is not null && shape.Face.Family == ConnectorFamily.Array && (shape.Face.Rows == 1 || shape.Groups > 0);
            places[n - 1] = new FacePlace(
                n,
                shape.Face.PositionName(n),
                traced.Graph.Inside[position] >= 0 || lane is not null,
                fibre > 0 ? traced.Plant.Practice.Colours[fibre] : null,
                lane?.Direction,
                numbered ? lane!.Value.Number : 0);
        }

        return places;
    }

    /// <summary>In words for a reader, such as <c>1 blue</c>, <c>3 transmit 2</c> or <c>5 empty</c>.</summary>
    public string Words()
    {
        string what = !IsUsed ? "empty"
            : Colour is { } colour ? colour.Tracers == 0 ? colour.Name : $"{colour.Name} with {Tracers(colour.Tracers)}"
            : Lane is { } lane ? LaneNumber > 0 ? $"{lane.Word()} {LaneNumber}" : lane.Word()
            : "a fibre";
        return Name.Length == 0 ? what : $"{Name} {what}";
    }

    private static string Tracers(int count) => count == 1 ? "a tracer" : $"{count} tracers";
}
