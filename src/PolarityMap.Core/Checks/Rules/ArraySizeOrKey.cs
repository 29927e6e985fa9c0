using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class ArraySizeOrKey : MatingRule
{
    public override string Code => "M04";

    public override string Title => "array size or key";

    public override string Why =>
        "Array connectors mate only with their like. A ferrule 16 places wide has its key to one side, other pins and another spacing of " +
        "them, so it does not go where one of 12 places goes. One row and two rows of the same width do go together, and then the one " +
        "row lies between the two and no fibre meets another.";

    public override string Clears => "Use a cable with the ferrule of the port at each end, or a conversion module or harness between the two sizes.";

    public override string Source =>
        "TIA-604-5 and TIA-604-18: 16 does not mate with 12, two public sources; the place of the key: one. One row on two: from memory.";

    public override string Example => """
        plant: A 12-fibre cord for 16-wide ports
        parts:
          QS-L: { kind: parallel interface, application: 800GBASE-DR8 }
          QS-R: { kind: parallel interface, application: 800GBASE-DR8 }
        runs:
          - QS-L/1, Type-B cord 5 m, QS-R/1
        links:
          - QS-L/1 to QS-R/1

        """;

    public override string Repaired => """
        plant: A 16-fibre cord for 16-wide ports
        types:
          sixteen cord: { kind: Type-B cord, base: 16 }
        parts:
          QS-L: { kind: parallel interface, application: 800GBASE-DR8 }
          QS-R: { kind: parallel interface, application: 800GBASE-DR8 }
        runs:
          - QS-L/1, sixteen cord 5 m, QS-R/1
        links:
          - QS-L/1 to QS-R/1

        """;

    private protected override StopFault? Judge(CheckContext context, Mating mating)
    {
        Plant plant = context.Plant;
        if (mating.Through is { } adapter && (IntoAdapter(plant, mating.A, adapter) ?? IntoAdapter(plant, mating.B, adapter)) is { } fault)
            return fault;
        Face a = plant.Port(mating.A).Face;
        Face b = plant.Port(mating.B).Face;
        if (a == b || a.Family != ConnectorFamily.Array || b.Family != ConnectorFamily.Array)
            return null;
        string why = a.OffsetKey != b.OffsetKey
            ? Key(Math.Max(a.Columns, b.Columns), Math.Min(a.Columns, b.Columns), "port")
            : a.Rows != b.Rows ? $"{Rows(Math.Min(a.Rows, b.Rows))} meets {Rows(Math.Max(a.Rows, b.Rows))} and the fibres lie beside each other" : "the places do not meet";
        return new StopFault(
            $"{a} {b}",
            $"{MatingText.A(plant, mating)} is a {a} and {MatingText.B(plant, mating)} a {b}: {why}",
            "equal ferrules on both sides",
            $"{a} on {b}");
    }

    private protected override StopFault? Judge(CheckContext context, OpenPlug plug) => IntoAdapter(context.Plant, plug.Plug, plug.Adapter);

    private static StopFault? IntoAdapter(Plant plant, PortRef plug, PortRef adapter)
    {
        Face a = plant.Port(plug).Face;
        Face b = plant.Port(adapter).Face;
        return a.Family != ConnectorFamily.Array || b.Family != ConnectorFamily.Array || a.SharesAdapterWith(b)
            ? null
            : new StopFault(
                $"{a.Columns} into {b.Columns}",
                $"{plant.Address(plug)} does not go into {plant.Address(adapter)}: {(a.OffsetKey ? Key(a.Columns, b.Columns, "adapter") : $"the key of a {a.Columns}-wide ferrule sits in the middle and that of a {b.Columns}-wide adapter to one side")}",
                $"a plug {b.Columns} places wide in {plant.Address(adapter)}",
                $"a plug {a.Columns} places wide");
    }

    private static string Key(int wide, int narrow, string holder) =>
        $"the key of a {wide}-wide ferrule sits to one side and does not go into a {narrow}-wide {holder}";

    private static string Rows(int rows) => rows == 1 ? "one row" : rows == 2 ? "two" : $"{rows}";
}
