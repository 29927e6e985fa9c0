using System.Globalization;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Strands that belong on one sheet, and others that are like them and are not drawn.</summary>
/// <param name="Pieces">The strands drawn.</param>
/// <param name="Others">The bundles they stand for, each with as many pieces in the same order.</param>
internal sealed record Unit(List<Piece> Pieces, IReadOnlyList<List<Piece>> Others);

/// <summary>
/// Draws channels that are alike once: the same kinds of parts, joined in the same positions with the same keys, on the same
/// network, and nothing found on them. What differs in anything but names and the count of ports or legs is drawn apart.
/// </summary>
internal static class Alike
{
    public static List<Unit> Fold(StrandHops hops, ViewInput input, IReadOnlyList<List<Piece>> bundles)
    {
        var faulty = new HashSet<int>();
        foreach (Core.Checks.Finding finding in input.Findings)
            faulty.UnionWith(finding.Strands);
        var units = new List<Unit>();
        var byLook = new Dictionary<string, List<List<Piece>>>();
        foreach (List<Piece> bundle in bundles)
        {
            string? look = bundle.Exists(p => faulty.Contains(p.Strand)) ? null : Look(hops, bundle);
            if (look is not null && byLook.TryGetValue(look, out List<List<Piece>>? others))
            {
                others.Add(bundle);
                continue;
            }

            others = [];
            if (look is not null)
                byLook[look] = others;
            units.Add(new Unit(bundle, others));
        }

        return units;
    }

    /// <summary>The bundles as they are, none folded.</summary>
    public static List<Unit> Apart(IReadOnlyList<List<Piece>> bundles) => [.. bundles.Select(b => new Unit(b, []))];

    /// <summary>Everything that makes two bundles alike, in one text: parts and ports by the order in which they are met.</summary>
    private static string Look(StrandHops hops, List<Piece> bundle)
    {
        TracedPlant traced = hops.Traced;
        var look = new System.Text.StringBuilder();
        var parts = new Dictionary<int, (int Nth, int FirstPort)>();
        foreach (Piece piece in bundle)
        {
            look.Append('|').Append(hops.GoesOn(piece) ? '>' : '.');
            for (int h = piece.First; h < piece.First + piece.Count; h++)
            {
                Hop hop = hops.Of(piece.Strand)[h];
                int lead = hop.In >= 0 ? hop.In : hop.Out;
                if (!parts.TryGetValue(hop.Part, out (int Nth, int FirstPort) met))
                {
                    parts[hop.Part] = met = (parts.Count, traced.Graph.PlaceOf(lead).Port.Port);
                    Part part = traced.Plant.Parts[hop.Part];
                    look.Append('{').Append(part.Kind).Append('/').AppendJoin(' ', part.Caption).Append('/').Append(part.Length).Append('/').Append(part.Room).Append('/').Append(part.Fibre?.ToString()).Append('}');
                }

                look.Append(met.Nth);
                Position(hop.In, met.FirstPort);
                Position(hop.Out, met.FirstPort);
            }
        }

        return look.ToString();

        void Position(int position, int firstPort)
        {
            if (position < 0)
                return;
            PositionPlace place = traced.Graph.PlaceOf(position);
            PortShape port = traced.Plant.Port(place.Port);
            look.Append(',').Append(place.Port.Port - firstPort).Append(':').Append(place.Position).Append('n').Append(traced.Plant.NetworkOf(place.Port));
            if (traced.Graph.LaneAt(position) is { } lane)
                look.Append(lane.Direction.ShortWord()).Append(lane.Number);
            if (port.Face.Family == ConnectorFamily.Array && traced.MatingAt(position) is { } mating)
                look.Append(mating.Keys == Keying.Aligned ? 'a' : 'o');
        }
    }
}

/// <summary>Names on a sheet where one part or port stands for several.</summary>
internal sealed class SheetNames
{
    private readonly Dictionary<int, string> _parts = [];
    private readonly Dictionary<PortRef, string> _ports = [];
    private readonly Dictionary<PortRef, string> _legs = [];

    private readonly List<int> _otherStrands = [];
    private readonly HashSet<int> _otherParts = [];

    private SheetNames(IReadOnlyList<string> notes) => Notes = notes;

    /// <summary>Strands that are not drawn and stood for.</summary>
    public IReadOnlyList<int> OtherStrands => _otherStrands;

    /// <summary>Parts that are not drawn and stood for.</summary>
    public IReadOnlyCollection<int> OtherParts => _otherParts;

    /// <summary>Names as they are.</summary>
    public static SheetNames Plain { get; } = new([]);

    /// <summary>What the sheet has to say of what it stands for.</summary>
    public IReadOnlyList<string> Notes { get; }

    public string Of(TracedPlant traced, int part) => _parts.TryGetValue(part, out string? name) ? name : traced.Plant.Parts[part].Name;

    public string Of(TracedPlant traced, PortRef port) => _ports.TryGetValue(port, out string? name) ? name : traced.Plant.Port(port).Name;

    public string Leg(TracedPlant traced, PortRef port) => _legs.TryGetValue(port, out string? leg) ? leg : $"{traced.Plant.Port(port).Leg}";

    public static SheetNames Of(StrandHops hops, IReadOnlyList<Unit> units)
    {
        if (!units.Any(u => u.Others.Count > 0))
            return Plain;
        var names = new SheetNames([.. units.Where(u => u.Others.Count > 0).Select(u => Note(hops.Traced, u))]);
        foreach (Unit unit in units)
        {
            if (unit.Others.Count > 0)
                names.Add(hops, unit.Pieces, unit.Others);
            foreach (Piece piece in unit.Others.SelectMany(o => o))
            {
                names._otherStrands.Add(piece.Strand);
                for (int h = piece.First; h < piece.First + piece.Count; h++)
                    names._otherParts.Add(hops.Of(piece.Strand)[h].Part);
            }
        }

        return names;
    }

    private void Add(StrandHops hops, List<Piece> first, IReadOnlyList<List<Piece>> others)
    {
        TracedPlant traced = hops.Traced;
        for (int i = 0; i < first.Count; i++)
        {
            for (int h = first[i].First; h < first[i].First + first[i].Count; h++)
            {
                Hop hop = hops.Of(first[i].Strand)[h];
                Hop[] same = [.. others.Select(o => hops.Of(o[i].Strand)[o[i].First + h - first[i].First])];
                if (!_parts.ContainsKey(hop.Part) && Array.Exists(same, s => s.Part != hop.Part))
                    _parts[hop.Part] = NamesOf(traced.Plant.Parts[hop.Part].Name, same.Select(s => traced.Plant.Parts[s.Part].Name));
                AddPort(hop.In, same.Select(s => s.In));
                AddPort(hop.Out, same.Select(s => s.Out));
            }
        }

        void AddPort(int position, IEnumerable<int> same)
        {
            if (position < 0)
                return;
            PortRef port = traced.Graph.PlaceOf(position).Port;
            PortRef[] ports = [.. same.Select(p => traced.Graph.PlaceOf(p).Port)];
            if (_ports.ContainsKey(port) || !Array.Exists(ports, p => p.Port != port.Port))
                return;
            _ports[port] = NamesOf(traced.Plant.Port(port).Name, ports.Select(p => traced.Plant.Port(p).Name));
            _legs[port] = NamesOf($"{traced.Plant.Port(port).Leg}", ports.Select(p => $"{traced.Plant.Port(p).Leg}"));
        }
    }

    /// <summary>Of more names in a row than these only the first and the last are written.</summary>
    private const int MostNamesInOne = 3;

    /// <summary>
    /// The names in one: the first and the last where all between them are meant, such as <c>K1…288</c>; the first two and the last
    /// where they follow in equal steps, such as <c>1, 5…61</c>; else all of them, such as <c>K1, 3, 4</c>.
    /// </summary>
    private static string NamesOf(string first, IEnumerable<string> others)
    {
        string[] distinct = [.. others.Where(o => o != first).Distinct()];
        int same = first.Length;
        foreach (string other in distinct)
        {
            int alike = 0;
            while (alike < Math.Min(same, other.Length) && first[alike] == other[alike])
                alike++;
            same = alike;
        }

        // A number is not parted.
        while (same > 0 && char.IsAsciiDigit(first[same - 1]))
            same--;
        string[] rest = [.. distinct.Select(d => d[same..])];
        if (distinct.Length < MostNamesInOne)
            return string.Join(", ", rest.Prepend(first));
        int[] numbers = [.. rest.Prepend(first[same..]).Select(r => int.TryParse(r, NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : -1)];
        int step = numbers[1] - numbers[0];
        if (numbers.Contains(-1) || (step == 1 && IsInSteps(numbers, step)))
            return $"{first}…{rest[^1]}";
        return IsInSteps(numbers, step) ? $"{first}, {rest[0]}…{rest[^1]}" : first[..same] + NumberRanges.Of([.. numbers.Order()]);
    }

    private static bool IsInSteps(int[] numbers, int step)
    {
        for (int i = 1; i < numbers.Length; i++)
        {
            if (numbers[i] - numbers[i - 1] != step)
                return false;
        }

        return true;
    }

    private static string Note(TracedPlant traced, Unit unit)
    {
        List<Piece>[] all = [unit.Pieces, .. unit.Others];
        const int mostNamed = 6;
        string strands = all.Length <= mostNamed
            ? string.Join("; ", all.Select(b => Numbers(traced, b)))
            : $"{Numbers(traced, all.SelectMany(b => b))}, in the order of their numbers";
        string names = all.Length > MostNamesInOne ? "A name with … stands for all of them in equal steps." : "A name with commas stands for each of them.";
        return $"Drawn once for {all.Length} alike, with the numbers of the first: strands {strands}. {names}";
    }

    private static string Numbers(TracedPlant traced, IEnumerable<Piece> pieces) =>
        NumberRanges.Of([.. pieces.Select(p => traced.NumberOf(p.Strand)).Distinct().Order()]);
}
