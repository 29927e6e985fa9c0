using PolarityMap.Core.Plants;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>What makes two parts alike on an overview, so that one box or one line stands for both.</summary>
/// <param name="Part">The part.</param>
/// <param name="Network">The network of its strands where it states none: an index, -1 for none, -2 for several.</param>
/// <param name="ByPlace">True for boxes, where the room counts too.</param>
/// <param name="ByName">True when the name counts too, its numbers left aside.</param>
internal readonly record struct Likeness(Part Part, int Network, bool ByPlace, bool ByName)
{
    /// <summary>True when both are drawn as one.</summary>
    public bool Equals(Likeness other)
    {
        Part a = Part;
        Part b = other.Part;
        return Network == other.Network && ByPlace == other.ByPlace && ByName == other.ByName && a.Network == b.Network
            && a.Kind == b.Kind && Same(a.Caption, b.Caption) && Same(a.PortNetworks, b.PortNetworks)
            && (!ByPlace || a.Room == b.Room) && (!ByName || SameStem(a.Name, b.Name));
    }

    public override int GetHashCode()
    {
        int hash = HashCode.Combine(Part.Kind.Length, Part.Network, Network, ByPlace ? Part.Room : null, ByName ? StemHash(Part.Name) : 0);
        for (int i = 0; i < Part.Caption.Count; i++)
            hash = (hash * 31) + Part.Caption[i].GetHashCode();
        return hash;
    }

    private static bool Same<T>(IReadOnlyList<T> a, IReadOnlyList<T> b)
        where T : IEquatable<T>
    {
        if (ReferenceEquals(a, b))
            return true;
        if (a.Count != b.Count)
            return false;
        for (int i = 0; i < a.Count; i++)
        {
            if (!a[i].Equals(b[i]))
                return false;
        }

        return true;
    }

    private static bool SameStem(string a, string b)
    {
        int i = 0, j = 0;
        while (true)
        {
            char x = Next(a, ref i);
            if (x != Next(b, ref j))
                return false;
            if (x == '\0')
                return true;
        }
    }

    private static int StemHash(string name)
    {
        int hash = 0, i = 0;
        for (char c = Next(name, ref i); c != '\0'; c = Next(name, ref i))
            hash = (hash * 31) + c;
        return hash;
    }

    /// <summary>The next character of a name; a number, however long, is one digit 0.</summary>
    private static char Next(string name, ref int index)
    {
        if (index >= name.Length)
            return '\0';
        char c = name[index++];
        if (!char.IsAsciiDigit(c))
            return c;
        while (index < name.Length && char.IsAsciiDigit(name[index]))
            index++;
        return '0';
    }
}
