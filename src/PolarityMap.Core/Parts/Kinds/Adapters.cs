namespace PolarityMap.Core.Parts.Kinds;

/// <summary>The shape of panels: adapters in a row, each the meeting place of two plugs.</summary>
internal static class Adapters
{
    public static Shape Build(Face face, int count, Keying? keys)
    {
        var shape = new ShapeBuilder();
        for (int n = 1; n <= count; n++)
            shape.AddPort(new PortShape($"{n}", face, Side.Near) { IsAdapter = true, Keys = keys });
        return shape.Build();
    }
}
