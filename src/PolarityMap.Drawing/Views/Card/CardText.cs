using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>The words of a card about parts and positions.</summary>
internal sealed class CardText(TracedPlant traced)
{
    private readonly string?[] _captions = new string?[traced.Plant.Parts.Count];
    private Dictionary<PortRef, PortRef>? _waiting;

    public Plant Plant => traced.Plant;

    /// <summary>A port and position of a part, such as <c>rear:2</c>; a simplex port has no position to name.</summary>
    public string Cell(int position)
    {
        PositionPlace place = traced.Graph.PlaceOf(position);
        PortShape port = traced.Plant.Port(place.Port);
        return port.Face.PositionName(place.Position) is { Length: > 0 } name ? $"{port.Name}:{name}" : port.Name;
    }

    /// <summary><c>Tx</c> or <c>Rx</c>, with the lane where a port has several; empty where no interface is.</summary>
    public string Lane(int position)
    {
        if (traced.Graph.LaneAt(position) is not { } lane)
            return "";
        PortShape port = Port(position);
        // Which lanes of two rows belong together is not settled, so a number would mislead, unless the document gives it.
        bool numbered = port.Face.Family == ConnectorFamily.Array && (port.Face.Rows == 1 || port.Groups > 0);
        return numbered ? $"{lane.Direction.ShortWord()} {lane.Number}" : lane.Direction.ShortWord();
    }

    public PortShape Port(int position) => traced.Plant.Port(traced.Graph.PlaceOf(position).Port);

    /// <summary>What a part is, such as <c>trunk Type-B 62 m</c>; made once, as many cards pass a large part.</summary>
    public string Caption(int part) => _captions[part] ??= SheetText.Caption(traced.Plant.Parts[part]);

    /// <summary>What a part is called on a card: a cord that has no name of its own by what it is.</summary>
    public string Name(int part) => traced.Plant.Parts[part].IsInline ? Caption(part) : traced.Plant.Parts[part].Name;

    /// <summary>What a part is, beside its name; empty where the name says it.</summary>
    public string Beside(CardRow row)
    {
        Part part = traced.Plant.Parts[row.Part];
        var words = new List<string>(4);
        if (!part.IsInline)
            words.Add(Caption(row.Part));
        if (Legs(row) is { Length: > 0 } legs)
            words.Add(legs);
        if (part.Jacket is { } jacket)
            words.Add($"{jacket} jacket");
        if (part.Shape.IsInterface)
            AppendWavelengths(row, words);
        return string.Join(", ", words);
    }

    /// <summary>The fibre of each strand in a cable of many, such as <c>1: fibre 12 TQ aqua</c>; empty for other parts.</summary>
    public List<string> Fibres(CardRow row)
    {
        var words = new List<string>();
        foreach (Visit visit in row.Visits)
        {
            int fibre = FibreInCable.NumberOf(traced, visit.Hop);
            if (fibre == 0)
                continue;
            FibreColour colour = traced.Plant.Practice.Colours[fibre];
            string number = row.Visits.Count > 1 ? $"{visit.Trail.Number}: " : "";
            words.Add($"{number}fibre {fibre} {colour.Code} {colour.Name}{Tracers(colour.Tracers)}");
        }

        return words;
    }

    /// <summary>The end face of a position with its place filled, or null where there is no connector.</summary>
    public ConnectorFace? FaceOf(int position)
    {
        PositionPlace place = traced.Graph.PlaceOf(position);
        PortShape port = traced.Plant.Port(place.Port);
        if (port.Face.Family is ConnectorFamily.Bare or ConnectorFamily.Simplex)
            return null;
        Shape shape = traced.Plant.Parts[place.Port.Part].Shape;
        var fibres = new bool[port.Face.Count];
        for (int i = 0; i < fibres.Length; i++)
            fibres[i] = shape.Inside[port.FirstPosition + i] >= 0 || shape.LaneAt(port.FirstPosition + i) is not null;
        return new ConnectorFace(port.Face, place.Position, fibres);
    }

    /// <summary>A position at its end face in words: <c>A, left</c>, <c>place 2 of 12</c>; empty for a connector of one fibre.</summary>
    public string PlaceWords(int position)
    {
        PositionPlace place = traced.Graph.PlaceOf(position);
        Face face = traced.Plant.Port(place.Port).Face;
        return face.Family switch
        {
            ConnectorFamily.Duplex => place.Position == 1 ? "A, left" : "B, right",
            ConnectorFamily.Array => $"place {place.Position} of {face.Count}",
            ConnectorFamily.Bare => $"fibre {place.Position} of {face.Count}",
            _ => "",
        };
    }

    /// <summary>How the keys lie and in which adapter two plugs meet; empty where there is nothing to say.</summary>
    public string MatingWords(int position)
    {
        if (traced.MatingAt(position) is not { } mating)
            return "";
        string keys = Port(position).Face.Family == ConnectorFamily.Array ? $"keys {mating.Keys.Word()}" : "";
        if (mating.Through is not { } adapter)
            return keys;
        string room = traced.Plant.Parts[adapter.Part].Room is { } r ? $" +{r}" : "";
        return $"{keys}{(keys.Length > 0 ? ", " : "")}in {traced.Plant.Address(adapter)}{room}";
    }

    /// <summary>The port that a position is plugged into although no fibre of it is met, or null.</summary>
    public PortRef? Blocked(int position)
    {
        if (traced.Graph.Outside[position] >= 0 || traced.MatingAt(position) is not { } mating)
            return null;
        return mating.A == traced.Graph.PlaceOf(position).Port ? mating.B : mating.A;
    }

    /// <summary>The adapter in which the plug of an open end waits, or null.</summary>
    public PortRef? WaitsIn(int position)
    {
        if (_waiting is null)
        {
            _waiting = [];
            foreach (OpenPlug plug in traced.Plant.OpenPlugs)
                _waiting.TryAdd(plug.Plug, plug.Adapter);
        }

        return _waiting.TryGetValue(traced.Graph.PlaceOf(position).Port, out PortRef adapter) ? adapter : null;
    }

    private static string Tracers(int tracers) => tracers switch
    {
        0 => "",
        1 => ", 1 tracer",
        _ => $", {tracers} tracers",
    };

    private string Legs(CardRow row)
    {
        var legs = new List<int>(2);
        foreach (Visit visit in row.Visits)
        {
            int leg = Math.Max(LegOf(visit.Hop.In), LegOf(visit.Hop.Out));
            if (leg > 0 && !legs.Contains(leg))
                legs.Add(leg);
        }

        return legs.Count switch
        {
            0 => "",
            1 => $"leg {legs[0]}",
            _ => $"legs {legs[0]} and {legs[1]}",
        };
    }

    private int LegOf(int position) => position < 0 ? 0 : Port(position).Leg;

    /// <summary>Where one fibre carries light both ways, at which wavelengths.</summary>
    private void AppendWavelengths(CardRow row, List<string> words)
    {
        foreach (Visit visit in row.Visits)
        {
            int position = visit.Hop.Out >= 0 ? visit.Hop.Out : visit.Hop.In;
            if (traced.Graph.LaneAt(position) is { Direction: LaneDirection.Both, Sends: { } sends, Hears: { } hears })
            {
                words.Add($"Tx {sends}, Rx {hears}".Replace(" nm", "\u00A0nm", StringComparison.Ordinal).Replace("x ", "x\u00A0", StringComparison.Ordinal));
                return;
            }
        }
    }
}
