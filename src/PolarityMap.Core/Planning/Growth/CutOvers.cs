using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>What is opened and made together.</summary>
/// <param name="Links">The links that go over.</param>
/// <param name="Opened">What is opened.</param>
/// <param name="Made">What is made.</param>
public sealed record CutOver(IReadOnlyList<int> Links, IReadOnlyList<Joint> Opened, IReadOnlyList<Joint> Made);

/// <summary>
/// Divides the joints to open and to make into the smallest groups that leave no link dark from one group to the next, and puts
/// these in an order in which every port is free when it is needed. Links whose joints depend on each other in a circle go over
/// together. Every link that changes is then dark in one group alone, which is the least that can be.
/// </summary>
public sealed class CutOvers
{
    private readonly List<Joint> _opened;
    private readonly List<Joint> _made;
    private readonly int[] _groupOf;
    private readonly Dictionary<PortRef, int> _openedAt = [];
    private readonly List<int>[] _needs;

    /// <param name="opened">The joints before that are not there afterwards.</param>
    /// <param name="made">The joints afterwards that were not there before.</param>
    /// <param name="links">For each link that goes over, its number with the joints that carried it and those that will.</param>
    /// <param name="ended">For each link that ends for good the joints that carried it: once one is opened, all of them are.</param>
    /// <param name="lit">
    /// For each link that goes over or is new the joints that will carry it, and those of them at interfaces: these are made last, so
    /// that no transmitter shines into an open end.
    /// </param>
    /// <param name="isHeld">True for a plug of a cord whose other end stays in an interface, so that it is opened and made in one group.</param>
    public CutOvers(IReadOnlyList<Joint> opened, IReadOnlyList<Joint> made, IReadOnlyList<(int Link, HashSet<Joint> Before, HashSet<Joint> After)> links, IReadOnlyList<HashSet<Joint>> ended, IReadOnlyList<(HashSet<Joint> Way, HashSet<Joint> AtInterfaces)> lit, Func<PortRef, bool>? isHeld = null)
    {
        (_opened, _made) = ([.. opened], [.. made]);
        for (int o = 0; o < opened.Count; o++)
        {
            foreach (PortRef port in opened[o].Ports)
                _openedAt[port] = o;
        }

        _needs = [.. made.Select(m => m.Ports.Where(_openedAt.ContainsKey).Select(p => _openedAt[p]).Distinct().ToList())];
        var carries = links.SelectMany(l => l.Before).Concat(ended.SelectMany(e => e)).ToHashSet();
        bool[] idle = [.. opened.Select(o => !carries.Contains(o))];
        _groupOf = Joined(links, idle, isHeld);
        Order(links, ended, lit, idle);
    }

    /// <summary>What touches no link: idle joints that are opened and everything that can be made with their ports.</summary>
    public CutOver First { get; private set; } = null!;

    /// <summary>The groups in order.</summary>
    public IReadOnlyList<CutOver> Groups { get; private set; } = [];

    /// <summary>What is opened last, when nothing needs it.</summary>
    public IReadOnlyList<Joint> Last { get; private set; } = [];

    /// <summary>For each opened and then each made joint the number of its group, equal for those of links in common.</summary>
    private int[] Joined(IReadOnlyList<(int Link, HashSet<Joint> Before, HashSet<Joint> After)> links, bool[] idle, Func<PortRef, bool>? isHeld)
    {
        int[] up = [.. Enumerable.Range(0, _opened.Count + _made.Count)];
        int Root(int n)
        {
            while (up[n] != n)
                n = up[n] = up[up[n]];
            return n;
        }

        var opened = _opened.Select((j, i) => (j, i)).ToDictionary(p => p.j, p => p.i);
        var made = _made.Select((j, i) => (j, i)).ToDictionary(p => p.j, p => p.i);

        // What several links pass and nothing needs waits until the last of them has gone over.
        var wanted = _needs.SelectMany(n => n).ToHashSet();
        var passed = links.SelectMany(l => l.Before).GroupBy(j => j).ToDictionary(g => g.Key, g => g.Count());
        for (int m = 0; m < _made.Count && isHeld is not null; m++)
        {
            foreach (int o in _made[m].Ports.Where(p => _openedAt.ContainsKey(p) && isHeld(p)).Select(p => _openedAt[p]).Where(o => !idle[o]))
                up[Root(m + _opened.Count)] = Root(o);
        }

        foreach ((_, HashSet<Joint> before, HashSet<Joint> after) in links)
        {
            int[] of =
            [
                .. before.Where(opened.ContainsKey).Where(j => passed[j] == 1 || wanted.Contains(opened[j])).Select(j => opened[j]),
                .. after.Where(made.ContainsKey).Select(j => made[j]).Where(m => _needs[m].Any(o => !idle[o])).Select(m => m + _opened.Count),
            ];
            for (int i = 1; i < of.Length; i++)
                up[Root(of[i])] = Root(of[0]);
        }

        return [.. up.Select(Root)];
    }

    private void Order(IReadOnlyList<(int Link, HashSet<Joint> Before, HashSet<Joint> After)> links, IReadOnlyList<HashSet<Joint>> ended, IReadOnlyList<(HashSet<Joint> Way, HashSet<Joint> AtInterfaces)> lit, bool[] idle)
    {
        bool[] early = [.. _needs.Select(n => n.All(o => idle[o]))];
        bool[] wanted = [.. _opened.Select(_ => false)];
        for (int m = 0; m < _made.Count; m++)
            _needs[m].ForEach(o => wanted[o] = true);

        var passed = links.SelectMany(l => l.Before).GroupBy(j => j).ToDictionary(g => g.Key, g => g.Count());

        // Groups that links go over in, by the first link.
        var openedOf = _opened.Select((j, i) => (j, i)).ToDictionary(p => p.j, p => p.i);
        var group = new Dictionary<int, int>();
        var linksOf = new List<List<int>>();
        foreach ((int link, HashSet<Joint> before, _) in links)
        {
            int[] own = [.. before.Where(openedOf.ContainsKey).Select(j => openedOf[j]).Where(o => passed[_opened[o]] == 1 || wanted[o])];
            if (own.Length == 0)
                continue;
            if (!group.TryGetValue(_groupOf[own[0]], out int number))
            {
                group[_groupOf[own[0]]] = number = linksOf.Count;
                linksOf.Add([]);
            }

            linksOf[number].Add(link);
        }

        int Of(int joint) => group.GetValueOrDefault(_groupOf[joint], -1);
        var after = new HashSet<int>[linksOf.Count];
        for (int g = 0; g < after.Length; g++)
            after[g] = [];
        for (int m = 0; m < _made.Count; m++)
        {
            if (early[m] || Of(m + _opened.Count) is not (>= 0 and int own))
                continue;
            after[own].UnionWith(_needs[m].Select(Of).Where(g => g >= 0 && g != own));
        }

        List<List<int>> circles = Circles.InOrder(after);
        int[] place = new int[after.Length];
        for (int c = 0; c < circles.Count; c++)
            circles[c].ForEach(g => place[g] = c);
        int PlaceOf(int joint) => Of(joint) is >= 0 and int g ? place[g] : -1;

        // What no link that goes over decides comes when its ports are free; what only links that end decide, first of all.
        int[] openedIn = [.. Enumerable.Range(0, _opened.Count).Select(PlaceOf)];
        int[] madeIn = new int[_made.Count];
        for (int m = 0; m < _made.Count; m++)
        {
            int at = PlaceOf(m + _opened.Count);
            if (at < 0)
                at = _needs[m].Select(o => openedIn[o]).DefaultIfEmpty(-1).Max();
            madeIn[m] = early[m] ? int.MinValue : at;
        }

        Wait(lit, madeIn, early);
        First = new CutOver([], [.. _opened.Where((_, o) => idle[o] && wanted[o])], [.. _made.Where((_, m) => early[m])]);

        int[] neededIn = [.. _opened.Select(_ => int.MaxValue)];
        for (int m = 0; m < _made.Count; m++)
        {
            foreach (int o in _needs[m].Where(o => !early[m]))
                neededIn[o] = Math.Min(neededIn[o], madeIn[m]);
        }

        End(ended, openedOf, openedIn, neededIn);
        var groups = new List<CutOver>();
        var last = new HashSet<Joint>();
        for (int c = -1; c < circles.Count; c++)
        {
            Joint[] open = [.. _opened.Where((_, o) => !(idle[o] && wanted[o]) && (openedIn[o] == c && c >= 0 || (openedIn[o] < 0 && neededIn[o] == c)))];
            Joint[] make = [.. _made.Where((_, m) => !early[m] && madeIn[m] == c)];
            if (make.Length == 0 && c >= 0 && !_opened.Select((j, o) => (j, o)).Any(p => neededIn[p.o] < int.MaxValue && open.Contains(p.j)))
                last.UnionWith(open);
            else if (open.Length + make.Length > 0)
                groups.Add(new CutOver(c < 0 ? [] : [.. circles[c].SelectMany(g => linksOf[g]).Order()], open, make));
        }

        Groups = groups;
        Last = [.. _opened.Where((_, o) => !(idle[o] && wanted[o]) && openedIn[o] < 0 && neededIn[o] == int.MaxValue), .. _opened.Where(last.Contains)];
    }

    /// <summary>Joints at interfaces wait for the last of the others of their link.</summary>
    private void Wait(IReadOnlyList<(HashSet<Joint> Way, HashSet<Joint> AtInterfaces)> lit, int[] madeIn, bool[] early)
    {
        var made = _made.Select((j, i) => (j, i)).ToDictionary(p => p.j, p => p.i);
        foreach ((HashSet<Joint> way, HashSet<Joint> atInterfaces) in lit)
        {
            int last = way.Where(made.ContainsKey).Select(j => madeIn[made[j]]).DefaultIfEmpty(int.MinValue).Max();
            foreach (Joint joint in atInterfaces.Where(j => made.ContainsKey(j)))
            {
                madeIn[made[joint]] = last;
                early[made[joint]] &= last == int.MinValue;
            }
        }
    }

    /// <summary>A link that ends is unplugged as a whole when its first joint is opened, so that no transmitter shines into an open end.</summary>
    private static void End(IReadOnlyList<HashSet<Joint>> ended, Dictionary<Joint, int> opened, int[] openedIn, int[] neededIn)
    {
        int[][] ways = [.. ended.Select(e => e.Where(opened.ContainsKey).Select(j => opened[j]).ToArray())];
        for (bool changed = true; changed;)
        {
            changed = false;
            foreach (int[] way in ways)
            {
                int first = way.Select(o => openedIn[o] >= 0 ? openedIn[o] : neededIn[o]).DefaultIfEmpty(int.MaxValue).Min();
                foreach (int o in way.Where(o => openedIn[o] < 0 && neededIn[o] > first))
                {
                    neededIn[o] = first;
                    changed = true;
                }
            }
        }
    }
}
