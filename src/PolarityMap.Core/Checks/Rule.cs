namespace PolarityMap.Core.Checks;

/// <summary>
/// One rule of the checker: what is wrong, why it matters, an example, and the check itself. One file per rule in
/// <c>Rules</c>, listed in <see cref="RuleCatalogue"/>.
/// </summary>
public abstract class Rule
{
    /// <summary>A letter for the family and two digits; never reused.</summary>
    public abstract string Code { get; }

    /// <summary>The fault's name in a few words, without a full stop.</summary>
    public abstract string Title { get; }

    public virtual Severity Severity => Severity.Error;

    /// <summary>The family the code's letter stands for.</summary>
    public string Family => Code[0] switch
    {
        'P' => "polarity",
        'D' => "destination",
        'M' => "mechanical",
        'F' => "fibre",
        'S' => "separation",
        'L' => "loss",
        'W' => "document",
        _ => throw new InvalidOperationException($"no family has the letter of {Code}"),
    };

    /// <summary>Why it is a fault: one paragraph.</summary>
    public abstract string Why { get; }

    /// <summary>What clears it: one or two sentences.</summary>
    public abstract string Clears { get; }

    /// <summary>Where the rule comes from, with its confidence.</summary>
    public abstract string Source { get; }

    /// <summary>The smallest document that raises this rule and no other.</summary>
    public abstract string Example { get; }

    /// <summary>The same document repaired: it raises nothing.</summary>
    public abstract string Repaired { get; }

    /// <summary>Adds what the rule finds.</summary>
    public abstract void Check(CheckContext context, List<Finding> findings);
}
