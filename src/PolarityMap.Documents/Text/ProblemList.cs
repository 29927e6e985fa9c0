using System.Text;

namespace PolarityMap.Documents.Text;

/// <summary>
/// The problems of one run in document order: files in the order in which they first reported something, then line, then
/// column, then the order of reporting. Only the first <see cref="Cap"/> of that order are kept; the rest are counted.
/// </summary>
public sealed class ProblemList
{
    public const int DefaultCap = 50;

    private readonly List<Problem> kept = [];
    private readonly Dictionary<string, int> fileOrder = new(StringComparer.Ordinal);

    /// <param name="cap">How many problems are kept, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The cap is below 1.</exception>
    public ProblemList(int cap = DefaultCap)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(cap, 1);
        Cap = cap;
    }

    public int Cap { get; }

    /// <summary>How many problems were reported, kept or not.</summary>
    public int Count { get; private set; }

    /// <summary>How many problems were reported beyond those in <see cref="Items"/>.</summary>
    public int Hidden => Count - kept.Count;

    public bool IsEmpty => Count == 0;

    /// <summary>The kept problems in document order.</summary>
    public IReadOnlyList<Problem> Items => kept;

    public void Add(Problem problem)
    {
        Count++;
        fileOrder.TryAdd(problem.Place.File, fileOrder.Count);

        // The list stays sorted, so that the problems shown are the first of the document, not the first that were found.
        var low = 0;
        var high = kept.Count;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (Compare(kept[middle].Place, problem.Place) <= 0)
                low = middle + 1;
            else
                high = middle;
        }

        if (low == Cap)
            return;
        if (kept.Count == Cap)
            kept.RemoveAt(Cap - 1);
        kept.Insert(low, problem);
    }

    public void Add(SourcePlace place, string message, string? expected = null, string? suggestion = null) =>
        Add(new Problem(place, message, expected, suggestion));

    /// <summary>One problem a line, each line ended by LF; a last line says how many more there are.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        foreach (var problem in kept)
            text.Append(problem.ToString()).Append('\n');
        if (Hidden > 0)
            text.Append("and ").Append(Hidden).Append(Hidden == 1 ? " more problem\n" : " more problems\n");
        return text.ToString();
    }

    private int Compare(SourcePlace left, SourcePlace right)
    {
        var order = fileOrder[left.File].CompareTo(fileOrder[right.File]);
        if (order == 0)
            order = left.Line.CompareTo(right.Line);
        return order != 0 ? order : left.Column.CompareTo(right.Column);
    }
}
