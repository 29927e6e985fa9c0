using PolarityMap.Core.Schedules;

namespace PolarityMap.Core.Planning;

/// <summary>A line of a plan's parts list: alike parts together.</summary>
/// <param name="Kind">The kind of part.</param>
/// <param name="Type">What it is, such as <c>U1 cassette</c>.</param>
public sealed record PlanItem(string Kind, string Type)
{
    public int Quantity { get; init; }

    /// <summary>Fibres that run through it, or null.</summary>
    public int? Fibres { get; init; }

    public string? FibreClass { get; init; }

    /// <summary>Its length in metres, or null.</summary>
    public decimal? Metres { get; init; }

    public string? KeyCode { get; init; }

    /// <summary>What a document says of it besides.</summary>
    public string? Description { get; init; }

    /// <summary>True for switches and devices, which every plan of a brief takes alike.</summary>
    public bool IsInterface { get; init; }

    /// <summary>What is ordered, without the quantity: equal for equal parts.</summary>
    public PlanItem Each() => this with { Quantity = 0 };

    /// <summary>In few words, such as <c>Type-B trunk, 32 fibres, 62 m</c>.</summary>
    public string Words
    {
        get
        {
            string many = Fibres is { } f ? $", {f} fibres" : "";
            string length = Metres is { } m ? $", {m.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture)} m" : "";
            return $"{What}{many}{length}{(KeyCode is { } key ? $", key {key}" : "")}";
        }
    }

    /// <summary>The type, with the kind of part where the type does not name it.</summary>
    private string What => Type.Contains(Kind.Split(' ')[^1], StringComparison.Ordinal) ? Type : $"{Type} {Kind}";

    /// <summary>In the fewest words: of what is laid with its fibres and length, else by its type alone.</summary>
    private string Short => Kind == "trunk" ? (this with { KeyCode = null }).Words : IsInterface ? $"{(Type.StartsWith("interface ", StringComparison.Ordinal) ? $"{Type[10..]} interface" : What)}{(PartFacts.Attribute(Description ?? "", "ports") is { } ports && ports != "1" ? $" of {ports} ports" : "")}" : What;

    /// <summary>Several in one line, each with its quantity; those together that the fewest words do not tell apart.</summary>
    public static string Listed(IEnumerable<PlanItem> items) =>
        string.Join(", ", Lines(items)) is { Length: > 0 } told ? told : "nothing";

    /// <summary>As <see cref="Listed"/>, one by one.</summary>
    public static IEnumerable<string> Lines(IEnumerable<PlanItem> items) => items.GroupBy(i => i.Short).Select(g => $"{g.Sum(i => i.Quantity)} x {g.Key}");

    /// <summary>The lines of the parts list of a plan.</summary>
    /// <exception cref="ArgumentException">The proof has no plant.</exception>
    public static IReadOnlyList<PlanItem> Of(PlanProof proof)
    {
        Schedule list = PlanParts.Of(proof);
        var columns = new Dictionary<string, int>();
        for (int i = 0; i < list.Columns.Count; i++)
            columns[list.Columns[i].Key] = i;
        return [.. list.Rows.Select(row =>
        {
            Cell At(string key) => row[columns[key]];
            string kind = At("kind").Text!;
            return new PlanItem(kind, At("type").Text!)
            {
                Quantity = (int)At("quantity").Number!.Value,
                Fibres = (int?)At("fibres").Number,
                FibreClass = At("fibre-class").Text,
                Metres = At("length").Number,
                KeyCode = At("key-code").Text,
                Description = At("description").Text,
                IsInterface = kind.EndsWith("interface", StringComparison.Ordinal),
            };
        })];
    }
}
