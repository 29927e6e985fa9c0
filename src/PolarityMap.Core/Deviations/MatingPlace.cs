using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations;

/// <summary>A mating as one points at it.</summary>
/// <param name="Parts">The parts to look at: that of the plug, then the others.</param>
/// <param name="Plug">The plug that one pulls to open it.</param>
/// <param name="Words"><c>C-1/near in SW-L/1</c>.</param>
internal readonly record struct MatingPlace(IReadOnlyList<int> Parts, PortRef Plug, string Words)
{
    public static MatingPlace Of(DeviationContext context, int index)
    {
        Mating mating = context.Plant.Matings[index];
        (Seat? first, Seat? second) = context.Seats.In(index);

        // In an adapter the plug in front; else the one plug there is, or the side that is a port of its own.
        Seat? seat = first is { IsFront: false } && second is not null ? second : first ?? second;
        PortRef plug = seat?.Plug ?? (mating.PositionOfA > 0 ? mating.B : mating.A);
        PortRef other = plug == mating.A ? mating.B : mating.A;
        string where = mating.Through is { } adapter
            ? $"{context.Plant.Address(plug)} and {context.Plant.Address(other)} in {context.Plant.Address(adapter)}"
            : $"{context.Plant.Address(plug)} in {Socket(context.Plant, mating, other)}";
        return new MatingPlace(Distinct(plug.Part, other.Part, mating.Through?.Part), plug, where);
    }

    /// <summary>Each part once: a cord can be plugged into itself.</summary>
    private static List<int> Distinct(int plug, int other, int? panel)
    {
        var parts = new List<int> { plug };
        if (other != plug)
            parts.Add(other);
        if (panel is { } holder)
            parts.Add(holder);
        return parts;
    }

    private static string Socket(Plant plant, Mating mating, PortRef port)
    {
        int position = port == mating.A ? mating.PositionOfA : mating.PositionOfB;
        return position > 0 ? plant.Address(port, position) : plant.Address(port);
    }
}
