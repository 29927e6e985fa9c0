namespace PolarityMap.Core.Planning;

/// <summary>Tells which outlets give a part a name that another has already.</summary>
internal static class NameRefusal
{
    /// <summary>The refusal, at the outlets that are named so; at all of them where none is.</summary>
    /// <param name="planned">The plant.</param>
    /// <param name="twice">The name that two parts would have.</param>
    public static Refusal Of(PlannedPlant planned, string twice)
    {
        Brief brief = planned.Brief;
        string[] letters = ["", .. brief.Networks.Select(n => n.Label + "-")];
        BriefOutlets? named = brief.Outlets.FirstOrDefault(o => letters.Any(l => Holds(o.Name.Around(l), twice)))
            ?? brief.Outlets.FirstOrDefault(o => Enumerable.Range(0, o.Name.Count).Any(i => twice.Contains(o.Name.At(i), StringComparison.Ordinal)));
        return new Refusal(named is null ? "outlets" : $"outlets.{named.Name}", RefusalCode.Names, $"two parts would be named {twice}");
    }

    private static bool Holds(PlannedName names, string name) => Enumerable.Range(0, names.Count).Any(i => names.At(i) == name);
}
