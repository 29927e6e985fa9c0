using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>A cassette, outlet or harness of another wiring; a cassette may then come with the keys of its adapter the other way.</summary>
internal sealed class OtherWiring : ChangeKind
{
    public override string Name => "other-wiring";

    public override string Title => "a cassette or harness of another wiring";

    public override bool MayClear(Rule rule) => rule.Code is "M05" or "M06";

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part module = context.Plant.Parts[part];
        if (module.Kind is not ("cassette" or "outlet" or "harness") || module.Values is not { } values
            || module.Shape.Ports.FirstOrDefault(p => p.Face.Family == ConnectorFamily.Array) is not { } array)
            yield break;
        string? keysNow = module.Kind == "harness" ? null : values.Word("keys");
        foreach (string keys in keysNow is null ? [""] : (string[])[keysNow, keysNow == "aligned" ? "opposed" : "aligned"])
        {
            foreach (string wiring in Transition.NamesFor(array.Face.Rows))
            {
                if (Make(context, part, wiring, keys, keys != (keysNow ?? "")) is { } change)
                    yield return change;
            }
        }
    }

    private Change? Make(ChangeContext context, int part, string wiring, string keys, bool turned)
    {
        Part module = context.Plant.Parts[part];

        // The same wiring with other keys is an adapter turned, which is less work.
        if (turned && module.Values!.WiringList("wiring") is null && module.Values.Word("wiring") == wiring)
            return null;
        string text = $"put {ChangeWords.A(wiring)} {ChangeWords.Noun(module)}{(turned ? $" with {keys} keys" : "")} in the place of {ChangeWords.Name(context.Plant, part)}";
        Setting[] settings = turned ? [new("wiring", wiring), new("keys", keys)] : [new("wiring", wiring)];
        return context.Alter(this, part, text, PartWork.Replace(module), $"{wiring} {keys}", settings) is { Patch.IsEmpty: false } change ? change : null;
    }
}
