using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>The matings of a plant as chains, each from something fixed over cables to the next fixed thing.</summary>
internal static class SketchChains
{
    /// <summary>
    /// The chains, as the ports that they come to: of a cable the end that is entered, of a panel the adapter. Those of links
    /// come first, then the others in the order of the plant. A cable is entered at its near end.
    /// </summary>
    public static IEnumerable<IReadOnlyList<PortRef>> Of(Plant plant)
    {
        var at = new Dictionary<PortRef, Mating>();
        foreach (Mating mating in plant.Matings)
        {
            at[mating.A] = mating;
            at[mating.B] = mating;
        }

        var open = plant.OpenPlugs.ToDictionary(o => o.Plug);
        var done = new HashSet<Mating>(ReferenceEqualityComparer.Instance);
        var waited = new HashSet<PortRef>();
        foreach (PortRef start in plant.Links.Select(l => l.From.Port).Concat(plant.Matings.Select(m => IsCable(m.A) ? m.B : m.A)).Where(p => !IsCable(p)))
        {
            if (Walk(start) is { Count: > 1 } chain)
                yield return chain;
        }

        // Cables of which an end waits in an adapter, or is in nothing at all.
        foreach (PortRef start in plant.OpenPlugs.Select(o => o.Plug).Concat(plant.Matings.SelectMany(m => new[] { m.A, m.B }).Select(Other)))
        {
            if (!waited.Contains(start) && !(at.TryGetValue(start, out Mating? taken) && done.Contains(taken)))
            {
                waited.Add(start);
                List<PortRef> chain = open.TryGetValue(start, out OpenPlug? plug) ? [plug.Adapter, start] : [start];
                Follow(chain, Other(start));
                if (chain.Count > 1)
                    yield return Turned(chain);
            }
        }

        bool IsCable(PortRef port) => plant.Parts[port.Part].Shape.IsCable;

        PortRef Other(PortRef end) => end with { Port = end.Port ^ 1 };

        List<PortRef> Walk(PortRef start)
        {
            var chain = new List<PortRef> { start };
            Follow(chain, start);
            return Turned(chain);
        }

        void Follow(List<PortRef> chain, PortRef port)
        {
            while (at.TryGetValue(port, out Mating? mating) && done.Add(mating))
            {
                PortRef next = mating.A == port ? mating.B : mating.A;
                if (mating.Through is { } adapter)
                    chain.Add(adapter);
                chain.Add(next);
                if (!IsCable(next))
                    return;
                port = Other(next);
            }

            if (open.TryGetValue(port, out OpenPlug? plug) && waited.Add(port))
                chain.Add(plug.Adapter);
        }

        // Cables are told from their near ends.
        List<PortRef> Turned(List<PortRef> chain)
        {
            if (!chain.Any(p => IsCable(p) && p.Port % 2 == 1))
                return chain;
            chain.Reverse();
            return [.. chain.Select(p => IsCable(p) ? Other(p) : p)];
        }
    }
}
