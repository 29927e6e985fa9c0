using PolarityMap.Core.Locate;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;

namespace PolarityMap.Documents.Observations;

/// <summary>Turns written observations into observations of a plant.</summary>
internal sealed class SeenBinder(TracedPlant traced, ProblemList problems)
{
    private const string PositionExpected = "an address PART/PORT:POSITION";
    private const string PartExpected = "the name of a part";

    private readonly PlaceReader _places = new(traced, problems);
    private readonly List<SeenRemark> _remarks = [];
    private WayLimits? _limits;

    public IReadOnlyList<SeenRemark> Remarks => _remarks;

    /// <summary>The observation, or null after a report.</summary>
    public Observation? Bind(SeenEntry entry)
    {
        if (entry.Value is { } value && entry.Test != SeenWords.Loss)
        {
            problems.Add(value.Place, $"a {entry.Test} test has no value", "a value only where a loss was measured");
            return null;
        }

        return entry.Test switch
        {
            SeenWords.Light => Light(entry),
            SeenWords.Lamp => Lamp(entry),
            SeenWords.Loss => Loss(entry),
            SeenWords.Look => Look(entry),
            _ => Reached(entry),
        };
    }

    private LightSeen? Light(SeenEntry entry)
    {
        int from = _places.Position(entry.At, PositionExpected);
        SeenCell outcome = entry.Outcome;
        if (Is(outcome, SeenWords.Nowhere))
            return from < 0 ? null : new LightSeen(from, -1, -1);
        if (outcome.Text.StartsWith(SeenWords.NowhereAt, StringComparison.OrdinalIgnoreCase))
            return LookedAt(outcome.From(SeenWords.NowhereAt.Length)) is { } part && from >= 0 ? new LightSeen(from, part, -1) : null;
        int seen = _places.Position(outcome, $"{PositionExpected}, or {SeenWords.Nowhere}", SeenWords.Nowhere);
        if (from < 0 || seen < 0)
            return null;
        if (from != seen)
            return new LightSeen(from, traced.Graph.PartOf(seen), seen);
        problems.Add(outcome.Place, "light was put in here and cannot be seen to come out here", SeenWords.Expected(SeenWords.Light));
        return null;
    }

    /// <summary>The part whose ports were looked at; it must have some with fibres in them.</summary>
    private int? LookedAt(SeenCell cell)
    {
        if (_places.Part(cell, PartExpected) is not { } part)
            return null;
        if (traced.Plant.Parts[part].Name != cell.Text)
        {
            problems.Add(cell.Place, "only whole parts are looked at", $"'{SeenWords.NowhereAt}{traced.Plant.Parts[part].Name}', after a look at all of its ports");
            return null;
        }

        if (traced.Plant.Parts[part].Shape.PositionCount > 0)
            return part;
        problems.Add(cell.Place, $"{cell.Text} holds adapters and no fibre of its own", "the part whose plugs were looked at");
        return null;
    }

    private LampSeen? Lamp(SeenEntry entry)
    {
        PortRef? port = _places.Port(entry.At, "a port of an interface, such as SW-L/1");
        if (port is { } at && !HasLamp(at))
        {
            problems.Add(entry.At.Place, $"{traced.Plant.Address(at)} is no port of an interface and has no link lamp", "a port of an interface, such as SW-L/1");
            port = null;
        }

        return Choice(entry, SeenWords.On, SeenWords.Off) is { } isOn && port is { } lamp ? new LampSeen(lamp, isOn) : null;
    }

    private bool HasLamp(PortRef port)
    {
        foreach (Lane lane in traced.Plant.Parts[port.Part].Shape.Lanes)
        {
            if (lane.Port == port.Port)
                return true;
        }

        return false;
    }

    private LossMeasured? Loss(SeenEntry entry)
    {
        int from = _places.Position(entry.At, PositionExpected);
        int seen = _places.Position(entry.Outcome, PositionExpected);
        if (entry.Value is not { } value)
        {
            problems.Add(entry.Place, "this loss test has no value", "what was measured, such as 4.2 dB");
            return null;
        }

        if (!Decibel.TryParse(value.Text, out Decibel loss, out string why))
        {
            problems.Add(value.Place, why);
            return null;
        }

        if (from < 0 || seen < 0)
            return null;
        _limits ??= new WayLimits(traced);
        if (_limits.Of(from, seen, text => _remarks.Add(new SeenRemark(entry.Place, text))) is { } limit)
            return new LossMeasured(from, seen, loss, limit);
        problems.Add(entry.At.Place, $"no way begins at {traced.Address(from)}: nothing is plugged in there", "a position from which a fibre leads on");
        return null;
    }

    private PartLooked? Look(SeenEntry entry)
    {
        int? part = _places.Part(entry.At, PartExpected);
        return Choice(entry, SeenWords.AsDescribed, SeenWords.Different) is { } same && part is { } at ? new PartLooked(at, same) : null;
    }

    private NotReached? Reached(SeenEntry entry)
    {
        int? part = _places.Part(entry.At, PartExpected);
        return Choice(entry, null, SeenWords.No) is not null && part is { } at ? new NotReached(at) : null;
    }

    /// <summary>Which of two words was seen, or null after a report.</summary>
    private bool? Choice(SeenEntry entry, string? yes, string no)
    {
        if (yes is not null && Is(entry.Outcome, yes))
            return true;
        if (Is(entry.Outcome, no))
            return false;
        string[] known = yes is null ? [no] : [no, yes];
        problems.Add(entry.Outcome.Place, $"'{PartNames.Shorten(entry.Outcome.Text)}' cannot be seen by a {entry.Test} test", SeenWords.Expected(entry.Test), NearestWord.Find(entry.Outcome.Text, known));
        return null;
    }

    private static bool Is(SeenCell cell, string word) => cell.Text.Equals(word, StringComparison.OrdinalIgnoreCase);
}
