using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Deviations;

/// <summary>A plant on which deviations are laid, and what light then does between its interfaces.</summary>
internal sealed class Trial(TracedPlant traced)
{
    private readonly TrialGraph _graph = new(traced.Graph);

    public DeviationContext Context { get; } = new(traced);

    public static Trial Of(Bench bench) => new(bench.Trace());

    /// <summary>Lays the one deviation of a kind that fits.</summary>
    public Trial Lay(string kind, Func<Deviation, bool> fits)
    {
        _graph.Lay(Assert.Single(Context.All(), d => d.Kind.Name == kind && fits(d)));
        return this;
    }

    /// <summary>Lays the deviation of a kind whose sentence is this.</summary>
    public Trial Lay(string kind, string text) => Lay(kind, d => d.Text == text);

    /// <summary>Lays the deviation by which a part has another value of an attribute.</summary>
    public Trial Lay(string kind, string part, string attribute, string value) =>
        Lay(kind, d => d.Differences is [PartDiffers p] && Context.Plant.Parts[p.Part].Name == part && p.Attribute == attribute && p.Value == value);

    public Trial Lift()
    {
        _graph.Lift();
        return this;
    }

    /// <summary>The address where light from an address comes out at an interface, or null.</summary>
    public string? From(string address) => _graph.Follow(Context.Traced.Position(address), -1) is >= 0 and int end ? Context.Traced.Address(end) : null;

    /// <summary>The address where light from an address leaves a part, or null.</summary>
    public string? From(string address, string look) =>
        _graph.Follow(Context.Traced.Position(address), Enumerable.Range(0, Context.Plant.Parts.Count).Single(p => Context.Plant.Parts[p].Name == look)) is >= 0 and int end ? Context.Traced.Address(end) : null;

    /// <summary>What the "Tx" or "Rx" of a left port meets: a port of the interface R and its role, or null.</summary>
    public (int Port, string Role)? Answer(int port, string role)
    {
        int end = _graph.Follow(Context.Traced.Position($"L/{port}:{(role == "Tx" ? "A" : "B")}"), -1);
        if (end < 0)
            return null;
        PositionPlace place = Context.Graph.PlaceOf(end);
        Assert.Equal("R", Context.Plant.Parts[place.Port.Part].Name);
        return (place.Port.Port + 1, Context.Graph.LaneAt(end)!.Value.Direction == LaneDirection.Transmit ? "Tx" : "Rx");
    }

    /// <summary>Where light from each lane of an interface comes out, as things are laid.</summary>
    public Dictionary<string, string?> Lanes() =>
        Enumerable.Range(0, Context.Graph.PositionCount).Where(Context.Graph.HasLane).ToDictionary(Context.Traced.Address, p => _graph.Follow(p, -1) is >= 0 and int end ? Context.Traced.Address(end) : null);

    /// <summary>The lanes whose light comes out elsewhere than it does with nothing laid.</summary>
    public List<string> Changed()
    {
        Dictionary<string, string?> design = new Trial(Context.Traced).Lanes();
        return [.. Lanes().Where(l => l.Value != design[l.Key]).Select(l => l.Key)];
    }

    /// <summary>The lanes whose light passes a place that loses it.</summary>
    public List<string> Lossy()
    {
        var lossy = new List<string>();
        for (int position = 0; position < Context.Graph.PositionCount; position++)
        {
            if (!Context.Graph.HasLane(position))
                continue;
            _graph.Follow(position, -1);
            if (_graph.PassedLoss)
                lossy.Add(Context.Traced.Address(position));
        }

        return lossy;
    }
}
