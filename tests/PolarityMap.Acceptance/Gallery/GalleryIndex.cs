using PolarityMap.Core.Checks;
using PolarityMap.Core.Planning;

namespace PolarityMap.Acceptance.Gallery;

/// <summary>A figure of the gallery, or a set of them: the call of <c>draw</c>, in the document's folder, that makes it.</summary>
/// <param name="Target">The file, or the folder of a set with a final stroke, named from the document's folder.</param>
/// <param name="Options">What follows the document in the call, without <c>-o</c>.</param>
internal sealed record Figure(string Target, params string[] Options)
{
    public bool IsSet => Target.EndsWith('/');
}

/// <summary>A text of the gallery: the call, in the document's folder, that prints it.</summary>
/// <param name="File">The file, named from the document's folder.</param>
/// <param name="Call">The call.</param>
internal sealed record PrintedText(string File, params string[] Call)
{
    /// <summary>The drawing that the call writes as well, or null.</summary>
    public string? Drawing => Call.SkipWhile(w => w != "-o").Skip(1).FirstOrDefault();
}

/// <summary>A document of the gallery with everything that is made from it.</summary>
/// <param name="Folder">Its folder inside the gallery.</param>
/// <param name="Name">Its file name without its ending.</param>
/// <param name="Written">The text where it comes from a rule; null for a document written by hand.</param>
/// <param name="Figures">The drawings made from it.</param>
internal sealed record GalleryDocument(string Folder, string Name, string? Written, IReadOnlyList<Figure> Figures)
{
    /// <summary>Further texts printed from it, beside what the check says.</summary>
    public IReadOnlyList<PrintedText> Texts { get; init; } = [];

    /// <summary>The call of <c>plan</c> that makes the document, or null where it is written by hand or by a rule.</summary>
    public IReadOnlyList<string>? Plan { get; init; }

    /// <summary>What the page says above it, where that is not the method that it was planned with.</summary>
    public string? Heading { get; init; }

    /// <summary>True for a plant of thousands of links. Its name ends otherwise, so that tests that open every plant leave it out.</summary>
    public bool IsLarge { get; init; }

    public string File => IsLarge ? $"{Name}.yml" : $"{Name}.yaml";

    public string Report => $"{Name}.check.txt";
}

/// <summary>A worked case of fault finding: what was seen at first, and what was seen when all advised tests were made.</summary>
/// <param name="Name">What its files are called: <c>NAME.seen.yml</c> and <c>NAME.end.seen.yml</c>, written by hand.</param>
/// <param name="Plant">The plant, named from the folder of the cases.</param>
internal sealed record GalleryCase(string Name, string Plant)
{
    /// <summary>The files that the program makes of it, with their calls; the last word of a drawing's call is the file.</summary>
    public IEnumerable<(string File, string[] Call)> Made =>
    [
        ($"{Name}.locate.txt", ["locate", Plant, "--seen", $"{Name}.seen.yml"]),
        ($"{Name}.svg", ["draw", Plant, "--seen", $"{Name}.seen.yml", "--without-font", "-o", $"{Name}.svg"]),
        ($"{Name}.end.locate.txt", ["locate", Plant, "--seen", $"{Name}.end.seen.yml"]),
        ($"{Name}.end.svg", ["draw", Plant, "--seen", $"{Name}.end.seen.yml", "--without-font", "-o", $"{Name}.end.svg"]),
    ];
}

/// <summary>The one list of what the gallery shows.</summary>
internal static class GalleryIndex
{
    public const string Methods = "methods";

    public const string Arrays = "arrays";

    public const string Faults = "faults";

    public const string Demo = "opera-house";

    public const string FaultFinding = "faultfinding";

    public const string Planned = "planned";

    /// <summary>The brief of the opera house, which is planned by each method.</summary>
    private const string Brief = "opera-house.brief.yml";

    /// <summary>A brief that cannot be met.</summary>
    private const string TooFar = "too-far.brief.yml";

    /// <summary>The opera house by every method and base side by side.</summary>
    private static PrintedText Comparison => new("opera-house.comparison.txt", "plan", Brief, "--compare", "--without-font", "-o", "opera-house.comparison.svg");

    /// <summary>Briefs written by hand, in the folder of plans.</summary>
    public static IReadOnlyList<string> Briefs { get; } = [Brief, TooFar];

    /// <summary>The worked cases, in the order in which their page tells them.</summary>
    public static IReadOnlyList<GalleryCase> Cases { get; } =
    [
        new("dark-desk", "../opera-house/plant.yaml"),
        new("wrong-desk", "../opera-house/plant.yaml"),
        new("half-a-row", "../opera-house/plant.yaml"),
        new("one-way", "../arrays/spliced-cable.yaml"),
        new("weak-light", "../opera-house/plant.yaml"),
        new("two-at-once", "../opera-house/plant.yaml"),
    ];

    /// <summary>What the files of figures of several plants are called.</summary>
    public const string SideBySide = "side-by-side";

    /// <summary>Documents on arrays whose strands need more than one sheet of A3.</summary>
    private static readonly string[] Large = ["breakout-8x", "conversion-2x12-to-3x8", "conversion-3x12-to-4x8", "sixteen", "spliced-cable", "two-rows-of-twelve"];

    public static IReadOnlyList<GalleryDocument> Documents { get; } =
    [
        .. Written(Methods, MethodFigures),
        .. Written(Arrays, ArrayFigures),
        .. RuleCatalogue.All.SelectMany(rule => (GalleryDocument[])
        [
            new(Faults, rule.Code, rule.Example, [new Figure($"{rule.Code}.svg")]),
            new(Faults, $"{rule.Code}.repaired", rule.Repaired, [new Figure($"{rule.Code}.repaired.svg")]),
        ]),
        new(Demo, "plant", null,
        [
            new Figure("overview.svg", "--view", "overview"),
            new Figure("sheets/", "--paper", "A4"),
            new Figure("rooms/", "--paper", "A3", "--split", "room"),
            new Figure("alike.svg", "--network", "lighting", "--fold-alike", "--paper", "A4"),
            new Figure("desk-7.svg", "--part", "DESK7"),
            new Figure("faces/", "--view", "end-face", "--paper", "A4"),
            new Figure("cards/", "--view", "card", "--part", "DESK7"),
            new Figure("labels/", "--view", "labels", "--link", "LX-SW/7", "--label-frames", "--label-test-page"),
        ])
        {
            Texts = [new PrintedText("plant.budget.txt", "budget", "plant.yaml"), new PrintedText("plant.separation.txt", "separation", "plant.yaml")],
        },
        new(Demo, "as-built", null,
        [
            new Figure("as-built/", "--paper", "A4"),
            new Figure("as-built-alike.svg", "--network", "lighting", "--fold-alike", "--paper", "A3"),
            new Figure("as-built-D06.svg", "--finding", "D06"),
            new Figure("as-built-card/", "--view", "card", "--link", "LX-SW/7"),
        ]),
        .. PlanMethod.All.Select(PlannedBy),
        .. GrownGallery.Documents,
    ];

    /// <summary>The opera house planned by one method; with U1, which its own brief asks for, what the program says of both briefs.</summary>
    private static GalleryDocument PlannedBy(PlanMethod method)
    {
        string name = $"opera-house-{method.Name}";
        var link = new Figure($"{name}.svg", "--link", "LX-SW/7");
        bool asked = method.Name == "U1";
        return new GalleryDocument(Planned, name, null, asked ? [link, new Figure($"{name}-overview.svg", "--view", "overview")] : [link])
        {
            Plan = ["plan", Brief, "--method", method.Name, "-o", $"{name}.yaml"],
            Texts = asked ? [new PrintedText("opera-house.plan.txt", "plan", Brief), new PrintedText("too-far.plan.txt", "plan", TooFar), Comparison] : [],
        };
    }

    /// <summary>Every document of a folder that is written by hand, with its figures.</summary>
    private static IEnumerable<GalleryDocument> Written(string folder, Func<string, Figure[]> figures) =>
        Directory.EnumerateFiles(Path.Combine(Repository.Gallery, folder), "*.yaml")
            .Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)
            .Select(name => new GalleryDocument(folder, name, null, figures(name)));

    /// <summary>Each method by itself; with the first of duplex and of parallel methods all of them side by side, and one in steps.</summary>
    private static Figure[] MethodFigures(string name)
    {
        var own = new Figure($"{name}.svg");
        return name switch
        {
            "duplex-A" => [own, new Figure($"duplex-{SideBySide}.svg", "--beside", "duplex-B.yaml", "duplex-C.yaml", "duplex-U1.yaml", "duplex-U2.yaml")],
            "duplex-B" => [own, new Figure("duplex-B-steps/", "--steps", "--paper", "A3")],
            "parallel-A" => [own, new Figure($"parallel-{SideBySide}.svg", "--beside", "parallel-B.yaml", "parallel-C.yaml")],
            "parallel-B" => [own, new Figure("parallel-B-faces/", "--view", "end-face", "--paper", "A4")],
            _ => [own],
        };
    }

    /// <summary>The strands, on sheets of A3 where there are many, and the faces of the connectors.</summary>
    private static Figure[] ArrayFigures(string name) =>
        [Large.Contains(name) ? new Figure($"{name}/", "--paper", "A3") : new Figure($"{name}.svg"), new Figure($"{name}-faces/", "--view", "end-face", "--paper", "A4")];

    public static GalleryDocument Find(string folder, string name) => Documents.Single(d => d.Folder == folder && d.Name == name);
}
