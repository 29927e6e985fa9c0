using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies;

/// <summary>A place on a way where light passes from one port to another.</summary>
/// <param name="Here">The port on the side that the way comes from.</param>
/// <param name="There">The port that it goes on into.</param>
internal readonly record struct Joint(PortRef Here, PortRef There)
{
    /// <summary>The joints along a way that begins at an interface, where a mating and a part follow each other in turn.</summary>
    public static List<Joint> Along(ChangeContext context, IReadOnlyList<int> way)
    {
        var joints = new List<Joint>();
        for (int i = 0; i + 1 < way.Count; i += 2)
            joints.Add(new Joint(context.Graph.PlaceOf(way[i]).Port, context.Graph.PlaceOf(way[i + 1]).Port));

        return joints;
    }

    /// <summary>
    /// The two ports whose plugs have to change places so that light of the one way goes on into the other: two sockets, or two
    /// plugs that sit in adapters. Null where the two joints are not alike.
    /// </summary>
    /// <param name="context">The plant.</param>
    /// <param name="way">A joint on the one way.</param>
    /// <param name="meant">A joint on the other, told from the far end.</param>
    public static (PortRef A, PortRef B)? Crossing(ChangeContext context, Joint way, Joint meant)
    {
        if (way == meant || (way.Here, way.There) == (meant.There, meant.Here))
            return null;
        return Alike(context, way.There, meant.Here) ? (way.There, meant.Here)
            : Alike(context, way.Here, meant.There) ? (way.Here, meant.There)
            : null;
    }

    /// <summary>The pairs of plugs or sockets by which light would change from the one way to the other, joint by joint.</summary>
    /// <param name="context">The plant.</param>
    /// <param name="way">The positions of the one way.</param>
    /// <param name="meant">Those of the other, told from the far end.</param>
    public static IEnumerable<(PortRef A, PortRef B)> Crossings(ChangeContext context, IReadOnlyList<int> way, IReadOnlyList<int> meant)
    {
        List<Joint> far = Along(context, meant);
        foreach (Joint joint in Along(context, way))
        {
            foreach (Joint other in far)
            {
                if (Crossing(context, joint, other) is { } pair)
                    yield return pair;
            }
        }
    }

    /// <summary>True for two sockets of one part, or of two parts of a kind in one room, or for two plugs in such adapters.</summary>
    public static bool Alike(ChangeContext context, PortRef a, PortRef b)
    {
        Plant plant = context.Plant;
        if (a == b || plant.Port(a).Face != plant.Port(b).Face || plant.Port(a).Side != plant.Port(b).Side)
            return false;
        if (ChangeWords.IsSocket(plant, a) && ChangeWords.IsSocket(plant, b))
            return AreBeside(plant, a.Part, b.Part) && SamePlug(context, a, b);
        return ChangeWords.IsPlug(plant, a) && ChangeWords.IsPlug(plant, b) && PartWork.IsCord(plant.Parts[a.Part]) == PartWork.IsCord(plant.Parts[b.Part])
            && context.Plugs.Of(a)?.Through is { } one && context.Plugs.Of(b)?.Through is { } other && AreBeside(plant, one.Part, other.Part);
    }

    /// <summary>True when a hand may take the one port for the other: they are of one part, or of two alike in one room.</summary>
    public static bool AreBeside(Plant plant, int a, int b) => a == b || (plant.Parts[a].Kind == plant.Parts[b].Kind && plant.Parts[a].Room == plant.Parts[b].Room);

    /// <summary>True when cords sit in both, or trunks in both.</summary>
    private static bool SamePlug(ChangeContext context, PortRef a, PortRef b) =>
        context.PartnerOf(a) is { } one && context.PartnerOf(b) is { } other && PartWork.IsCord(context.Plant.Parts[one.Part]) == PartWork.IsCord(context.Plant.Parts[other.Part]);
}
