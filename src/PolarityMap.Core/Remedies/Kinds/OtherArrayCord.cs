using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>An array cord of another type.</summary>
internal sealed class OtherArrayCord : ChangeKind
{
    public override string Name => "other-array-cord";

    public override string Title => "an array cord of another type";

    public override bool MayClear(Rule rule) => false;

    public override IEnumerable<Change> AtPart(ChangeContext context, int part) =>
        context.Plant.Parts[part].Kind == "array cord" ? OfType(this, context, part, "cord") : [];

    /// <summary>The cable in every other type that its ferrules have.</summary>
    internal static IEnumerable<Change> OfType(ChangeKind kind, ChangeContext context, int part, string noun)
    {
        Part cable = context.Plant.Parts[part];
        foreach (string type in ArrayMap.NamesFor(cable.Shape.Ports[0].Face.Rows))
        {
            string text = $"put {ChangeWords.A(type)} {noun} in the place of {ChangeWords.Name(context.Plant, part)}";
            if (context.Alter(kind, part, text, PartWork.Replace(cable), type, new Setting("type", type)) is { Patch.IsEmpty: false } change)
                yield return change;
        }
    }
}
