using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Schedules;

/// <summary>What schedules are made from. What several of them need is worked out once, when the first one asks.</summary>
public sealed class ScheduleInput(TracedPlant traced, CheckContext checks)
{
    private Sockets? _sockets;
    private FarEnds? _farEnds;
    private StrandFacts? _facts;

    public TracedPlant Traced { get; } = traced;

    public CheckContext Checks { get; } = checks;

    public Plant Plant => Traced.Plant;

    /// <summary>Where every plug sits.</summary>
    internal Sockets Sockets => _sockets ??= new Sockets(Plant);

    /// <summary>Where the cabling behind every port comes out.</summary>
    internal FarEnds FarEnds => _farEnds ??= new FarEnds(Traced, Sockets);

    /// <summary>Network, link and order of every strand.</summary>
    internal StrandFacts Facts => _facts ??= new StrandFacts(Traced);

    public static ScheduleInput Of(TracedPlant traced) => new(traced, new CheckContext(traced));
}
