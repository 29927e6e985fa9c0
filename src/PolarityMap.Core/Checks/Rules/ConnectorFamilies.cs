using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class ConnectorFamilies : MatingRule
{
    public override string Code => "M03";

    public override string Title => "connectors of different families";

    public override string Why =>
        "A plug goes only into an adapter or port made for its connector. A duplex plug does not go into an array adapter, nor an LC plug " +
        "with its ferrule of 1.25 mm into an SC adapter made for 2.5 mm. One simplex plug in a duplex port sits in one of two places, and " +
        "which of them decides what it carries.";

    public override string Clears =>
        "Use a cord with the connector of the port at each end (connector, far-connector). For a simplex plug in a duplex port name the position A or B.";

    public override string Source => "Ferrule diameters: two public sources. LC: IEC 61754-20, two public sources; SC: IEC 61754-4, from memory.";

    public override string Example => """
        plant: An LC cord for an SC cassette
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
          K-L: { kind: U1 cassette, connector: SC }
          K-R: U1 cassette
          T: { kind: Type-B trunk, length: 30 m }
        runs:
          - SW-L/1, A-to-B cord 2 m, K-L/1
          - K-L/rear, T, K-R/rear
          - K-R/1, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: A cord with LC at one end and SC at the other
        types:
          LC to SC cord: { kind: A-to-B cord, far-connector: SC }
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
          K-L: { kind: U1 cassette, connector: SC }
          K-R: U1 cassette
          T: { kind: Type-B trunk, length: 30 m }
        runs:
          - SW-L/1, LC to SC cord 2 m, K-L/1
          - K-L/rear, T, K-R/rear
          - K-R/1, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    private protected override StopFault? Judge(CheckContext context, Mating mating)
    {
        Plant plant = context.Plant;
        if (mating.Through is { } adapter && (IntoAdapter(plant, mating.A, adapter) ?? IntoAdapter(plant, mating.B, adapter)) is { } fault)
            return fault;
        PortShape a = plant.Port(mating.A);
        PortShape b = plant.Port(mating.B);
        if (plant.Fits(mating) || a.Face.Family == b.Face.Family)
        {
            // Faces of one family that differ are M04, but for bare fibres, which have no connector at all.
            if (MatingText.SameConnector(a, b))
                return a.Face.Family == ConnectorFamily.Bare && a.Face != b.Face ? Different(FaceWord(a.Face), FaceWord(b.Face)) : null;
            return Different(a.Connector, b.Connector);
        }

        (PortRef Port, PortRef Plug)? half = IsHalf(plant, mating.A, mating.B) ? (mating.A, mating.B) : IsHalf(plant, mating.B, mating.A) ? (mating.B, mating.A) : null;
        if (half is not { } at)
            return Different(FaceWord(a.Face), FaceWord(b.Face));
        string port = plant.Address(at.Port);
        return new StopFault(
            "half",
            $"{plant.Address(at.Plug)} is one simplex plug and {port} has room for two, so say whether it sits in A or in B",
            $"{port}:A or {port}:B",
            $"{port} without a position");

        StopFault Different(string wordA, string wordB) => new(
            $"{wordA} {wordB}",
            $"{MatingText.A(plant, mating)} is {wordA} and {MatingText.B(plant, mating)} is {wordB}, which do not go together",
            "the same connector on both sides",
            $"{wordA} on {wordB}");
    }

    private protected override StopFault? Judge(CheckContext context, OpenPlug plug) => IntoAdapter(context.Plant, plug.Plug, plug.Adapter);

    private static StopFault? IntoAdapter(Plant plant, PortRef plug, PortRef adapter)
    {
        PortShape a = plant.Port(plug);
        PortShape b = plant.Port(adapter);
        if (a.Face.Family == b.Face.Family && MatingText.SameConnector(a, b))
            return null;
        (string word, string holder) = a.Face.Family == b.Face.Family ? (a.Connector, b.Connector) : (FamilyWord(a.Face), FamilyWord(b.Face));
        return new StopFault(
            $"{word} into {holder}",
            $"the {word} plug {plant.Address(plug)} does not go into the {holder} adapter {plant.Address(adapter)}",
            $"{holder} plugs in {plant.Address(adapter)}",
            $"a plug that is {word}");
    }

    /// <summary>True for a whole duplex port that holds one simplex plug.</summary>
    private static bool IsHalf(Plant plant, PortRef port, PortRef plug) =>
        plant.Port(port).Face.Family == ConnectorFamily.Duplex && !plant.Parts[port.Part].Shape.IsCable
        && plant.Port(plug).Face.Family == ConnectorFamily.Simplex && plant.Parts[plug.Part].Shape.IsCable;

    private static string FaceWord(Face face) => face.Family == ConnectorFamily.Array ? $"a {face}" : $"{face}";

    private static string FamilyWord(Face face) => face.Family == ConnectorFamily.Array ? "array" : $"{face}";
}
