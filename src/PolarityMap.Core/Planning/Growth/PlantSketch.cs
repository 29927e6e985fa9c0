using System.Globalization;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>A plant as a person would write it: its parts in ranges, its runs in step. The inverse of <see cref="PlantAssembly"/>.</summary>
internal sealed class PlantSketch
{
    private readonly Plant _plant;
    private readonly int[] _networks;
    private readonly SketchTypes _types;
    private readonly Dictionary<int, (PlannedFamily Family, int Index)> _places = [];
    private readonly Dictionary<int, PlannedSection> _sections = [];
    private readonly List<PlannedSection> _inOrder = [];

    private PlantSketch(Plant plant, PartDefaults defaults)
    {
        _plant = plant;
        var used = plant.Parts.SelectMany(p => p.PortNetworks.Append(p.Network)).Where(n => n >= 0).ToHashSet();
        _networks = new int[plant.Networks.Count];
        for (int n = 0, next = 0; n < _networks.Length; n++)
            _networks[n] = used.Contains(n) ? next++ : -1;
        _types = new SketchTypes(plant, defaults);
    }

    /// <summary>The sketch.</summary>
    /// <param name="plant">The plant. Parts have attributes, and cables run from their near to their far end.</param>
    /// <param name="brief">What it meets.</param>
    /// <param name="candidate">How what is new in it was planned.</param>
    /// <returns>The sketch; null where the plant has what ranges and runs of whole ports do not say.</returns>
    public static PlannedPlant? Of(Plant plant, Brief brief, PlanCandidate candidate)
    {
        if (plant.Parts.Any(p => p.Values is null || p.IsAsBuilt || (p.Shape.IsCable && p.Kind != "trunk" && p.Shape.Ports.Count != 2)) || plant.Clashes.Count > 0
            || plant.Matings.Any(m => m.PositionOfA > 0 || m.PositionOfB > 0) || plant.Links.Any(l => l.From.Lane > 0 || l.To.Lane > 0))
            return null;
        bool pinned = plant.Parts.Any(p => p.Values?.Defaults.TrunksArePinned == true);
        var defaults = new PartDefaults { Fibre = brief.Fibre, TrunksArePinned = pinned };
        var sketch = new PlantSketch(plant, defaults);
        sketch.Parts();
        sketch.Runs();
        sketch.Links();
        return new PlannedPlant
        {
            Brief = brief,
            Candidate = candidate,
            Defaults = defaults,
            Practice = plant.Practice,
            Networks = [.. plant.Networks.Where((_, n) => sketch._networks[n] >= 0)],
            Types = sketch._types.InOrder,
            Sections = sketch._inOrder,
        };
    }

    private PlannedSection Section(int network)
    {
        if (!_sections.TryGetValue(network, out PlannedSection? section))
        {
            _sections[network] = section = new PlannedSection(network < 0 ? "between the networks" : _plant.Networks[network].Name);
            _inOrder.Add(section);
        }

        return section;
    }

    private void Parts()
    {
        var alike = new List<(string Prefix, string Suffix, int Network, List<(int Number, int Part)> Parts)>();
        var index = new Dictionary<(string, string, int), int>();
        for (int p = 0; p < _plant.Parts.Count; p++)
        {
            Part part = _plant.Parts[p];
            if (part.IsInline)
                continue;
            (string prefix, int number, string suffix) = Divided(part.Name);
            if (!index.TryGetValue((prefix, suffix, part.Network), out int at))
            {
                index[(prefix, suffix, part.Network)] = at = alike.Count;
                alike.Add((prefix, suffix, part.Network, []));
            }

            alike[at].Parts.Add((number, p));
        }

        foreach ((string prefix, string suffix, int network, List<(int Number, int Part)> parts) in alike.OrderBy(a => a.Network < 0).ThenBy(a => a.Network))
        {
            parts.Sort();
            for (int first = 0; first < parts.Count;)
            {
                int next = first + 1;
                while (next < parts.Count && parts[next].Number == parts[next - 1].Number + 1)
                    next++;
                bool isNumbered = parts[first].Number >= 0;
                PlannedName name = isNumbered ? new PlannedName(prefix, parts[first].Number, next - first, suffix) : PlannedName.One(prefix);
                PlannedFamily family = PlanDraft.Family(Section(network), name);
                Lines(family, [.. parts[first..next].Select(p => p.Part)]);
                first = next;
            }
        }
    }

    private void Lines(PlannedFamily family, int[] parts)
    {
        for (int i = 0; i < parts.Length; i++)
            _places[parts[i]] = (family, i);
        for (int first = 0; first < parts.Length;)
        {
            PlannedPart line = Line(parts[first], family.Name.Slice(first, 1));
            int next = first + 1;
            while (next < parts.Length && IsSame(line, Line(parts[next], line.Name)))
                next++;
            family.Add(line with { Name = family.Name.Slice(first, next - first) });
            first = next;
        }
    }

    private PlannedPart Line(int part, PlannedName name)
    {
        Part of = _plant.Parts[part];
        return new PlannedPart(name, _types.Of(of))
        {
            Network = of.Network < 0 ? -1 : _networks[of.Network],
            PortNetworks = [.. of.PortNetworks.Select(n => _networks[n])],
            Room = of.Room,
            Note = of.Note,
            Spare = [.. of.SpareLegs.Order()],
        };
    }

    private static bool IsSame(PlannedPart a, PlannedPart b) => a.Type == b.Type && a.Network == b.Network && a.PortNetworks.SequenceEqual(b.PortNetworks)
        && a.Room == b.Room && a.Note == b.Note && a.Spare.SequenceEqual(b.Spare);

    /// <summary>A name around its last number; -1 where it has none that a range would write.</summary>
    private static (string Prefix, int Number, string Suffix) Divided(string name)
    {
        int end = name.Length;
        while (end > 0 && !char.IsAsciiDigit(name[end - 1]))
            end--;
        int start = end;
        while (start > 0 && char.IsAsciiDigit(name[start - 1]))
            start--;
        string digits = name[start..end];
        return digits.Length is 0 or > 8 || (digits.Length > 1 && digits[0] == '0')
            ? (name, -1, "")
            : (name[..start], int.Parse(digits, CultureInfo.InvariantCulture), name[end..]);
    }

    private void Runs()
    {
        var builder = new Dictionary<PlannedSection, SketchRun>();
        foreach (IReadOnlyList<PortRef> chain in SketchChains.Of(_plant))
        {
            PortRef named = chain.FirstOrDefault(p => !_plant.Parts[p.Part].IsInline && _plant.Parts[p.Part].Network >= 0, chain[0]);
            PlannedSection section = Section(_plant.Parts[named.Part].Network);
            if (!builder.TryGetValue(section, out SketchRun? run))
                builder[section] = run = new SketchRun(section.RunList);
            run.Add([.. chain.Select(Stop)]);
        }

        foreach (SketchRun run in builder.Values)
            run.End();
    }

    private SketchStop Stop(PortRef port)
    {
        Part part = _plant.Parts[port.Part];
        if (part.IsInline)
            return new SketchStop(null, default, "", _types.Of(part), part.Length ?? default);
        (PlannedFamily family, int index) = _places[port.Part];
        if (part.Shape.IsCable)
            return new SketchStop(family, new PlannedPort(index, part.Shape.Ports.Count == 2 ? 0 : (port.Port / 2) + 1), "", null, default);
        bool isNumbered = part.Shape.Ports[port.Port].Name == (port.Port + 1).ToString(CultureInfo.InvariantCulture);
        return new SketchStop(family, new PlannedPort(index, isNumbered ? port.Port + 1 : 0), isNumbered ? "" : part.Shape.Ports[port.Port].Name, null, default);
    }

    private void Links()
    {
        foreach (IGrouping<int, Link> links in _plant.Links.GroupBy(l => _plant.Parts[l.From.Port.Part].Network))
        {
            var rows = new List<PlannedRun>();
            var run = new SketchRun(rows);
            foreach (Link link in links)
                run.Add([Stop(link.From.Port), Stop(link.To.Port)]);
            run.End();
            foreach (PlannedRun row in rows)
                Section(links.Key).LinkList.Add(new PlannedLinks(row.Stops[0], row.Stops[1]));
        }
    }
}
