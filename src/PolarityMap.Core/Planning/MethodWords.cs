using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Planning;

/// <summary>What a method comes to in one plan: only what the plan has is told.</summary>
internal static class MethodWords
{
    /// <summary>The trunks, cassettes, cords and keys of a plan, such as <c>a reversed trunk, one kind of cassette and A-to-B cords only; opposed keys</c>.</summary>
    public static string Of(Brief brief, PlanCandidate candidate)
    {
        (PlanMethod method, ArrayBase array) = (candidate.Method, candidate.Array);
        string trunk = array.IsOneRow ? method.TrunkWords : $"a {method.TwoRowTrunk} trunk";
        int[] pairs = Segments(brief, parallel: false), arrays = Segments(brief, parallel: true);
        string duplex = pairs.Length == 0 ? "" : $"{(method.HasOneCassette ? ", one kind of cassette and " : ", a second kind of cassette, or the same one upside down, at the far end of a segment, and ")}{DuplexCords(method, pairs)}";
        string parallel = arrays.Length == 0 ? "" : $"{(pairs.Length == 0 ? ", " : "; parallel links take ")}{ArrayCords(method, array, arrays)}";
        string keys = method.Keys == Keying.Aligned ? "aligned keys" : brief.IsAngled ? "opposed keys, so that angled connectors fit" : "opposed keys";
        return $"{trunk}{duplex}{parallel}; {keys}";
    }

    /// <summary>How many segments lie in series on the ways of duplex or of parallel links: 1, 2, both or none.</summary>
    private static int[] Segments(Brief brief, bool parallel) =>
    [
        .. brief.Outlets.Where(o => o.Links.Where((links, n) => links > 0 && brief.Networks[n].Application.IsParallel == parallel).Any())
            .Select(brief.SegmentsTo).Distinct().Order(),
    ];

    private static string DuplexCords(PlanMethod method, int[] segments) => (segments, segments.Any(s => method.LastCord(s) != "A-to-B")) switch
    {
        ([1], true) => "A-to-B cords at the switch, A-to-A cords at the device",
        (_, true) => "A-to-B cords, but A-to-A cords at devices that one segment leads to",
        ([2], false) when method.LastCord(1) != "A-to-B" => "A-to-B cords only, as two segments lie in series; a device patched straight to the zone box later would need an A-to-A cord",
        _ => "A-to-B cords only",
    };

    private static string ArrayCords(PlanMethod method, ArrayBase array, int[] segments)
    {
        string[] words = [.. segments.Select(s => method.ArrayCords(array, s) is var (first, last) && first == last ? $"{first} array cords at both ends" : $"{first} array cords at the switch and {last} ones at the device")];
        return words.Distinct().Count() == 1 ? words[0] : $"{words[0]} over one segment, {words[1]} over two";
    }
}
