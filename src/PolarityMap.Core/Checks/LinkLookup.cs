using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>Finds links by the ports and strands of their ends. Findings ask, so a sound plant never makes one.</summary>
internal sealed class LinkLookup
{
    private readonly Plant _plant;
    private readonly Chains _at;
    private readonly Chains _on;
    private readonly Chains _touching;

    /// <param name="context">What is checked.</param>
    /// <param name="links">The links of the plant, each from the end at which its strands start.</param>
    public LinkLookup(CheckContext context, Link[] links)
    {
        _plant = context.Plant;
        _at = new Chains(_plant.PortCount);
        _on = new Chains(context.Traced.Strands.Count);
        _touching = new Chains(context.Traced.Strands.Count);
        var landings = new List<Landing>();
        for (int i = 0; i < links.Length; i++)
        {
            context.Land(links[i].From, landings);
            foreach (Landing landing in landings)
            {
                _on.Add(landing.Strand, i);
                _touching.Add(landing.Strand, i);
            }

            context.Land(links[i].To, landings);
            foreach (Landing landing in landings)
                _touching.Add(landing.Strand, i);
            _at.Add(_plant.NumberOf(links[i].From.Port), i);
            _at.Add(_plant.NumberOf(links[i].To.Port), i);
        }
    }

    /// <summary>The links that have a port at either end, as indices in order.</summary>
    public IEnumerable<int> At(PortRef port) => _at.Of(_plant.NumberOf(port));

    /// <summary>The links that start on a strand.</summary>
    public IEnumerable<int> On(int strand) => _on.Of(strand);

    /// <summary>The links that have a strand at either end.</summary>
    public IEnumerable<int> Touching(int strand) => _touching.Of(strand);

    /// <summary>For each of many keys a row of links, added in rising order and kept once each.</summary>
    private sealed class Chains
    {
        private readonly int[] _first;
        private readonly int[] _last;
        private readonly List<(int Link, int Next)> _items = [];

        public Chains(int keys)
        {
            _first = new int[keys];
            _last = new int[keys];
            Array.Fill(_first, -1);
            Array.Fill(_last, -1);
        }

        public void Add(int key, int link)
        {
            int last = _last[key];
            if (last >= 0 && _items[last].Link == link)
                return;
            if (last >= 0)
                _items[last] = (_items[last].Link, _items.Count);
            else
                _first[key] = _items.Count;
            _last[key] = _items.Count;
            _items.Add((link, -1));
        }

        public IEnumerable<int> Of(int key)
        {
            for (int i = _first[key]; i >= 0; i = _items[i].Next)
                yield return _items[i].Link;
        }
    }
}
