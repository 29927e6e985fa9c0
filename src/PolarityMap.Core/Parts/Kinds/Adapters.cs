namespace PolarityMap.Core.Parts.Kinds;

/// <summary>The shape of panels: adapters in a row, each the meeting place of two plugs.</summary>
internal static class Adapters
{
    /// <summary>Adapters 1, 2, 3, … like a model; an adapter has no end face, pins or loss of its own.</summary>
    public static Shape Build(PortShape model, int count)
    {
        var shape = new ShapeBuilder();
        for (int n = 1; n <= count; n++)
            shape.AddPort(model with { Name = $"{n}", IsAdapter = true, Polish = null, Pinned = null, StatedLoss = null, ExpectedLoss = null });
        return shape.Build();
    }
}
