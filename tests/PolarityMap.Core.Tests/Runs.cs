namespace PolarityMap.Core.Tests;

/// <summary>
/// A plant written as runs, as a document would. The same plant can be written from its other end: every run then names its
/// stops backwards, so that cables are entered at what was their far end, and runs, parts and links stand in reverse order.
/// </summary>
internal sealed class Runs
{
    private readonly List<(string Name, string Kind, Action<Core.Parts.AttributeValues>? Set)> _parts = [];
    private readonly List<string[]> _runs = [];
    private readonly List<(string From, string To)> _links = [];

    public Runs Part(string name, string kind, Action<Core.Parts.AttributeValues>? set = null)
    {
        _parts.Add((name, kind, set));
        return this;
    }

    /// <summary>
    /// A run of stops. <c>PART/PORT</c> is a port, <c>@PART/PORT</c> an adapter between its neighbours, and <c>PART</c> a
    /// cable that is entered at its near end and left at its far end.
    /// </summary>
    public Runs Run(params string[] stops)
    {
        _runs.Add(stops);
        return this;
    }

    public Runs Link(string from, string to)
    {
        _links.Add((from, to));
        return this;
    }

    /// <summary>The plant, written from left to right or, with <paramref name="backwards"/>, from right to left.</summary>
    public Bench Write(bool backwards = false)
    {
        var bench = new Bench();
        foreach ((string name, string kind, Action<Core.Parts.AttributeValues>? set) in InOrder(_parts, backwards))
            bench.Add(name, kind, set);
        foreach (string[] run in InOrder(_runs, backwards))
            Mate(bench, [.. InOrder(run, backwards)]);
        foreach ((string from, string to) in InOrder(_links, backwards))
            bench.Link(backwards ? to : from, backwards ? from : to);
        return bench;
    }

    private static void Mate(Bench bench, string[] stops)
    {
        for (int i = 0; i + 1 < stops.Length; i++)
        {
            bool adapter = stops[i + 1].StartsWith('@');
            string next = stops[adapter ? i + 2 : i + 1];
            bench.Mate(
                stops[i].Contains('/') ? stops[i] : stops[i] + "/far",
                next.Contains('/') ? next : next + "/near",
                through: adapter ? stops[i + 1][1..] : null);
            i += adapter ? 1 : 0;
        }
    }

    private static IEnumerable<T> InOrder<T>(IReadOnlyList<T> items, bool backwards) => backwards ? items.Reverse() : items;
}
