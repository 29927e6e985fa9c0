using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Checks;

/// <summary>Two parts of different cores that a strand passes one after the other.</summary>
/// <param name="First">The first part on the strand's way.</param>
/// <param name="Second">The next part on it whose fibre is stated.</param>
/// <param name="Place">The mating by which the strand enters the second part.</param>
/// <param name="Strand">The strand.</param>
internal readonly record struct CoreStep(int First, int Second, SourcePlace Place, int Strand)
{
    /// <summary>The mating, or the second part where none is known.</summary>
    public FindingSite At { get; init; }

    /// <summary>Parts between the two, whose fibre is not stated.</summary>
    public IReadOnlyList<int> Between { get; init; } = [];
}

/// <summary>A part of a class that an application does not run on.</summary>
/// <param name="Part">The part.</param>
/// <param name="Application">The application.</param>
/// <param name="Strand">The strand.</param>
internal readonly record struct UnlistedPart(int Part, Application Application, int Strand);

/// <summary>A part of a lower class than the rest of its strand.</summary>
/// <param name="Part">The part.</param>
/// <param name="Reference">The class of the rest.</param>
/// <param name="Strand">The strand.</param>
/// <param name="Applications">What the strand's ends are for.</param>
internal readonly record struct LowerPart(int Part, FibreClass Reference, int Strand, IReadOnlyList<Application> Applications);

/// <summary>
/// Where the classes of fibre along the strands do not go together. Each cause is told once: where cores differ, nothing more
/// is said of the strand; where an application does not run on the lowest class, that class is not called lower as well. A
/// part whose class is not stated is passed over.
/// </summary>
internal sealed class FibreFaults
{
    private readonly CheckContext _context;

    // Filled again for strand after strand.
    private readonly List<Hop> _hops = [];
    private readonly List<Stretch> _stretches = [];
    private readonly List<Application> _applications = [];
    private readonly List<CoreStep> _steps = [];
    private readonly List<UnlistedPart> _unlisted = [];
    private readonly List<LowerPart> _lower = [];

    private FibreFaults(CheckContext context) => _context = context;

    /// <summary>A strand's visit to a part whose class is stated.</summary>
    private readonly record struct Stretch(int Part, FibreClass Fibre, int In, int Hop);

    public IReadOnlyList<CoreStep> Steps => _steps;

    public IReadOnlyList<UnlistedPart> Unlisted => _unlisted;

    public IReadOnlyList<LowerPart> Lower => _lower;

    public static FibreFaults Of(CheckContext context)
    {
        var faults = new FibreFaults(context);
        if (IsOfOneClassForAll(context.Plant))
            return faults;
        for (int strand = 0; strand < context.Traced.Strands.Count; strand++)
            faults.Judge(strand);

        // Strands that no application lights pass the same parts.
        var told = new HashSet<int>(faults._unlisted.Select(u => u.Part));
        faults._lower.RemoveAll(l => told.Contains(l.Part));
        return faults;
    }

    /// <summary>True when an application has figures on record and none for this class.</summary>
    public static bool IsNotFor(Application application, LimitProfile limits, FibreClass fibre) =>
        application.Limits(limits).Count > 0 && application.Limit(limits, fibre.Name) is null;

    /// <summary>
    /// True when all that is stated is one class and every application runs on it, or nothing is stated: then no strand is at
    /// fault, and none need be followed.
    /// </summary>
    private static bool IsOfOneClassForAll(Plant plant)
    {
        FibreClass? only = null;
        foreach (Part part in plant.Parts)
        {
            if (part.Fibre is { } fibre && fibre != (only ??= fibre))
                return false;
        }

        if (only is null)
            return true;
        Shape? seen = null;
        foreach (Part part in plant.Parts)
        {
            if (!part.Shape.IsInterface || part.Shape == seen)
                continue;
            seen = part.Shape;
            foreach (PortShape port in seen.Ports)
            {
                if (port.Application is { } application && IsNotFor(application, plant.Practice.Limits, only))
                    return false;
            }
        }

        return true;
    }

    private void Judge(int strand)
    {
        TakeStretches(strand);
        if (_stretches.Count == 0 || AddSteps(strand))
            return;
        TakeApplications(strand);
        if (AddUnlisted(strand))
            return;

        // Where all is of one class, none of it is lower than the rest.
        if (AreOfOneClass())
            return;
        FibreClass reference = Reference();
        Application[]? applications = null;
        foreach (Stretch stretch in _stretches)
        {
            if (stretch.Fibre.Rank < reference.Rank)
                _lower.Add(new LowerPart(stretch.Part, reference, strand, applications ??= [.. _applications]));
        }
    }

    private bool AreOfOneClass()
    {
        foreach (Stretch stretch in _stretches)
        {
            if (stretch.Fibre != _stretches[0].Fibre)
                return false;
        }

        return true;
    }

    private void TakeStretches(int strand)
    {
        _stretches.Clear();
        _context.Traced.Hops(strand, _hops);
        for (int i = 0; i < _hops.Count; i++)
        {
            if (_context.Plant.Parts[_hops[i].Part].Fibre is { } fibre)
                _stretches.Add(new Stretch(_hops[i].Part, fibre, _hops[i].In, i));
        }
    }

    /// <summary>Adds the part of the lowest class for each application that does not run on it; true when there is any.</summary>
    private bool AddUnlisted(int strand)
    {
        if (_applications.Count == 0)
            return false;
        Stretch lowest = _stretches[0];
        foreach (Stretch stretch in _stretches)
        {
            if (stretch.Fibre.Rank < lowest.Fibre.Rank || (stretch.Fibre.Rank == lowest.Fibre.Rank && LengthOf(stretch) > LengthOf(lowest)))
                lowest = stretch;
        }

        bool unlisted = false;
        foreach (Application application in _applications)
        {
            if (!IsNotFor(application, _context.Plant.Practice.Limits, lowest.Fibre))
                continue;
            unlisted = true;
            _unlisted.Add(new UnlistedPart(lowest.Part, application, strand));
        }

        return unlisted;
    }

    /// <summary>Adds the places where the core changes; true when there are any.</summary>
    private bool AddSteps(int strand)
    {
        int before = _steps.Count;
        for (int i = 1; i < _stretches.Count; i++)
        {
            (Stretch first, Stretch second) = (_stretches[i - 1], _stretches[i]);
            if (first.Fibre.Core == second.Fibre.Core)
                continue;
            Mating? mating = second.In >= 0 ? _context.Traced.MatingAt(second.In) : null;
            SourcePlace place = mating?.Place ?? _context.PlaceOf(strand);
            _steps.Add(new CoreStep(first.Part, second.Part, place, strand)
            {
                At = mating is null ? new FindingSite(second.Part) : FindingSite.Of(mating),
                Between = [.. _hops.Take(second.Hop).Skip(first.Hop + 1).Select(h => h.Part)],
            });
        }

        return _steps.Count > before;
    }

    /// <summary>
    /// What the strand is meant to be: the class of most parts on it, or that of its longest cable if that is better. So one
    /// better cord in a plant is no reason to call the plant lower, and two lower cords do not make a trunk too good.
    /// </summary>
    private FibreClass Reference()
    {
        FibreClass most = _stretches[0].Fibre;
        int mostCount = 0;
        Stretch longest = _stretches[0];
        foreach (Stretch stretch in _stretches)
        {
            int count = _stretches.Count(s => s.Fibre == stretch.Fibre);
            if (count > mostCount || (count == mostCount && stretch.Fibre.Rank > most.Rank))
                (most, mostCount) = (stretch.Fibre, count);
            if (LengthOf(stretch) > LengthOf(longest))
                longest = stretch;
        }

        return longest.Fibre.Rank > most.Rank ? longest.Fibre : most;
    }

    private long LengthOf(Stretch stretch) => _context.Plant.Parts[stretch.Part].Length?.Millimetres ?? 0;

    /// <summary>Takes what the ends of a strand are for, each once; none unless it is lit.</summary>
    private void TakeApplications(int strand)
    {
        _applications.Clear();
        if (_context.Traced.Strands.IsLoop(strand))
            return;
        ReadOnlySpan<int> positions = _context.Traced.Strands[strand];
        bool lit = false;
        foreach (int end in (ReadOnlySpan<int>)[positions[0], positions[^1]])
        {
            if (_context.Traced.Graph.LaneAt(end) is not { } lane)
                continue;
            lit |= lane.Direction != LaneDirection.Receive;
            if (_context.Plant.Port(_context.Traced.Graph.PlaceOf(end).Port).Application is { } application && !_applications.Contains(application))
                _applications.Add(application);
        }

        if (!lit)
            _applications.Clear();
    }
}
