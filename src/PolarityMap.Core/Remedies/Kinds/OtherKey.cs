using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>
/// A cord whose ends carry the key codes of the ports that they go into, and none at an interface; or a housing that carries the
/// code of its cords.
/// </summary>
internal sealed class OtherKey : ChangeKind
{
    public override string Name => "other-key";

    public override string Title => "a cord or housing with another key code";

    public override bool MayClear(Rule rule) => rule.Code is "M07" or "S06";

    public override IEnumerable<Change> AtPart(ChangeContext context, int part)
    {
        Part keyed = context.Plant.Parts[part];
        if (keyed.Kind is "duplex cord" or "simplex cord")
            return Cord(context, part) is { } cord ? [cord] : [];
        return PartKinds.Find(keyed.Kind) is { } kind && kind.Has("keyed") && kind.Has("key") ? Housing(context, part) : [];
    }

    private Change? Cord(ChangeContext context, int part)
    {
        Part cord = context.Plant.Parts[part];
        string? near = CodeOfSocket(context, new PortRef(part, 0)), far = CodeOfSocket(context, new PortRef(part, 1));
        if (near is not null && far is not null && near != far)
            return null;
        string ends = (near, far) switch { (null, null) => "none", (_, null) => "near", (null, _) => "far", _ => "both" };
        string what = ends switch
        {
            "none" => "a cord with plain plugs",
            "both" => $"a cord keyed {near} at both ends",
            "near" => $"a cord keyed {near} {ChangeWords.In(context, new PortRef(part, 0))} and plain at its other end",
            _ => $"a cord keyed {far} {ChangeWords.In(context, new PortRef(part, 1))} and plain at its other end",
        };
        var settings = new List<Setting> { new("keyed", ends) };
        if ((near ?? far) is { } code && KeyNow(context, part) != code)
            settings.Add(new Setting("key", code));
        return context.Alter(this, part, $"put {what} in the place of {ChangeWords.Name(context.Plant, part)}", PartWork.Replace(cord), $"{ends} {near ?? far}", [.. settings]);
    }

    private IEnumerable<Change> Housing(ChangeContext context, int part)
    {
        Part housing = context.Plant.Parts[part];
        string place = $"in the place of {ChangeWords.Name(context.Plant, part)}";
        string noun = ChangeWords.A(ChangeWords.Noun(housing));
        var codes = new SortedSet<string>(StringComparer.Ordinal);
        for (int i = 0; i < housing.Shape.Ports.Count; i++)
        {
            if (PlugIn(context, new PortRef(part, i)) is { } plug && context.Plant.KeyOf(plug) is { } code)
                codes.Add(code);
        }

        foreach (string word in (string[])["yes", "no"])
        {
            string text = word == "yes" ? $"put {noun} with the keys of its networks {place}" : $"put {noun} with plain ports {place}";
            if (context.Alter(this, part, text, PartWork.Replace(housing), word, new Setting("keyed", word)) is { } change)
                yield return change;
        }

        if (codes.Count == 1 && context.Alter(this, part, $"put {noun} keyed {codes.Min} {place}", PartWork.Replace(housing), $"key {codes.Min}", new Setting("keyed", "yes"), new Setting("key", codes.Min!)) is { } keyed)
            yield return keyed;
    }

    /// <summary>The code of the port or adapter that a plug sits in; null where it is plain or nothing.</summary>
    private static string? CodeOfSocket(ChangeContext context, PortRef plug) =>
        ChangeWords.Socket(context, plug) is { } socket ? context.Plant.KeyOf(socket) : null;

    /// <summary>The code that a keyed end of the part has.</summary>
    private static string? KeyNow(ChangeContext context, int part)
    {
        Part keyed = context.Plant.Parts[part];
        return keyed.Key ?? (keyed.Network >= 0 ? context.Plant.Networks[keyed.Network].Key : null);
    }

    private static PortRef? PlugIn(ChangeContext context, PortRef port) =>
        context.Plugs.Of(port) is not { } mating ? null : mating.A == port ? mating.B : mating.A;
}
