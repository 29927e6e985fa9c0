using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Documents.Binding;

/// <summary>Makes the plant's parts from described types.</summary>
internal static class BoundPart
{
    public static Part Make(string name, PartType type, Shape shape, SourcePlace place, IReadOnlyList<Network> networks, bool isInline = false)
    {
        AttributeValues values = type.Values;
        int network = -1;
        for (int i = 0; i < networks.Count; i++)
        {
            if (networks[i].Name == values.Word("network"))
                network = i;
        }

        return new Part(name, type.Kind.Name, shape, place)
        {
            Network = network,
            Caption = type.Kind.Caption(values),
            Length = values.Length("length"),
            Room = values.Word("room"),
            Note = values.Word("note"),
            SpareLegs = values.Numbers("spare"),
            IsInline = isInline,
        };
    }
}
