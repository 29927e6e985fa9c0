using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Remedies;

/// <summary>What kinds of change ask of a plant, and every change they found, once.</summary>
public sealed class ChangeContext
{
    /// <summary>
    /// Up to so many plugs side by side each may change places with each. Where there are more, only changes are tried that lead
    /// a link to the port that it is meant to reach.
    /// </summary>
    public const int FewPorts = 8;

    private readonly DeviationContext _site;
    private readonly Dictionary<int, IReadOnlyList<Change>> _atPart = [];
    private readonly Dictionary<PortRef, IReadOnlyList<Change>> _atPort = [];
    private readonly Dictionary<ChangeId, Change> _known = [];
    private readonly Dictionary<Face, List<PortRef>> _free = [];
    private HashSet<PortRef>? _taken;

    public ChangeContext(CheckContext check)
    {
        Check = check;
        _site = new DeviationContext(check.Traced);
    }

    /// <summary>What the checker worked out of the plant.</summary>
    public CheckContext Check { get; }

    public TracedPlant Traced => Check.Traced;

    public Plant Plant => Traced.Plant;

    public StrandGraph Graph => Traced.Graph;

    /// <summary>Which mating each port is in.</summary>
    public PlugTable Plugs => _site.Plugs;

    /// <summary>Every change that was asked for so far, in the order of asking.</summary>
    public IReadOnlyCollection<Change> Known => _known.Values;

    /// <summary>Every change that makes a part another one, in the order of the catalogue.</summary>
    public IReadOnlyList<Change> AtPart(int part)
    {
        if (!_atPart.TryGetValue(part, out IReadOnlyList<Change>? known))
            _atPart[part] = known = Collect(kind => kind.AtPart(this, part));
        return known;
    }

    /// <summary>Every change to what is plugged in at a port, as far as there are few to choose from.</summary>
    public IReadOnlyList<Change> AtPort(PortRef port)
    {
        if (!_atPort.TryGetValue(port, out IReadOnlyList<Change>? known))
            _atPort[port] = known = Collect(kind => kind.AtPort(this, port));
        return known;
    }

    /// <summary>Every change of plugs that leads the light of one way into another.</summary>
    public IReadOnlyList<Change> Toward(IReadOnlyList<int> way, IReadOnlyList<int> meant) => Collect(kind => kind.Toward(this, way, meant));

    /// <summary>The plant with changes in it, its parts numbered as before; null when they cannot be laid over it.</summary>
    public Plant? Build(IEnumerable<Change> changes) => _site.Build(InOrder(changes).SelectMany(c => c.Differences));

    /// <summary>Changes in the order in which they are laid: parts first, then plugs, as a document's as-built section has them.</summary>
    public static IEnumerable<Change> InOrder(IEnumerable<Change> changes) => changes.OrderBy(c => c.Differences[0] switch
    {
        PartDiffers => 0,
        PlugsExchanged => 1,
        PlugMoved => 2,
        PlugPulled => 3,
        _ => 4,
    });

    /// <summary>The port or plug that meets a port, be it in an adapter or directly; null where nothing does.</summary>
    public PortRef? PartnerOf(PortRef port) => Plugs.PartnerOf(port);

    /// <summary>True when nothing sits in a port, nor in a position of it, and no run ever came to it.</summary>
    public bool IsFree(PortRef port) => !Check.IsMated(port) && Plugs.At(port) < 0 && !(_taken ??= Taken()).Contains(port);

    /// <summary>A change of an attribute or several of one part; null when there is no such attribute, nothing differs, or it cannot be built so.</summary>
    internal Change? Alter(ChangeKind kind, int part, string text, int minutes, string variant, params ReadOnlySpan<Setting> settings)
    {
        if (Differences(part, settings) is not { } differences || PatchOf(differences) is not { } patch)
            return null;
        return new Change(new ChangeId(ChangeCatalogue.IndexOf(kind), part, -1, variant), kind, [part], text, differences, patch, minutes) { Settings = [.. settings] };
    }

    /// <summary>
    /// Two changes of one part as one: a cord of the other type that also has the other key. Null where they are not of one part,
    /// or contradict each other.
    /// </summary>
    internal Change? Merged(Change one, Change other)
    {
        if (one.Settings.Count == 0 || other.Settings.Count == 0 || one.Parts is not [var part] || other.Parts is not [var same] || part != same)
            return null;
        Setting[] more = [.. other.Settings.Where(s => !one.Settings.Contains(s))];
        if (more.Any(m => one.Settings.Any(s => s.Attribute == m.Attribute)))
            return null;

        // The more work of the two has the other done with it: either way another part is put in the place.
        (Change first, Change second) = one.Minutes >= other.Minutes ? (one, other) : (other, one);
        return Alter(first.Kind, part, $"{first.Text}, and in the same go {second.Text}", first.Minutes, $"{first.Id.Variant} with {second.Id.Kind} {second.Id.Variant}", [.. one.Settings, .. more]);
    }

    /// <summary>Free ports of the plant that a plug of this face goes into; one more than few where there are more.</summary>
    internal IReadOnlyList<PortRef> FreeSockets(Face face)
    {
        if (_free.TryGetValue(face, out List<PortRef>? known))
            return known;
        _free[face] = known = [];
        for (int part = 0; part < Plant.Parts.Count; part++)
        {
            for (int i = 0; i < Plant.Parts[part].Shape.Ports.Count; i++)
            {
                var port = new PortRef(part, i);
                if (Plant.Port(port).Face != face || !ChangeWords.IsSocket(Plant, port) || !IsFree(port))
                    continue;
                known.Add(port);
                if (known.Count > FewPorts)
                    return known;
            }
        }

        return known;
    }

    /// <summary>A change of what is plugged where; null when it cannot be or changes nothing.</summary>
    internal Change? Replug(ChangeKind kind, PortRef at, PortRef with, IReadOnlyList<int> parts, string text, int minutes, params Difference[] differences)
    {
        if (PatchOf(differences) is not { IsEmpty: false } patch)
            return null;
        return new Change(new ChangeId(ChangeCatalogue.IndexOf(kind), Plant.NumberOf(at), Plant.NumberOf(with)), kind, parts, text, differences, patch, minutes);
    }

    /// <summary>Several changes of one kind done together, such as all cords of one line of the document; null when they do not go together.</summary>
    internal Change? Together(IReadOnlyList<Change> changes)
    {
        Difference[] differences = [.. changes.SelectMany(c => c.Differences)];
        if (PatchOf(differences) is not { } patch)
            return null;
        Change first = changes[0];
        var all = new Change(
            first.Id with { Variant = $"{first.Id.Variant} x{string.Join(',', changes.Select(c => c.Id.At))}" },
            first.Kind,
            [.. changes.SelectMany(c => c.Parts)],
            $"{first.Text}, and so at {changes.Count - 1} more of the same line",
            differences,
            patch,
            changes.Sum(c => c.Minutes))
        {
            Weight = changes.Sum(c => c.Weight),
        };
        return Once(all);
    }

    private GraphPatch? PatchOf(ReadOnlySpan<Difference> differences) => GraphPatch.Of(Traced, Plugs, differences);

    /// <summary>One difference for each attribute; the last of them has the part with all of them.</summary>
    private Difference[]? Differences(int index, ReadOnlySpan<Setting> settings)
    {
        Part before = Plant.Parts[index];
        if (PartKinds.Find(before.Kind) is not { } kind || before.Values is not { } values)
            return null;
        var changed = new AttributeValues(kind.AllAttributes, values.Defaults);
        var differing = new List<Setting>();
        foreach (Setting setting in settings)
        {
            if (!kind.Has(setting.Attribute))
                return null;
            setting.SetIn(changed);
            if (!setting.IsIn(values))
                differing.Add(setting);
        }

        if (differing.Count == 0)
            return null;
        changed.FillFrom(values);
        var faults = new List<AttributeFault>();
        if (kind.Build(changed, faults) is not { } shape || faults.Count > 0)
            return null;
        Part after = PartMaker.Make(before.Name, kind, changed, shape, before.Place, Plant.Networks) with { IsInline = before.IsInline };
        return [.. differing.Select(s => new PartDiffers(index, after, s.Attribute, s.Value))];
    }

    private Change[] Collect(Func<ChangeKind, IEnumerable<Change>> ask)
    {
        var all = new List<Change>();
        foreach (ChangeKind kind in ChangeCatalogue.All)
        {
            foreach (Change change in ask(kind))
                all.Add(Once(change));
        }

        return [.. all];
    }

    private Change Once(Change change) => _known.TryAdd(change.Id, change) ? change : _known[change.Id];

    /// <summary>Ports of which a position is taken, and those in which a plug waits or found no room.</summary>
    private HashSet<PortRef> Taken()
    {
        var taken = new HashSet<PortRef>();
        foreach (Mating mating in Plant.Matings)
        {
            taken.Add(mating.A);
            taken.Add(mating.B);
            if (mating.Through is { } through)
                taken.Add(through);
        }

        foreach (OpenPlug open in Plant.OpenPlugs)
            taken.UnionWith([open.Plug, open.Adapter]);
        foreach (PortClash clash in Plant.Clashes)
            taken.Add(clash.Port);
        return taken;
    }
}
