using PolarityMap.Core.Parts;
using PolarityMap.Core.Parts.Kinds;

namespace PolarityMap.Core.Plants;

/// <summary>Makes the parts of a plant from a kind, its attributes and the shape built from them.</summary>
public static class PartMaker
{
    /// <summary>A part with everything that its attributes say.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="values">Its attributes.</param>
    /// <param name="shape">The shape that the kind built from them.</param>
    /// <param name="place">Where the document describes it.</param>
    /// <param name="networks">The networks of the plant; names that are not among them count as none.</param>
    public static Part Make(string name, PartKind kind, AttributeValues values, Shape shape, SourcePlace place, IReadOnlyList<Network> networks)
    {
        bool hasFibre = kind.Has("fibre");
        return new Part(name, kind.Name, shape, place)
        {
            Network = IndexOf(networks, values.Word("network")),
            PortNetworks = [.. values.Words("networks").Select(n => IndexOf(networks, n))],
            Caption = kind.Caption(values),
            Length = values.Length("length"),
            Fibre = hasFibre ? Connectors.FibreOf(values) : null,
            Attenuation = values.Attenuation("attenuation"),
            SpliceLoss = values.Loss("splice-loss"),
            Jacket = kind.Has("jacket") ? values.Word("jacket") : null,
            Key = kind.Has("key") ? values.Word("key") : null,
            IsReversible = kind.Has("reversible") && values.Word("reversible") == "yes",
            Room = values.Word("room"),
            Note = values.Word("note"),
            SpareLegs = values.Numbers("spare"),
            Values = values,
        };
    }

    private static int IndexOf(IReadOnlyList<Network> networks, string? name)
    {
        for (int i = 0; i < networks.Count; i++)
        {
            if (networks[i].Name == name)
                return i;
        }

        return -1;
    }
}
