using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Remedies;

/// <summary>Proves sets of changes by a full check of the plant that they make. Each set is checked once.</summary>
internal sealed class Prover
{
    private readonly ChangeContext _context;
    private readonly CheckReport _before;
    private readonly Dictionary<Subject, int> _numbers = [];
    private readonly int[][] _subjects;
    private readonly Dictionary<string, Proof> _proofs = [];

    public Prover(ChangeContext context, CheckReport before, int most)
    {
        _context = context;
        _before = before;
        _subjects = new int[before.Findings.Count][];
        for (int i = 0; i < _subjects.Length; i++)
            _subjects[i] = [.. Subjects.Of(before.Context, before.Findings[i]).Select(NumberOf)];
        Left = most;
    }

    /// <summary>How many sets may still be checked.</summary>
    public int Left { get; private set; }

    /// <summary>How many sets were checked.</summary>
    public int Made { get; private set; }

    /// <summary>True when a finding of the plant is about this.</summary>
    public bool Knows(Subject subject) => _numbers.ContainsKey(subject);

    /// <summary>True when findings of the plant are about all that a finding of a changed plant is about.</summary>
    public bool KnowsAll(CheckContext after, Finding finding) => Subjects.Of(after, finding).TrueForAll(Knows);

    /// <summary>The proof of a set that was checked already, or null.</summary>
    public Proof? Find(IReadOnlyList<Change> changes) => _proofs.GetValueOrDefault(KeyOf(changes));

    /// <summary>Proves a set; null when no more may be checked.</summary>
    public Proof? Prove(IReadOnlyList<Change> changes)
    {
        string key = KeyOf(changes);
        if (_proofs.TryGetValue(key, out Proof? known))
            return known;
        if (Left <= 0)
            return null;
        Left--;
        return _proofs[key] = Check(changes);
    }

    /// <summary>Builds, traces and checks the plant with changes in it.</summary>
    public Proof Check(IReadOnlyList<Change> changes)
    {
        Made++;
        if (_context.Build(changes) is not { } plant)
            return Proof.None;
        var context = new CheckContext(TracedPlant.Of(plant));
        return Judge(context, Checker.Check(context));
    }

    /// <summary>Compares a checked plant, its parts numbered as before, with the plant as it is.</summary>
    public Proof Judge(CheckContext after, IReadOnlyList<Finding> findings)
    {
        var remains = new bool[_numbers.Count];
        var raised = new List<FindingPlaces>();
        foreach (Finding finding in findings)
        {
            bool known = true;
            foreach (Subject subject in Subjects.Of(after, finding))
            {
                if (_numbers.TryGetValue(subject, out int number))
                    remains[number] = true;
                else
                    known = false;
            }

            if (!known)
                raised.Add(FindingPlaces.Of(after, finding));
        }

        var cleared = new List<int>();
        for (int i = 0; i < _subjects.Length; i++)
        {
            if (!Array.Exists(_subjects[i], s => remains[s]))
                cleared.Add(i);
        }

        return new Proof(cleared, raised, LosesLinks(after), new CheckReport(after.Traced, after, findings, []).Proven);
    }

    private int NumberOf(Subject subject)
    {
        _numbers.TryAdd(subject, _numbers.Count);
        return _numbers[subject];
    }

    private bool LosesLinks(CheckContext after)
    {
        for (int i = 0; i < _before.Context.Outcomes.All.Count; i++)
        {
            if (_before.Context.Outcomes.All[i].IsProven && !after.Outcomes.All[i].IsProven)
                return true;
        }

        return false;
    }

    private static string KeyOf(IReadOnlyList<Change> changes)
    {
        if (changes.Count == 1)
            return changes[0].Id.ToString();
        return string.Join('|', changes.Select(c => c.Id.ToString()).Order(StringComparer.Ordinal));
    }
}
