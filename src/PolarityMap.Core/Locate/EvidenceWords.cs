using PolarityMap.Core.Deviations;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Locate;

/// <summary>Tells what observations say about an explanation: those that it bears on, and those that refute the plant as described.</summary>
internal sealed class EvidenceWords
{
    private readonly DeviationContext _context;
    private readonly IReadOnlyList<Observation> _observations;
    private readonly ExplanationSearch _search;
    private readonly TrialGraph _trial;
    private readonly Predictor _predictor;
    private readonly HashSet<int> _refuting;
    private readonly Dictionary<int, string> _asDescribed = [];

    public EvidenceWords(DeviationContext context, IReadOnlyList<Observation> observations, ExplanationSearch search)
    {
        _context = context;
        _observations = observations;
        _search = search;
        _trial = new TrialGraph(context.Graph);
        _predictor = new Predictor(context, _trial);
        _refuting = [.. search.Refuting];
        foreach (int index in search.Refuting)
            _asDescribed[index] = What(observations[index]);
    }

    public IReadOnlyList<Evidence> Of(Deviation[] explanation)
    {
        var bearing = new SortedSet<int>(_refuting);
        foreach (Deviation deviation in explanation)
        {
            _trial.Lay(deviation);
            bearing.UnionWith(_search.Index.AffectedBy(deviation));
        }

        var evidence = new List<Evidence>(bearing.Count);
        foreach (int index in bearing)
        {
            bool telling = _refuting.Contains(index);
            string words = $"{What(_observations[index])}, as was seen" + (telling ? $"; as described, {_asDescribed[index]}" : "");
            evidence.Add(new Evidence(_observations[index], telling, words));
        }

        for (int i = 0; i < explanation.Length; i++)
            _trial.Lift();
        return evidence;
    }

    /// <summary>What would be seen, as things are laid.</summary>
    private string What(Observation observation) => observation switch
    {
        LightSeen light => Light(light.From, light.Look, _predictor.Follow(light.From, light.Look)),
        LampSeen lamp => Lamp(lamp.Port),
        LossMeasured loss when _predictor.Follow(loss.From, _context.Graph.PartOf(loss.Seen)) != loss.Seen => $"no light comes from {Address(loss.From)} to {Address(loss.Seen)}",
        LossMeasured loss => $"light from {Address(loss.From)} to {Address(loss.Seen)} loses {(_trial.PassedLoss ? "more than" : "no more than")} {loss.Limit}",
        PartLooked look => $"{_context.Plant.Parts[look.Part].Name} {(_predictor.Differs(look.Part) ? "looks different" : "looks as described")}",
        _ => "",
    };

    private string Light(int from, int look, int seen) =>
        seen >= 0 ? $"light from {Address(from)} comes out at {Address(seen)}"
        : look >= 0 ? $"light from {Address(from)} does not come out at {_context.Plant.Parts[look].Name}"
        : $"light from {Address(from)} reaches no interface";

    private string Lamp(PortRef port)
    {
        LampState state = _predictor.LampAt(port);
        string hears = string.Join(" and ", _predictor.Listening(port).Select(Hears));
        string lamp = state switch { LampState.On => "on", LampState.Off => "off", _ => "on or off, since light is lost" };
        return $"the lamp of {_context.Plant.Address(port)} is {lamp}: {hears}";
    }

    private string Hears(int position)
    {
        int far = _trial.Follow(position, -1);
        if (far < 0)
            return $"{Address(position)} gets no light";
        return _context.Graph.LaneAt(far) is { Direction: LaneDirection.Receive }
            ? $"{Address(position)} gets no light, it leads to the receiver {Address(far)}"
            : $"{Address(position)} gets the light of {Address(far)}";
    }

    private string Address(int position) => _context.Traced.Address(position);
}
