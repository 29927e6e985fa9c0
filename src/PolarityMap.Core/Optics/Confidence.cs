using System.Globalization;

namespace PolarityMap.Core.Optics;

/// <summary>What a figure rests on.</summary>
public enum ConfidenceKind
{
    /// <summary>Nothing on record: the figure is not known.</summary>
    Unknown,

    /// <summary>Independent public sources that summarise the standard agree.</summary>
    Confirmed,

    /// <summary>Remembered from the standard and not checked against it.</summary>
    FromMemory,

    /// <summary>What the trade does; no standard stands behind it.</summary>
    CommonPractice,

    /// <summary>Follows from other figures by geometry or arithmetic.</summary>
    Derived,
}

/// <summary>How well a figure is attested. The default value is <see cref="ConfidenceKind.Unknown"/>.</summary>
/// <param name="Kind">What it rests on.</param>
/// <param name="Sources">How many independent public sources say so; 0 where none was counted.</param>
/// <param name="Remark">A word of caution, such as "weak"; null where there is none.</param>
public readonly record struct Confidence(ConfidenceKind Kind, int Sources = 0, string? Remark = null)
{
    /// <summary>
    /// Reads a fact sheet's code: <c>C3</c> three public sources, <c>M</c> from memory, <c>P</c> common practice,
    /// <c>C2 P</c> a practice two public sources name, <c>D</c> derived, nothing at all for unknown. A remark may follow
    /// after a comma: <c>C1, weak</c>.
    /// </summary>
    /// <exception cref="FormatException">Any other code.</exception>
    public static Confidence Parse(string code)
    {
        int comma = code.IndexOf(',', StringComparison.Ordinal);
        string remark = comma < 0 ? "" : code[(comma + 1)..].Trim();
        ReadOnlySpan<char> head = (comma < 0 ? code : code[..comma]).AsSpan().Trim();
        bool practice = head is [.., ' ', 'P'];
        ReadOnlySpan<char> counted = practice ? head[..^1].TrimEnd() : head;
        int sources = 0;
        ConfidenceKind kind = counted switch
        {
            "" when remark.Length == 0 => ConfidenceKind.Unknown,
            "M" when !practice => ConfidenceKind.FromMemory,
            "P" when !practice => ConfidenceKind.CommonPractice,
            "D" when !practice => ConfidenceKind.Derived,
            ['C', .. var digits] when int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out sources) && sources > 0 =>
                practice ? ConfidenceKind.CommonPractice : ConfidenceKind.Confirmed,
            _ => throw new FormatException($"'{code}' is no code of confidence"),
        };
        return new Confidence(kind, sources, remark.Length == 0 ? null : remark);
    }

    /// <summary>The words printed for it, such as <c>3 public sources</c>, <c>from memory</c> or <c>1 public source, weak</c>.</summary>
    public override string ToString()
    {
        string sources = Sources == 1 ? "1 public source" : $"{Sources} public sources";
        string words = Kind switch
        {
            ConfidenceKind.Confirmed => sources,
            ConfidenceKind.FromMemory => "from memory",
            ConfidenceKind.CommonPractice => Sources > 0 ? "common practice, " + sources : "common practice",
            ConfidenceKind.Derived => "derived",
            _ => "not known",
        };
        return Remark is null ? words : words + ", " + Remark;
    }
}
