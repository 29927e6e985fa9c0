namespace PolarityMap.Core.Locate;

/// <summary>A set of positions that is emptied in one step, with its members in the order in which they came.</summary>
internal sealed class PositionMarks(int positions)
{
    private readonly int[] _stamp = new int[positions];
    private int _now = 1;

    /// <summary>The members, in the order in which they were added.</summary>
    public List<int> Members { get; } = [];

    public void Clear()
    {
        Members.Clear();
        _now++;
    }

    public void Add(int position)
    {
        if (_stamp[position] == _now)
            return;
        _stamp[position] = _now;
        Members.Add(position);
    }

    public bool Contains(int position) => _stamp[position] == _now;
}
