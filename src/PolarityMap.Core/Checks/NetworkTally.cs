namespace PolarityMap.Core.Checks;

/// <summary>
/// Collects the networks of one thing after the other. What was counted for an earlier thing needs no clearing, so that the
/// time is that of what is added.
/// </summary>
internal sealed class NetworkTally(StrandNetworks strands, int networks)
{
    private readonly int[] _countedIn = new int[networks];
    private readonly int[] _astrayIn = new int[networks];
    private readonly List<int> _strands = [];
    private readonly List<int> _counted = [];
    private readonly List<int> _astray = [];
    private int _round;

    /// <summary>True when at least two networks were added, by whatever strands.</summary>
    public bool IsShared
    {
        get
        {
            int all = _counted.Count;
            foreach (int network in _astray)
                all += _countedIn[network] == _round ? 0 : 1;
            return all > 1;
        }
    }

    public void Begin()
    {
        _round++;
        _counted.Clear();
        _astray.Clear();
        _strands.Clear();
    }

    /// <summary>Adds a network that the document states, or none for -1.</summary>
    public void AddStated(int network)
    {
        if (network >= 0)
            Count(network);
    }

    /// <summary>Adds the networks of a strand.</summary>
    public void AddStrand(int strand)
    {
        StrandCourse course = strands.CourseOf(strand);
        if (course == StrandCourse.Empty)
            return;
        foreach (int network in strands.Of(strand))
        {
            if (course == StrandCourse.Own)
            {
                Count(network);
                _strands.Add(strand);
            }
            else if (_astrayIn[network] != _round)
            {
                _astrayIn[network] = _round;
                _astray.Add(network);
            }
        }
    }

    /// <summary>The networks in rising order, those only astray, and the strands that bring the first.</summary>
    public (int[] Networks, int[] Astray, int[] Strands) Result()
    {
        _counted.Sort();
        int[] astray = [.. _astray.Where(n => _countedIn[n] != _round).Order()];
        return ([.. _counted], astray, [.. _strands.Distinct().Order()]);
    }

    private void Count(int network)
    {
        if (_countedIn[network] == _round)
            return;
        _countedIn[network] = _round;
        _counted.Add(network);
    }
}
