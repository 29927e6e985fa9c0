using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Binding;

/// <summary>
/// Puts plugs where an as-built section says that they sit, wherever they were before: in another port, waiting in an adapter,
/// hanging loose, or refused by a port that was taken. All of them are taken out before the first is put in, so that the order of
/// the entries does not matter.
/// </summary>
internal sealed class PlugBinder(NodeReader reader, PlantBuilder plant, AddressReader addresses, Joints joints, MatingIndex matings, Func<string, PortRef?> whole)
{
    private const string Between = " to ";
    private const string Expected = "a cable's plug and a port, such as 'CORD/far to K-1/4'";

    private readonly HashSet<PortRef> _named = [];

    /// <summary>For each port in which a single position is taken by a simplex plug, those positions.</summary>
    private Dictionary<PortRef, List<(int Mating, int Position)>>? _positions;

    private ProblemList Problems => reader.Problems;

    private sealed record Entry(PortRef Plug, PortRef Port, int Position, SourcePlace Place)
    {
        /// <summary>The mating that the plug was in, or -1.</summary>
        public int Mating { get; set; } = -1;
    }

    /// <param name="node">The list of entries.</param>
    /// <param name="counts">Counts a difference; false when there are too many.</param>
    public void Bind(YamlNode node, Func<SourcePlace, bool> counts)
    {
        var entries = new List<Entry>();
        foreach (YamlNode item in reader.Items(node, DocumentKeys.Plugged, "a list of plugs with their ports"))
        {
            if (reader.Text(item, "an entry", Expected) is { } scalar)
                entries.AddRange(Read(scalar).TakeWhile(e => counts(e.Place)));
        }

        if (!Problems.IsEmpty)
            return;
        plant.RemoveClashes(_named);
        foreach (Entry entry in entries)
            TakeOut(entry);
        foreach (Entry entry in entries)
            Put(entry);
    }

    private IEnumerable<Entry> Read(YamlScalar scalar)
    {
        (string, string) problem = ($"'{PartNames.Shorten(scalar.Value)}' does not name a plug and a port", Expected);
        if (TwoAddresses.Split(reader, scalar, Between, problem, t => whole(t) is not null || addresses.Reads(t, scalar.Place)) is not var (first, second, at)
            || Plugs(first, scalar.PlaceAt) is not { } plugs || Ports(second, i => scalar.PlaceAt(at + i)) is not { } ports)
            yield break;
        if (plugs.Count != ports.Count)
        {
            Problems.Add(scalar.Place, $"there are {plugs.Count} plugs before 'to' and {ports.Count} ports after it", "as many on both sides");
            yield break;
        }

        for (int i = 0; i < plugs.Count; i++)
        {
            if (!_named.Add(plugs[i]))
                Problems.Add(scalar.Place, $"{Name(plugs[i])} is put somewhere twice", "each plug once");
            else if (Fits(plugs[i], ports[i].Port, ports[i].Position, scalar.Place))
                yield return new Entry(plugs[i], ports[i].Port, ports[i].Position, scalar.Place);
        }
    }

    private List<PortRef>? Plugs(string text, Func<int, SourcePlace> placeAt)
    {
        if (whole(text) is { } inline)
            return [inline];
        if (addresses.Read(text, placeAt) is not { } list)
            return null;
        var plugs = new List<PortRef>();
        foreach (Address address in list)
        {
            Part part = plant.Parts[address.Part];
            int port = address.Port is null ? -1 : PortIndex.Find(part.Shape, address.Port);
            if (port < 0 || address.Position is not null || !part.Shape.IsCable || part.Shape.Ports[port].Face.Family == ConnectorFamily.Bare)
            {
                string[] known = part.Shape.IsCable ? [.. part.Shape.Ports.Select(p => $"{part.Name}/{p.Name}")] : [];
                reader.Unknown(placeAt(0), $"'{PartNames.Shorten(text)}' names no plug of a cable", address.Port ?? "", known);
                return null;
            }

            plugs.Add(new PortRef(address.Part, port));
        }

        return plugs;
    }

    private List<(PortRef Port, int Position)>? Ports(string text, Func<int, SourcePlace> placeAt)
    {
        if (addresses.Read(text, placeAt) is not { } list)
            return null;
        var ports = new List<(PortRef, int)>();
        foreach (Address address in list)
        {
            Part part = plant.Parts[address.Part];
            int port = address.Port is null ? -1 : PortIndex.Find(part.Shape, address.Port);
            int position = 0;
            if (port < 0 || part.Shape.IsCable || (address.Position is { } named && !part.Shape.Ports[port].Face.TryParsePosition(named, out position)))
            {
                string[] known = part.Shape.IsCable ? [] : [.. part.Shape.Ports.Select(p => $"{part.Name}/{p.Name}")];
                reader.Unknown(placeAt(0), $"'{PartNames.Shorten(text)}' names no port that a plug goes into", address.Port ?? "", known);
                return null;
            }

            ports.Add((new PortRef(address.Part, port), position));
        }

        return ports;
    }

    private bool Fits(PortRef plug, PortRef port, int position, SourcePlace place)
    {
        Face face = plant.Port(plug).Face, into = plant.Port(port).Face;
        bool fits = position == 0 ? face == into : face == Face.Simplex && into.Family == ConnectorFamily.Duplex && !plant.Port(port).IsAdapter;
        if (fits)
            return true;
        Problems.Add(
            place,
            $"{Name(plug)} is a {face} plug and {Name(port)} a {into} port",
            face == Face.Simplex && into.Family == ConnectorFamily.Duplex && position == 0 ? $"{Name(port)}:A or {Name(port)}:B" : "a port that the plug goes into");
        return false;
    }

    /// <summary>Takes a plug out of wherever it is. The plug on the other side of an adapter stays in it.</summary>
    private void TakeOut(Entry entry)
    {
        joints.TakeOut(entry.Plug);
        if (matings.At(entry.Plug) is not (>= 0 and int at))
            return;
        Mating mating = plant.Matings[at];
        PortRef other = mating.A == entry.Plug ? mating.B : mating.A;
        entry.Mating = at;
        Positions(other)?.RemoveAll(p => p.Mating == at);
        matings.Pull(at);
        if (mating.Through is { } adapter && !_named.Contains(other))
            joints.Wait(other, adapter, mating.Place);
    }

    private void Put(Entry entry)
    {
        PortShape port = plant.Port(entry.Port);
        if (port.IsAdapter && joints.WaitingIn(entry.Port) is not var (waiting, _))
        {
            if (matings.Held(entry.Port) >= 0)
                ReportTaken(entry, plant.Matings[matings.Held(entry.Port)].Place);
            else
                joints.Wait(entry.Plug, entry.Port, entry.Place);
            return;
        }

        PortRef other = port.IsAdapter ? joints.WaitingIn(entry.Port)!.Value.Plug : entry.Port;
        if (!port.IsAdapter && TakenBy(entry) is { } taken)
        {
            ReportTaken(entry, taken);
            return;
        }

        if (KeysOf(entry, other) is not { } keys)
            return;
        if (port.IsAdapter)
            joints.TakeOut(other);
        PortRef? through = port.IsAdapter ? entry.Port : null;

        // A strand is told in the direction in which its runs are written, also where the plug sits elsewhere.
        bool first = entry.Mating >= 0 && plant.Matings[entry.Mating].A == entry.Plug;
        plant.AddMating(first
            ? new Mating(entry.Plug, other, keys, entry.Place) { PositionOfB = entry.Position, Through = through }
            : new Mating(other, entry.Plug, keys, entry.Place) { PositionOfA = entry.Position, Through = through });
        int index = plant.Matings.Count - 1;
        matings.Made(index);
        if (entry.Position > 0)
            Positions(entry.Port)!.Add((index, entry.Position));
    }

    /// <summary>Where something was put into a port, or into the position of it that is meant; null where it is free.</summary>
    private SourcePlace? TakenBy(Entry entry)
    {
        if (Positions(entry.Port) is { } single)
        {
            foreach ((int mating, int position) in single)
            {
                if (entry.Position == 0 || position == entry.Position)
                    return plant.Matings[mating].Place;
            }
        }

        return matings.At(entry.Port) is >= 0 and int whole && plant.Matings[whole] is var at && (at.A == entry.Port ? at.PositionOfA : at.PositionOfB) == 0 ? at.Place : null;
    }

    private List<(int Mating, int Position)>? Positions(PortRef port)
    {
        if (plant.Port(port).Face.Family != ConnectorFamily.Duplex)
            return null;
        if (_positions is null)
        {
            _positions = [];
            for (int i = 0; i < plant.Matings.Count; i++)
            {
                Mating mating = plant.Matings[i];
                if (mating.PositionOfA > 0 && !matings.IsPulled(i))
                    Of(mating.A).Add((i, mating.PositionOfA));
                if (mating.PositionOfB > 0 && !matings.IsPulled(i))
                    Of(mating.B).Add((i, mating.PositionOfB));
            }
        }

        return Of(port);

        List<(int, int)> Of(PortRef at)
        {
            if (!_positions.TryGetValue(at, out List<(int, int)>? list))
                _positions[at] = list = [];
            return list;
        }
    }

    private Keying? KeysOf(Entry entry, PortRef other)
    {
        if (plant.Port(entry.Plug).Face.Family != ConnectorFamily.Array)
            return Keying.Aligned;
        if ((plant.Port(entry.Port).Keys ?? plant.Port(other).Keys) is { } keys)
            return keys;
        Problems.Add(entry.Place, $"{Name(entry.Plug)} and {Name(other)} meet without an adapter that says how their keys lie", "a port of a cassette, of an interface or of an array panel");
        return null;
    }

    private void ReportTaken(Entry entry, SourcePlace taken) =>
        Problems.Add(entry.Place, $"{Name(entry.Port)} is taken already, {NodeReader.Where(taken, entry.Place)}", "a free port, or an entry for the plug that is in it as well");

    private string Name(PortRef port) => $"{plant.Parts[port.Part].Name}/{plant.Port(port).Name}";
}
