using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies;

/// <summary>Parts and ports in the words of changes.</summary>
internal static class ChangeWords
{
    /// <summary>A part with what it is: <c>cord C-7</c>, <c>trunk T</c>.</summary>
    public static string Name(Plant plant, int part)
    {
        Part named = plant.Parts[part];
        return named.Shape.IsInterface ? named.Name : $"{Noun(named)} {named.Name}";
    }

    /// <summary>What a part is in one word: the last of its kind's name.</summary>
    public static string Noun(Part part) => part.Kind[(part.Kind.LastIndexOf(' ') + 1)..] is { Length: > 0 } noun ? noun : "part";

    /// <summary>The end of a cable by where it is plugged in: <c>the end of cord C-7 in K-1/3</c>.</summary>
    public static string End(ChangeContext context, PortRef plug)
    {
        string cable = Name(context.Plant, plug.Part);
        return Socket(context, plug) is { } socket
            ? $"the end of {cable} in {context.Plant.Address(socket)}"
            : $"the {context.Plant.Port(plug).Name} end of {cable}";
    }

    /// <summary>Where the end of a cable is, in few words: <c>in K-1/3</c>, or <c>at its far end</c> where it is plugged into nothing.</summary>
    public static string In(ChangeContext context, PortRef plug) =>
        Socket(context, plug) is { } socket ? $"in {context.Plant.Address(socket)}" : $"at its {context.Plant.Port(plug).Name} end";

    /// <summary>The port or adapter that a plug sits in; null where it sits in none.</summary>
    public static PortRef? Socket(ChangeContext context, PortRef plug)
    {
        if (context.Plugs.Of(plug) is { } mating)
            return mating.Through ?? (mating.A == plug ? mating.B : mating.A);
        return context.Plant.OpenPlugs.FirstOrDefault(o => o.Plug == plug)?.Adapter;
    }

    /// <summary>A noun with its article, such as <c>an A-to-B cord</c>.</summary>
    public static string A(string noun) => (noun[0] is 'a' or 'e' or 'i' or 'o' or 'A' or 'E' or 'I' or 'O' ? "an " : "a ") + noun;

    /// <summary>A port that is no end of a cable and no adapter: plugs go into it.</summary>
    public static bool IsSocket(Plant plant, PortRef port) => !plant.Parts[port.Part].Shape.IsCable && !plant.Port(port).IsAdapter;

    /// <summary>True for the plug of a cable.</summary>
    public static bool IsPlug(Plant plant, PortRef port) => plant.Parts[port.Part].Shape.IsCable && plant.Port(port).Face.Family != ConnectorFamily.Bare;
}
