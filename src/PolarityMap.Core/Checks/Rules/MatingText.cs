using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

/// <summary>Words and questions that the mechanical rules share.</summary>
internal static class MatingText
{
    /// <summary>Both sides, such as <c>X/far and T/near in P/1</c>.</summary>
    public static string Both(Plant plant, Mating mating)
    {
        string where = mating.Through is { } adapter ? $" in {plant.Address(adapter)}" : "";
        return $"{A(plant, mating)} and {B(plant, mating)}{where}";
    }

    /// <summary>One side, with the position that a simplex plug takes of it.</summary>
    public static string A(Plant plant, Mating mating) => Side(plant, mating.A, mating.PositionOfA);

    /// <inheritdoc cref="A"/>
    public static string B(Plant plant, Mating mating) => Side(plant, mating.B, mating.PositionOfB);

    /// <summary>True when two plugs or a plug and a port have the same kind of connector as far as is known.</summary>
    public static bool SameConnector(PortShape a, PortShape b) => a.Connector.Length == 0 || b.Connector.Length == 0 || a.Connector == b.Connector;

    /// <summary>True when the two sides go together, so that pins, end faces and keys of it matter.</summary>
    public static bool Seats(Plant plant, Mating mating) => plant.Fits(mating)
        && SameConnector(plant.Port(mating.A), plant.Port(mating.B))
        && (mating.Through is not { } adapter || (SameConnector(plant.Port(mating.A), plant.Port(adapter)) && SameConnector(plant.Port(mating.B), plant.Port(adapter))));

    /// <summary>True for two arrays whose fibres meet.</summary>
    public static bool IsArray(Plant plant, Mating mating) => plant.Port(mating.A).Face.Family == ConnectorFamily.Array && plant.Fits(mating);

    private static string Side(Plant plant, PortRef port, int position) => position == 0 ? plant.Address(port) : plant.Address(port, position);
}
