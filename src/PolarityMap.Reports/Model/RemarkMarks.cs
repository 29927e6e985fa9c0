namespace PolarityMap.Reports.Model;

/// <summary>Remarks that many rows of a table share: each is told once below it, and the rows carry its mark.</summary>
internal sealed class RemarkMarks
{
    private const int Letters = 26;

    private readonly Dictionary<string, string> _marks = new(StringComparer.Ordinal);

    /// <summary>The remarks in the order in which they came up.</summary>
    public IEnumerable<(string Mark, string Text)> All => _marks.Select(m => (m.Value, m.Key));

    /// <summary>The mark of a remark: a to z, then aa and so on.</summary>
    public string Of(string remark)
    {
        if (!_marks.TryGetValue(remark, out string? mark))
            _marks[remark] = mark = Letter(_marks.Count);
        return mark;
    }

    private static string Letter(int n) => n < Letters ? $"{(char)('a' + n)}" : Letter((n / Letters) - 1) + Letter(n % Letters);
}
