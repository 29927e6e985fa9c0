using PolarityMap.Core.Checks;

namespace PolarityMap.Core.Remedies;

/// <summary>A finding as a search sees it: what its light must do no more, or its places where light does not tell.</summary>
internal sealed class Goal
{
    private readonly int[] _lanes = [];
    private readonly IReadOnlyList<int> _links = [];
    private readonly LaneFault[] _faults = [];
    private readonly bool _mustBeProven;

    public Goal(CheckContext context, Finding finding, int index)
    {
        Index = index;
        Places = FindingPlaces.Of(context, finding);
        switch (finding.Rule.Code)
        {
            case "P01" or "P02" or "D02":
                _faults = [LaneFault.Same];
                break;
            case "P03":
                _faults = [LaneFault.Dark];
                break;
            case "P04":
                _faults = [LaneFault.Own];
                break;
            case "P06" or "P07":
                _faults = [LaneFault.Unheard];
                break;
            case "D06":
                _faults = [LaneFault.Foreign];
                break;
            case "D01" or "D03" or "D04" or "D05" or "P05":
                _links = finding.Links;
                break;
            case "W04":
                _links = finding.Links;
                _mustBeProven = true;
                break;
        }

        if (_faults.Length > 0)
            _lanes = [.. Subjects.Lanes(context.Traced, finding.Strands)];
    }

    /// <summary>Index of the finding.</summary>
    public int Index { get; }

    public FindingPlaces Places { get; }

    /// <summary>True when light alone tells whether the finding can be gone.</summary>
    public bool IsOfLight => _lanes.Length > 0 || _links.Count > 0;

    /// <summary>A lane that is led as wrong as the finding says; -1 when none is.</summary>
    public int FirstLedWrong(LightTrial trial)
    {
        foreach (int lane in _lanes)
        {
            if (_faults.Contains(trial.FaultOf(lane)))
                return lane;
        }

        foreach (int link in _links)
        {
            if ((_mustBeProven ? trial.LaneOffLink(link) : trial.LaneMissingLink(link)) is >= 0 and int lane)
                return lane;
        }

        return -1;
    }
}
