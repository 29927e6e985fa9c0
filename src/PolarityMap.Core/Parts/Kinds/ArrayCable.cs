namespace PolarityMap.Core.Parts.Kinds;

/// <summary>The shape that array cords and trunks have in common: legs of one array connector at each end.</summary>
internal static class ArrayCable
{
    public static Shape Build(string type, int fibres, int legs)
    {
        var shape = new ShapeBuilder();
        ArrayMap map = ArrayMap.ByName(type);
        ArrayBase array = ArrayBase.Of(fibres);
        for (int leg = 1; leg <= legs; leg++)
        {
            string suffix = legs == 1 ? "" : $"{leg}";
            int number = legs == 1 ? 0 : leg;
            int near = shape.AddPort(new PortShape("near" + suffix, array.Face, Side.Near) { Leg = number });
            int far = shape.AddPort(new PortShape("far" + suffix, array.Face, Side.Far) { Leg = number });
            foreach (int position in array.Used)
                shape.Join(near, position, far, map.Far(position, array.Face.Columns));
        }

        return shape.Build(isCable: true);
    }
}
