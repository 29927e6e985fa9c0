using System.Globalization;
using PolarityMap.Core.Parts;

namespace PolarityMap.Documents.Binding;

/// <summary>Finds ports by name at once where they are numbered 1, 2, 3, …, as those of wide panels and switches are.</summary>
internal static class PortIndex
{
    public static int Find(Shape shape, string name) =>
        int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
        && number >= 1 && number <= shape.Ports.Count && shape.Ports[number - 1].Name == name
            ? number - 1
            : shape.FindPort(name);
}
