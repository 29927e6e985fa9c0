using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class KeyCode : MatingRule
{
    public override string Code => "M07";

    public override string Title => "key code differs";

    public override string Why =>
        "Keyed connectors keep separate networks apart by force: a boss on one part and a cavity on the other, a code for each network, and " +
        "only equal codes go in. Interfaces are always plain, so a cord that enters one has a plain plug there. Some sets let plain and " +
        "keyed go together and most do not, so that it is a fault unless the network says plain-fits: yes.";

    public override string Clears =>
        "Use the cord of the port's network. At an interface make that end of the cord plain, with keyed: far or keyed: near for the end that keeps the code.";

    public override string Source =>
        "The idea: two public sources. That no open standard defines codes: from memory. Plain against keyed: common practice.";

    public override string Example => """
        plant: A cord of code R in a cassette of code B
        networks:
          sound: { colour: blue, key: B }
        types:
          red cord: { kind: A-to-B cord, network: sound, key: R, keyed: far }
          blue cord: { kind: A-to-B cord, network: sound, keyed: far }
        parts:
          SW-L: { kind: duplex interface, network: sound }
          SW-R: { kind: duplex interface, network: sound }
          K-L: { kind: U1 cassette, network: sound }
          K-R: { kind: U1 cassette, network: sound }
          T: { kind: Type-B trunk, network: sound, length: 30 m }
        runs:
          - SW-L/1, red cord 2 m, K-L/1
          - K-L/rear, T, K-R/rear
          - SW-R/1, blue cord 2 m, K-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: Code B throughout
        networks:
          sound: { colour: blue, key: B }
        types:
          red cord: { kind: A-to-B cord, network: sound, key: R, keyed: far }
          blue cord: { kind: A-to-B cord, network: sound, keyed: far }
        parts:
          SW-L: { kind: duplex interface, network: sound }
          SW-R: { kind: duplex interface, network: sound }
          K-L: { kind: U1 cassette, network: sound }
          K-R: { kind: U1 cassette, network: sound }
          T: { kind: Type-B trunk, network: sound, length: 30 m }
        runs:
          - SW-L/1, blue cord 2 m, K-L/1
          - K-L/rear, T, K-R/rear
          - SW-R/1, blue cord 2 m, K-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    private protected override StopFault? Judge(CheckContext context, Mating mating)
    {
        Plant plant = context.Plant;
        if (!MatingText.Seats(plant, mating))
            return null;
        StopFault? atAdapter = mating.Through is { } adapter ? Judge(context, mating.A, adapter) ?? Judge(context, mating.B, adapter) : null;
        return atAdapter ?? Judge(context, mating.A, mating.B);
    }

    private protected override StopFault? Judge(CheckContext context, OpenPlug plug) =>
        context.Plant.Fits(plug) && MatingText.SameConnector(context.Plant.Port(plug.Plug), context.Plant.Port(plug.Adapter))
            ? Judge(context, plug.Plug, plug.Adapter)
            : null;

    private static StopFault? Judge(CheckContext context, PortRef a, PortRef b)
    {
        Plant plant = context.Plant;
        string? keyA = plant.KeyOf(a);
        string? keyB = plant.KeyOf(b);
        if (keyA == keyB || (keyB is null && PlainFits(plant, a)) || (keyA is null && PlainFits(plant, b)))
            return null;
        if (keyA is not null && plant.Parts[b.Part].Shape.IsInterface)
            return AtInterface(context, a, keyA, b);
        if (keyB is not null && plant.Parts[a.Part].Shape.IsInterface)
            return AtInterface(context, b, keyB, a);
        return new StopFault(
            $"{keyA ?? ""}\n{keyB ?? ""}",
            $"{plant.Address(a)} {Has(keyA)} and {plant.Address(b)} {Has(keyB)}",
            "the same key code on both sides",
            $"{Words(keyA)} on {Words(keyB)}");
    }

    private static StopFault AtInterface(CheckContext context, PortRef plug, string key, PortRef port)
    {
        Plant plant = context.Plant;
        Part cord = plant.Parts[plug.Part];
        string plain = Plain(context, plug);
        return new StopFault(
            $"{key} {plain}",
            $"the plug {plant.Address(plug)} has key code {key} and does not go into {plant.Address(port)}, which is plain like every interface",
            $"a plain plug there: {plain} on {cord.Name}",
            $"key code {key} on a plain port");
    }

    /// <summary>What to write on the cable so that its end at an interface is plain.</summary>
    private static string Plain(CheckContext context, PortRef plug)
    {
        Plant plant = context.Plant;
        Part cable = plant.Parts[plug.Part];
        if (!cable.Shape.IsCable || cable.Shape.Ports.Count != 2)
            return "keyed: no";
        var other = new PortRef(plug.Part, 1 - plug.Port);
        Mating? mating = context.Traced.MatingAt(context.Traced.Graph.PositionOf(other, 1));
        PortRef? met = mating is null ? null : mating.A == other ? mating.B : mating.A;
        if (met is { } at && plant.Parts[at.Part].Shape.IsInterface)
            return "keyed: none";
        return plant.Port(plug).Side == Side.Near ? "keyed: far" : "keyed: near";
    }

    private static bool PlainFits(Plant plant, PortRef keyed) => plant.NetworkOf(keyed) is >= 0 and int n && plant.Networks[n].PlainFits;

    private static string Has(string? key) => key is null ? "is plain" : $"has key code {key}";

    private static string Words(string? key) => key is null ? "plain" : $"key code {key}";
}
