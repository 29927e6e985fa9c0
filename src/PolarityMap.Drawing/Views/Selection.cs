using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views;

/// <summary>What to choose of a plant; every part of it narrows the choice.</summary>
public sealed record Choice
{
    /// <summary>Only strands that touch this network (an index into the plant's networks); -1 for all.</summary>
    public int Network { get; init; } = -1;

    /// <summary>Only strands that pass this part; -1 for all.</summary>
    public int Part { get; init; } = -1;

    /// <summary>Only the strands of this link (an index into the plant's links); -1 for all.</summary>
    public int Link { get; init; } = -1;

    /// <summary>Only the strand of this number; 0 for all.</summary>
    public int Strand { get; init; }

    /// <summary>Only strands that a finding with this code is about; null for all.</summary>
    public string? Finding { get; init; }

    /// <summary>Also strands that no interface is on.</summary>
    public bool WithDark { get; init; }

    /// <summary>True when nothing narrows the choice.</summary>
    public bool IsWhole => Network < 0 && Part < 0 && Link < 0 && Strand == 0 && Finding is null;
}

/// <summary>The strands chosen of a plant, in the order of their numbers, and the findings about them.</summary>
public sealed class Selection
{
    private Dictionary<int, List<int>>? _findingsOf;

    private Selection(int[] strands, IReadOnlyList<Finding> findings, string words, Choice choice)
    {
        Strands = strands;
        Findings = findings;
        Words = words;
        Choice = choice;
    }

    /// <summary>Strands as the traced plant counts them, in the order of the numbers they are shown by.</summary>
    public IReadOnlyList<int> Strands { get; }

    /// <summary>Findings about these strands; of the whole plant also those that are about no strand.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>What was chosen, such as <c>Network lighting, part LX-T</c>; empty for the whole plant.</summary>
    public string Words { get; }

    public Choice Choice { get; }

    /// <summary>Chooses; without light or a finding on it a strand is chosen only when dark ones are wanted.</summary>
    public static Selection Of(TracedPlant traced, IReadOnlyList<Finding> findings, Choice choice)
    {
        var faulty = new HashSet<int>();
        foreach (Finding finding in findings)
            faulty.UnionWith(finding.Strands);
        HashSet<int>? only = Only(traced, findings, choice);
        var chosen = new List<int>();
        for (int strand = 0; strand < traced.Strands.Count; strand++)
        {
            bool wanted = traced.IsActive(strand) || faulty.Contains(strand) || (choice.WithDark && traced.Strands[strand].Length > 1);
            if (wanted && (only is null || only.Contains(strand)) && Touches(traced, strand, choice))
                chosen.Add(strand);
        }

        int[] strands = [.. chosen];
        Array.Sort(strands, (a, b) => traced.NumberOf(a).CompareTo(traced.NumberOf(b)));
        return new Selection(strands, About(findings, strands, choice), WordsOf(traced, choice), choice);
    }

    /// <summary>The same choice narrowed to some of its strands, with the findings about them.</summary>
    /// <param name="strands">The strands kept.</param>
    /// <param name="words">What they are, where the choice's own words do not say it.</param>
    public Selection Narrowed(IReadOnlyList<int> strands, string? words = null)
    {
        if (Findings.Count == 0)
            return new Selection([.. strands], [], words ?? Words, Choice);

        // Found from the strands: a set of many sheets asks for the few findings of each.
        _findingsOf ??= FindingsByStrand();
        var found = new SortedSet<int>();
        foreach (int strand in strands)
        {
            if (_findingsOf.TryGetValue(strand, out List<int>? own))
                found.UnionWith(own);
        }

        return new Selection([.. strands], [.. found.Select(f => Findings[f])], words ?? Words, Choice);
    }

    /// <summary>For each strand the findings about it, by their places in <see cref="Findings"/>.</summary>
    private Dictionary<int, List<int>> FindingsByStrand()
    {
        var byStrand = new Dictionary<int, List<int>>();
        for (int i = 0; i < Findings.Count; i++)
        {
            foreach (int strand in Findings[i].Strands)
            {
                if (!byStrand.TryGetValue(strand, out List<int>? own))
                    byStrand[strand] = own = [];
                own.Add(i);
            }
        }

        return byStrand;
    }

    /// <summary>A finding without a strand belongs to the plant as a whole and stands in words only.</summary>
    private static IReadOnlyList<Finding> About(IReadOnlyList<Finding> findings, IReadOnlyList<int> strands, Choice choice)
    {
        if (findings.Count == 0)
            return findings;
        var drawn = new HashSet<int>(strands);
        return [.. findings.Where(f => choice.Finding is { } code && f.Rule.Code != code ? false : f.Strands.Count == 0 ? choice.IsWhole || choice.Finding is not null : f.Strands.Any(drawn.Contains))];
    }

    private static HashSet<int>? Only(TracedPlant traced, IReadOnlyList<Finding> findings, Choice choice)
    {
        HashSet<int>? only = null;
        if (choice.Link >= 0)
            Narrow(StrandsOfLink(traced, choice.Link));
        if (choice.Finding is { } code)
            Narrow(findings.Where(f => f.Rule.Code == code).SelectMany(f => f.Strands));
        if (choice.Strand > 0)
            Narrow(Enumerable.Range(0, traced.Strands.Count).Where(s => traced.NumberOf(s) == choice.Strand));
        return only;

        void Narrow(IEnumerable<int> strands)
        {
            if (only is null)
                only = [.. strands];
            else
                only.IntersectWith(strands);
        }
    }

    /// <summary>The strands that begin or end at either end of a link: where it is wrong, they are not the same at both.</summary>
    public static IEnumerable<int> StrandsOfLink(TracedPlant traced, int link)
    {
        foreach (Core.Plants.LinkEnd end in (Core.Plants.LinkEnd[])[traced.Plant.Links[link].From, traced.Plant.Links[link].To])
        {
            for (int position = 1; position <= traced.Plant.Port(end.Port).PositionCount; position++)
            {
                int p = traced.Graph.PositionOf(end.Port, position);
                if (traced.Graph.LaneAt(p) is { } lane && (end.Lane == 0 || lane.Group == end.Lane))
                    yield return traced.StrandOf(p);
            }
        }
    }

    private static bool Touches(TracedPlant traced, int strand, Choice choice)
    {
        if (choice.Network < 0 && choice.Part < 0)
            return true;
        bool network = choice.Network < 0, part = choice.Part < 0;
        foreach (int position in traced.Strands[strand])
        {
            int at = traced.Graph.PartOf(position);
            network |= traced.Plant.Parts[at].Network == choice.Network;
            part |= at == choice.Part;
        }

        return network && part;
    }

    private static string WordsOf(TracedPlant traced, Choice choice)
    {
        var words = new List<string>();
        if (choice.Network >= 0)
            words.Add($"network {traced.Plant.Networks[choice.Network].Name}");
        if (choice.Part >= 0)
            words.Add($"part {traced.Plant.Parts[choice.Part].Name}");
        if (choice.Link >= 0)
            words.Add($"link {traced.Plant.Address(traced.Plant.Links[choice.Link].From)} to {traced.Plant.Address(traced.Plant.Links[choice.Link].To)}");
        if (choice.Strand > 0)
            words.Add($"strand {choice.Strand}");
        if (choice.Finding is { } code)
            words.Add($"finding {code}");
        string all = string.Join(", ", words);
        return all.Length == 0 ? all : char.ToUpperInvariant(all[0]) + all[1..];
    }
}
