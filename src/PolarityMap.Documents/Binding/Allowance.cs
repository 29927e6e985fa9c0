using PolarityMap.Core.Parts;
using PolarityMap.Documents.Text;

namespace PolarityMap.Documents.Binding;

/// <summary>
/// What one document may grow to. A short text can stand for very much, so each limit is asked before anything is made, and
/// once one is passed nothing more is made at all. All are far beyond a campus and small enough for a desk machine.
/// </summary>
internal sealed class Allowance(ProblemList problems)
{
    public const int MostParts = 1_000_000;
    public const int MostPositions = 16_000_000;

    /// <summary>Names and addresses that ranges stand for, in parts, runs, links and differences together, repeated ones as well.</summary>
    public const int MostNames = 4_000_000;

    /// <summary>Ports of all descriptions, each description once however many parts share it.</summary>
    public const int MostPorts = 1_000_000;

    private long _parts;
    private long _positions;
    private long _names;
    private long _ports;

    /// <summary>True when a limit was passed, which has been reported.</summary>
    public bool IsSpent { get; private set; }

    /// <summary>Asks for so many parts of one shape.</summary>
    public bool Parts(int count, Shape shape, SourcePlace place)
    {
        _parts += count;
        _positions += (long)shape.PositionCount * count;
        if (_parts > MostParts || _positions > MostPositions)
            Spend(place, $"the plant grows beyond {MostParts} parts or {MostPositions} positions here");
        return !IsSpent;
    }

    /// <summary>Accounts for names that a range stood for.</summary>
    public bool Names(int count, SourcePlace place)
    {
        // A single name is no longer than its text, whose size is bounded already.
        if (count > 1)
            _names += count;
        if (_names > MostNames)
            Spend(place, $"the ranges up to here stand for more than {MostNames} names; no more are read");
        return !IsSpent;
    }

    /// <summary>Accounts for the ports of a shape that was built.</summary>
    public bool Ports(Shape shape, SourcePlace place)
    {
        _ports += shape.Ports.Count;
        if (_ports > MostPorts)
            Spend(place, $"the parts described up to here have more than {MostPorts} ports; no more are read");
        return !IsSpent;
    }

    private void Spend(SourcePlace place, string message)
    {
        if (IsSpent)
            return;
        IsSpent = true;
        problems.Add(place, message);
    }
}
