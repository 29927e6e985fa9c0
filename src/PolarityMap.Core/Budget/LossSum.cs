using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Budget;

/// <summary>
/// The loss of a strand as the sum of its parts: length times attenuation, matings, splices, and what else is named (allowance
/// formula of ANSI/TIA-568.3, two public sources). Nothing is rounded. Each call of a <c>Plus</c> method gives a new sum.
/// </summary>
public readonly record struct LossSum
{
    /// <summary>The formula in words.</summary>
    public const string Formula = "length in km x attenuation + matings x mating loss + splices x splice loss";

    /// <summary>Where the formula comes from.</summary>
    public const string Source = "ANSI/TIA-568.3, 2 public sources";

    private readonly NamedLoss[]? _others;

    private LossSum(LossSum from, NamedLoss[] others)
    {
        this = from;
        _others = others;
    }

    /// <summary>What the fibre loses.</summary>
    public Decibel Fibre { get; private init; }

    /// <summary>What all matings lose together.</summary>
    public Decibel Matings { get; private init; }

    /// <summary>What all splices lose together.</summary>
    public Decibel Splices { get; private init; }

    /// <summary>How many matings are in it.</summary>
    public int MatingCount { get; private init; }

    /// <summary>How many splices are in it.</summary>
    public int SpliceCount { get; private init; }

    /// <summary>The losses that have a name of their own.</summary>
    public IReadOnlyList<NamedLoss> Others => _others ?? [];

    /// <summary>Matings and splices: what no shorter cable takes away.</summary>
    public Decibel Connections => Matings + Splices;

    /// <summary>The whole loss.</summary>
    public Decibel Total
    {
        get
        {
            Decibel total = Fibre + Matings + Splices;
            foreach (NamedLoss other in Others)
                total += other.Loss;
            return total;
        }
    }

    /// <summary>With a length of cable of this attenuation.</summary>
    public LossSum PlusFibre(Length length, Attenuation attenuation) => this with { Fibre = Fibre + attenuation.Over(length) };

    /// <summary>With so many matings of this loss each.</summary>
    public LossSum PlusMatings(int count, Decibel each) =>
        this with { Matings = Matings + (count * each), MatingCount = MatingCount + count };

    /// <summary>With so many splices of this loss each.</summary>
    public LossSum PlusSplices(int count, Decibel each) =>
        this with { Splices = Splices + (count * each), SpliceCount = SpliceCount + count };

    /// <summary>With a loss of another kind.</summary>
    public LossSum Plus(NamedLoss other) => new(this, [.. Others, other]);

    /// <summary>What is left of <paramref name="limit"/>; below zero where the sum is over it.</summary>
    public Decibel MarginTo(Decibel limit) => limit - Total;
}
