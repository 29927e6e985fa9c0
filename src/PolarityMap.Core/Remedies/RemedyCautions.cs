namespace PolarityMap.Core.Remedies;

/// <summary>What to mind when a remedy is carried out. Local codes come first.</summary>
public static class RemedyCautions
{
    /// <summary>For all work on fibre. Open ends: IEC 60825-2 practice (four public sources); cleaning: common practice.</summary>
    public const string Light =
        "Assume that every fibre is live: switch its light off before you unplug, cap open ends, and never look into one. " +
        "Clean and inspect each end face before you mate it. Local codes come first.";

    /// <summary>Where bare fibre is cut. Common practice.</summary>
    internal const string Shards = "Bare fibre breaks into sharp splinters: wear glasses, collect every piece, and keep food away. Mind the solvents.";

    /// <summary>What to mind for some changes, each thing once.</summary>
    public static IReadOnlyList<string> For(IEnumerable<Change> changes) => [Light, .. changes.Select(c => c.Kind.Caution).OfType<string>().Distinct()];
}
