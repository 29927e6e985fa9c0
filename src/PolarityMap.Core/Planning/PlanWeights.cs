namespace PolarityMap.Core.Planning;

/// <summary>How much each measure counts when plans are compared; the plan with the smallest sum is the best.</summary>
/// <param name="Kinds">Different kinds of cassettes, cords now and later, trunks and adapters: what is stocked, and what can be mistaken for another.</param>
/// <param name="Parts">Parts to buy.</param>
/// <param name="Idle">Fibres of trunks that carry nothing.</param>
/// <param name="Matings">Matings along a link.</param>
/// <param name="Ends">What is added when the two ends take different parts.</param>
/// <param name="Rows">What is added when array connectors have two rows, as makers' parts are not alike there (common practice).</param>
/// <param name="Later">Parts to buy for what comes later.</param>
/// <param name="Margin">What the worst margin falls short of the best plan's.</param>
/// <param name="Price">The sum of prices, once every part of every plan compared has one.</param>
public sealed record PlanWeights(
    decimal Kinds = 4, decimal Parts = 3, decimal Idle = 1, decimal Matings = 1, decimal Ends = 2, decimal Rows = 3, decimal Later = 0, decimal Margin = 0, decimal Price = 0)
{
    /// <summary>The largest weight: a bound against slips.</summary>
    public const decimal Most = 1_000;

    /// <summary>Kinds before parts before fibres: a wrong part fitted by mistake costs more than a fibre; one row before two (common practice).</summary>
    public static PlanWeights Default { get; } = new();

    /// <summary>The names of the weights, in the order in which they are told.</summary>
    public static IReadOnlyList<string> Names { get; } = ["kinds", "parts", "idle", "matings", "ends", "rows", "later", "margin", "price"];

    /// <summary>The weights in the order of <see cref="Names"/>.</summary>
    public IReadOnlyList<decimal> Values => [Kinds, Parts, Idle, Matings, Ends, Rows, Later, Margin, Price];

    /// <summary>The weights with one changed.</summary>
    /// <exception cref="ArgumentException">There is no weight of that name.</exception>
    public PlanWeights With(string name, decimal weight) => name switch
    {
        "kinds" => this with { Kinds = weight },
        "parts" => this with { Parts = weight },
        "idle" => this with { Idle = weight },
        "matings" => this with { Matings = weight },
        "ends" => this with { Ends = weight },
        "rows" => this with { Rows = weight },
        "later" => this with { Later = weight },
        "margin" => this with { Margin = weight },
        "price" => this with { Price = weight },
        _ => throw new ArgumentException($"there is no weight '{name}'", nameof(name)),
    };

    /// <summary>The weights that count, such as <c>kinds 4, parts 3</c>.</summary>
    public string Words => Values.All(v => v == 0)
        ? "nothing"
        : string.Join(", ", Names.Zip(Values).Where(w => w.Second > 0).Select(w => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{w.First} {w.Second:0.###}")));

    /// <summary>The weighted sum, each measure as a share of the most that any of the compared plans takes.</summary>
    public decimal Score(PlanMeasures plan, IReadOnlyList<PlanMeasures> compared) => Pieces(plan, compared).Sum();

    /// <summary>What each weight adds to the sum, in the order of <see cref="Names"/>.</summary>
    public IReadOnlyList<decimal> Pieces(PlanMeasures plan, IReadOnlyList<PlanMeasures> compared)
    {
        decimal Share(Func<PlanMeasures, decimal> of) => compared.Max(of) is > 0 and decimal most ? of(plan) / most : 0;
        decimal best = compared.Max(static m => m.WorstMargin?.Value ?? 0);
        return
        [
            Kinds * Share(static m => m.Kinds),
            Parts * Share(static m => m.Parts),
            Idle * Share(static m => m.FibresIdle),
            Matings * Share(static m => m.Matings),
            plan.IsAlikeAtBothEnds ? 0 : Ends,
            plan.ArrayRows > 1 ? Rows : 0,
            Later == 0 ? 0 : Later * Share(static m => m.Later?.PartsToBuy ?? 0),
            Margin * Share(m => Math.Max(0, best - (m.WorstMargin?.Value ?? best))),
            Price == 0 || !WeighsPrice(compared) ? 0 : Price * Share(static m => m.Price!.Total),
        ];
    }

    /// <summary>True when every part of every plan has its price: an incomplete sum would make a plan cheap that is not.</summary>
    public static bool WeighsPrice(IReadOnlyList<PlanMeasures> compared) => compared.All(m => m.Price is { IsComplete: true });
}
